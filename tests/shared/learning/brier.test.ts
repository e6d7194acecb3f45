import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findBaseRate, type Said, scoreBrier, splitBrier } from '../../../shared/learning/brier';
import { holds } from '../seeded';

const say = (chance: number, ...broken: readonly number[]): readonly Said[] =>
  broken.map((each) => ({ chance, hasBroken: each === 1 }));

/**
 * By hand. Of four strands 0.2 was said and one broke; of four, 0.7 and two broke. Base rate 3/8.
 * Score: (3 · 0.2² + 0.8² + 2 · 0.7² + 2 · 0.3²) / 8 = (0.12 + 0.64 + 0.98 + 0.18) / 8 = 1.92 / 8 = 0.24.
 * Unreliable: (4 · (0.2 − 0.25)² + 4 · (0.7 − 0.5)²) / 8 = (0.01 + 0.16) / 8 = 0.02125.
 * Resolved: (4 · (0.25 − 0.375)² + 4 · (0.5 − 0.375)²) / 8 = 0.015625.
 * Uncertain: 3/8 · 5/8 = 0.234375. And 0.02125 − 0.015625 + 0.234375 = 0.24.
 */
const byHand = [...say(0.2, 1, 0, 0, 0), ...say(0.7, 1, 1, 0, 0)];

const anySaid = fc.array(
  fc.record({ chance: fc.constantFrom(0, 0.1, 0.25, 0.5, 0.9, 1), hasBroken: fc.boolean() }),
  { minLength: 1, maxLength: 60 },
);

describe('how far off was what was said', () => {
  it('is scored and split by hand', () => {
    expect(findBaseRate(byHand)).toBe(0.375);
    expect(scoreBrier(byHand)).toBeCloseTo(0.24, 15);
    const { unreliable, resolved, uncertain } = splitBrier(byHand);
    expect(unreliable).toBeCloseTo(0.02125, 15);
    expect(resolved).toBe(0.015625);
    expect(uncertain).toBe(0.234375);
  });

  it('adds up from its parts, whatever was said and came', () =>
    holds(
      fc.property(anySaid, (all) => {
        const { unreliable, resolved, uncertain } = splitBrier(all);
        expect(unreliable - resolved + uncertain).toBeCloseTo(scoreBrier(all), 12);
        const always = all.map((each) => ({ ...each, chance: findBaseRate(all) }));
        expect(scoreBrier(always)).toBeCloseTo(uncertain, 12);
      }),
    ));

  it('is nothing for whoever is always right, one for whoever never is, and nothing of none', () => {
    expect(scoreBrier([...say(1, 1), ...say(0, 0)])).toBe(0);
    expect(scoreBrier([...say(0, 1), ...say(1, 0)])).toBe(1);
    expect(scoreBrier([])).toBe(0);
    expect(splitBrier([])).toEqual({ unreliable: 0, resolved: 0, uncertain: 0 });
  });
});
