import { describe, expect, it } from 'vitest';
import { computeBoilingPoint } from '../../../../../shared/heat/boilingPoint';
import { pressHair } from '../../../../../shared/heat/press/press';
import { defaultSettings } from '../../../../../shared/records/settings';
import { brand } from '../../../../../shared/units/brand';
import type { Celsius } from '../../../../../shared/units/temperature';
import { spreadNames } from '../../../../../src/screens/practice/press/pressRoom';
import { sayPress } from '../../../../../src/screens/practice/press/sayPress';
import { type PressChoice, readChoice, viewPress } from '../../../../../src/screens/practice/press/viewPress';
import { findWords } from '../../../../../src/words/words';

const usual: PressChoice = {
  thicknessMm: 1,
  plateC: brand<Celsius>(190),
  wetness: 'dry',
  contactS: 2,
  presses: 1,
};
const view = (change: Partial<PressChoice>, altitudeM = 0) => {
  const choice = { ...usual, ...change };
  const boilingC = computeBoilingPoint(altitudeM);
  return viewPress(choice, boilingC, pressHair(readChoice(choice, boilingC)));
};
const hot = { plateC: brand<Celsius>(230) };
const say = (change: Partial<PressChoice>) =>
  sayPress(view(change), findWords('en'), { ...defaultSettings.units, temperature: 'C' });

describe('what a press comes to', () => {
  it.each([
    ['coolMiddle', {}],
    ['through', { thicknessMm: 0.2 }],
    ['tooHot', { thicknessMm: 0.2, ...hot }],
    ['cookedOutside', { contactS: 8, ...hot, thicknessMm: 2 }],
  ] as const)('%s', (verdict, change) => {
    expect(view(change).verdict).toBe(verdict);
  });

  it('pressed again cooks the outside of a thick section before its middle is hot', () => {
    const again = { ...hot, thicknessMm: 2, contactS: 2 };
    expect(view(again).verdict).toBe('coolMiddle');
    expect(view({ ...again, presses: 4 }).verdict).toBe('cookedOutside');
  });

  it('is too hot from 190 °C with water in the hair, from 204 °C without', () => {
    expect(view({ wetness: 'wet' }).tooHot).toEqual({ id: 'poresRiseFast', fromC: 190 });
    expect(view({ wetness: 'damp' }).tooHot.id).toBe('poresRiseFast');
    expect(view({}).tooHot.fromC).toBeCloseTo(204.44, 2);
  });

  it('lets wet hair wait at the boiling point of the place', () => {
    for (const altitudeM of [0, 2000]) {
      const { read, moments } = view({ wetness: 'wet', thicknessMm: 0.2 }, altitudeM);
      const waiting = moments.filter(({ coreC }) => Math.abs(coreC - computeBoilingPoint(altitudeM)) < 0.5);
      expect(read.boiling.length).toBeGreaterThan(0);
      expect(waiting.length).toBeGreaterThan(100);
    }
  });
});

describe('what is said of a press', () => {
  it('says outside, middle and water as text, for whoever does not see the picture', () => {
    const { picture, outside, middle, water } = say({ wetness: 'wet' });
    expect(picture).toContain('thick section, wet, plates at 190');
    expect(picture).toContain(`outside ${outside}, middle ${middle}.`);
    expect(picture).toMatch(/Water boiled for \d.*s, \d+\s%/);
    expect(water).toMatch(/took \d+\s% of the heat.*wet hair pays with about 2 times \(1–4, assumed\)/);
  });

  it('says of dry hair how long its water boiled, and nothing of structure', () => {
    expect(say({}).water).toMatch(/^Even dry hair holds some water: it boiled for \d/);
  });

  it('says when it was hot through', () => {
    expect(say({ thicknessMm: 0.2 }).verdict).toMatch(/^Hot through after 0\.\d\ss/);
  });
});

describe('the names of lines', () => {
  it('never lie over each other, and stand where they belong where there is room', () => {
    expect(spreadNames([100, 10, 104, 200])).toEqual([100, 10, 124, 200]);
    expect(spreadNames([50, 50, 50])).toEqual([50, 74, 98]);
  });
});
