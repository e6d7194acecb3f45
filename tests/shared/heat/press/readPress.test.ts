import { describe, expect, it } from 'vitest';
import { FIBRE_PER_M3, LATENT_HEAT } from '../../../../shared/heat/press/bundle';
import type { PressMoment } from '../../../../shared/heat/press/press';
import { ASSUMED_WORKS_ABOVE_C, readPress, sumSpans } from '../../../../shared/heat/press/readPress';
import { brand } from '../../../../shared/units/brand';
import type { Celsius } from '../../../../shared/units/temperature';

const press = { thicknessMm: 1, regain: 0.2, contactS: 2 };
const tooHotC = brand<Celsius>(190);
const moment = (atS: number, surfaceC: number, coreC: number, waterLeft: number, heatJ = 0): PressMoment => ({
  atS,
  surfaceC,
  coreC,
  waterLeft,
  heatJ,
});

describe('what a press did', () => {
  it('says when the middle got hot enough, and nothing where it never did', () => {
    const moments = [
      moment(0, 25, 25, 1),
      moment(1, 150, ASSUMED_WORKS_ABOVE_C, 1),
      moment(2, 160, ASSUMED_WORKS_ABOVE_C + 1, 1),
    ];
    expect(readPress(press, moments, tooHotC)).toMatchObject({ worksAtS: 2, surfaceC: 160, coreC: 123 });
    expect(readPress(press, moments.slice(0, 2), tooHotC).worksAtS).toBeNull();
  });

  it('joins stretches that touch and keeps those apart that do not', () => {
    const moments = [
      moment(0, 25, 25, 1),
      moment(1, 189.5, 60, 1),
      moment(2, 195, 80, 0.9),
      moment(3, 189.4, 90, 0.8),
      moment(4, 191, 90, 0.8),
      moment(5, 200, 100, 0.7),
    ];
    const read = readPress(press, moments, tooHotC);
    expect(read.boiling).toEqual([
      { fromS: 1, toS: 3 },
      { fromS: 4, toS: 5 },
    ]);
    expect(read.tooHot).toEqual([
      { fromS: 1, toS: 2 },
      { fromS: 4, toS: 5 },
    ]);
    expect(sumSpans(read.boiling)).toBe(3);
    expect(sumSpans([])).toBe(0);
  });

  it('lets water boil on where it stopped for less than a tenth of a press', () => {
    const moments = [
      moment(0, 25, 25, 1),
      moment(1, 150, 60, 0.9),
      moment(1.2, 150, 60, 0.9),
      moment(2, 150, 60, 0.8),
      moment(2.3, 150, 60, 0.8),
      moment(3, 150, 60, 0.7),
    ];
    expect(readPress(press, moments, tooHotC).boiling).toEqual([
      { fromS: 0, toS: 2 },
      { fromS: 2.3, toS: 3 },
    ]);
  });

  it('says which share of the heat left as steam', () => {
    // Half of 0.2 kg a kg of dry hair, in half of a section of 1 mm.
    const steamJ = FIBRE_PER_M3 * 0.2 * 0.5 * LATENT_HEAT * 0.5e-3;
    const moments = [moment(0, 25, 25, 1), moment(1, 150, 100, 0.5, steamJ * 4)];
    expect(readPress(press, moments, tooHotC).steamShare).toBeCloseTo(0.25, 12);
    expect(readPress({ ...press, regain: 0 }, moments, tooHotC).steamShare).toBe(0);
  });

  it('says nothing of a press that never was', () => {
    expect(readPress(press, [], tooHotC)).toMatchObject({
      worksAtS: null,
      boiling: [],
      waterLeft: 0,
      steamShare: 0,
    });
    expect(readPress(press, [], tooHotC).coreC).toBeNaN();
  });
});
