import { describe, expect, it } from 'vitest';
import { ASSUMED_SETTING_C } from '../../../shared/heat/assumedHabit';
import { measureGrowth, usualGrowth } from '../../../shared/heat/growth';
import {
  ASSUMED_GAP_GLIDING_C,
  ASSUMED_GAP_HELD_C,
  ASSUMED_ROOM_C,
  computeHairTemperature,
} from '../../../shared/heat/hairTemperature';
import { ASSUMED_HELIX_ENERGY_J, computeHelixSpeedUp, findWetMultiplier } from '../../../shared/heat/helix';
import { computeTryptophanRate } from '../../../shared/heat/tryptophan';
import { brand } from '../../../shared/units/brand';
import type { Centimetre } from '../../../shared/units/length';
import { exactly, makeRange } from '../../../shared/units/range';

const cm = (value: number) => brand<Centimetre>(value);

describe('the temperature of the hair', () => {
  it('is the setting less the gap: the widest gap makes the coolest hair', () => {
    expect(computeHairTemperature(200, ASSUMED_GAP_GLIDING_C)).toEqual(makeRange(150, 180, 200));
    expect(computeHairTemperature(200, ASSUMED_GAP_HELD_C)).toEqual(makeRange(180, 200, 200));
    expect(computeHairTemperature(200, exactly(0))).toEqual(exactly(200));
  });

  it('is wide where the setting is not known or no number', () => {
    for (const setting of ['unknown', Number.NaN, Number.POSITIVE_INFINITY] as const) {
      expect(computeHairTemperature(setting, exactly(0))).toEqual(ASSUMED_SETTING_C);
    }
  });

  it('is never below the room, nor above what was set', () => {
    expect(computeHairTemperature(50, ASSUMED_GAP_GLIDING_C).low).toBe(ASSUMED_ROOM_C);
    expect(computeHairTemperature(10, ASSUMED_GAP_GLIDING_C)).toEqual(exactly(10));
  });
});

describe('the rates', () => {
  it('of the helix are 1 at 200 °C whatever the energy, and its ends change places there', () => {
    expect(computeHelixSpeedUp(exactly(200), ASSUMED_HELIX_ENERGY_J)).toEqual(exactly(1));
    for (const celsius of [120, 180, 199, 201, 230]) {
      const { low, typical, high } = computeHelixSpeedUp(exactly(celsius), ASSUMED_HELIX_ENERGY_J);
      expect(low).toBeLessThan(typical);
      expect(typical).toBeLessThan(high);
      expect(typical > 1).toBe(celsius > 200);
    }
  });

  it('of tryptophan rise with the temperature, and are higher without pigment up to where irons end', () => {
    for (let celsius = 40; celsius < 250; celsius += 10) {
      const pigmented = computeTryptophanRate(celsius, 'pigmented');
      expect(computeTryptophanRate(celsius + 10, 'pigmented')).toBeGreaterThan(pigmented);
      expect(computeTryptophanRate(celsius, 'unpigmented')).toBeGreaterThan(pigmented);
    }
  });

  it('grow with water, and of unknown wetness span the three', () => {
    const [wet, damp] = [makeRange(1, 2, 4), makeRange(1, 1.5, 3)];
    expect(findWetMultiplier('dry', wet, damp)).toEqual(exactly(1));
    expect(findWetMultiplier('unknown', wet, damp)).toEqual(makeRange(1, 1.5, 4));
  });
});

describe('growth', () => {
  it('that was measured stands without doubt', () => {
    expect(measureGrowth(cm(3), 12)).toEqual(exactly(0.25));
  });

  it.each([
    [0, 12],
    [3, 0],
    [-3, 12],
    [3, -12],
    [Number.NaN, 12],
    [3, Number.NaN],
    [Number.POSITIVE_INFINITY, 12],
    [3, Number.POSITIVE_INFINITY],
    [10, 4],
    [1, 26],
  ])('of %d cm in %d weeks is no measurement: the usual growth stands', (grown, weeks) => {
    expect(measureGrowth(cm(grown), weeks)).toBe(usualGrowth);
  });
});
