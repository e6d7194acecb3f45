import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ASSUMED_DENSITY_SHARE,
  ASSUMED_MIXED_G,
  ASSUMED_ROUND_G,
  estimateMixedG,
  suggestColourG,
} from '../../../shared/hair/amount';
import type { Answers } from '../../../shared/records/forms/asked';
import { bowlForm } from '../../../shared/records/forms/bowl';
import { zones } from '../../../shared/records/zones';
import { holds, numberBetween } from '../seeded';

const told = (lengthCm: number, density?: string, regrowthCm?: number) =>
  ({ client: { lengthCm, density }, hotTools: { regrowthCm } }) as unknown as Answers;

describe('how much is mixed', () => {
  it('is by hand for roots of 4 cm, and for lengths of 40 cm that end 10 cm before the tips', () => {
    const { atScalp, aCm } = ASSUMED_MIXED_G;
    expect(estimateMixedG(told(40, 'medium'), 'roots').typical).toBe(atScalp + 4 * aCm);
    const lengths = estimateMixedG(told(40, 'medium'), 'lengths');
    const ends = estimateMixedG(told(40, 'medium'), 'ends');
    expect(lengths.typical + ends.typical).toBeCloseTo(atScalp + 40 * aCm, 9);
    expect(lengths.low).toBeCloseTo(0.75 * lengths.typical, 9);
    expect(lengths.high).toBeCloseTo(1.25 * lengths.typical, 9);
  });

  it('knows less of hair nobody called thin or thick', () => {
    const known = estimateMixedG(told(40, 'medium'), 'lengths');
    const unknown = estimateMixedG(told(40, 'unknown'), 'lengths');
    expect(unknown.typical).toBe(known.typical);
    expect(unknown.low).toBeCloseTo(known.low * ASSUMED_DENSITY_SHARE.thin, 9);
    expect(unknown.high).toBeCloseTo(known.high * ASSUMED_DENSITY_SHARE.thick, 9);
  });

  it('never falls with length or density, is finite, and its suggestion is what the field takes', () => {
    const densities = ['thin', 'medium', 'thick'] as const;
    const one = fc.tuple(numberBetween(1, 200), fc.nat(2), fc.constantFrom(...zones));
    holds(
      fc.property(one, numberBetween(0, 50), numberBetween(0.5, 3), ([cm, density, zone], more, ratio) => {
        const here = estimateMixedG(told(cm, densities[density]), zone);
        const longer = estimateMixedG(told(cm + more, densities[density]), zone);
        const denser = estimateMixedG(told(cm, densities[Math.min(2, density + 1)]), zone);
        for (const end of ['low', 'typical', 'high'] as const) {
          expect(here[end]).toBeGreaterThan(0);
          expect(Number.isFinite(here[end])).toBe(true);
          expect(longer[end]).toBeGreaterThanOrEqual(here[end] - 1e-9);
          expect(denser[end]).toBeGreaterThanOrEqual(here[end]);
        }
        const colourG = suggestColourG(told(cm, densities[density]), zone, ratio);
        const { min, max } = bowlForm.colourG.field;
        expect(colourG % ASSUMED_ROUND_G).toBe(0);
        expect(colourG).toBeGreaterThanOrEqual(min);
        expect(colourG).toBeLessThanOrEqual(max);
      }),
    );
  });
});
