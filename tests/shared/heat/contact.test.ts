import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computeContactShare, computeContactShares } from '../../../shared/heat/contact';
import { computeProfile } from '../../../shared/heat/profile';
import { brand } from '../../../shared/units/brand';
import { type Inch, toCentimetres } from '../../../shared/units/length';
import { exactly, makeRange } from '../../../shared/units/range';
import { holds, numberBetween } from '../seeded';
import { allKnown, anyHistory, anyPlace, twoYearsWet as told } from './histories';

const tenInches = toCentimetres(brand<Inch>(10));
const contactOn = (habit: typeof told, lengthCm: number) =>
  computeProfile({ ...allKnown, growth: exactly(0.2), lengthCm: exactly(lengthCm), habits: [habit] }, [
    lengthCm,
  ])[0]?.contactMin.typical;

describe('contact minutes', () => {
  it('are the plate’s share of the length for a gliding iron, and all of it for one that stays', () => {
    expect(contactOn(told, tenInches)).toBeCloseTo(31.2, 9);
    expect(contactOn({ ...told, plateWidthCm: 5.08 }, tenInches)).toBeCloseTo(62.4, 9);
    expect(contactOn({ ...told, tool: 'wand' }, tenInches)).toBe(312);
  });

  it('count all of it where the plate covers the length or a figure cannot be', () => {
    const share = (plateWidthCm: number, lengthCm: number) =>
      computeContactShare({ tool: 'flatIron', plateWidthCm }, lengthCm);
    expect(share(2.54, 2.54)).toBe(1);
    expect(share(2.54, 2)).toBe(1);
    expect(share(2.54, 2.55)).toBeLessThan(1);
    for (const odd of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(share(odd, 20)).toBe(1);
      expect(share(2.54, odd)).toBe(1);
    }
  });

  it('do not depend on the unit of width and length', () => {
    holds(
      fc.property(numberBetween(0.5, 2), numberBetween(2, 30), (widthIn, lengthIn) => {
        const plateWidthCm = toCentimetres(brand<Inch>(widthIn));
        const share = computeContactShare(
          { tool: 'flatIron', plateWidthCm },
          toCentimetres(brand<Inch>(lengthIn)),
        );
        expect(share).toBeCloseTo(widthIn / lengthIn, 12);
      }),
    );
  });

  it('are wide where the length is told by landmark: the shortest hair is touched most', () => {
    const { low, typical, high } = computeContactShares(told, makeRange(20, 25.4, 50.8));
    expect(low).toBeCloseTo(0.05, 12);
    expect(typical).toBeCloseTo(0.1, 12);
    expect(high).toBeCloseTo(0.127, 12);
  });

  it('are never more than iron minutes', () => {
    holds(
      fc.property(anyHistory, anyPlace, (history, cm) => {
        const [hair] = computeProfile(history, [cm]);
        for (const end of ['low', 'typical', 'high'] as const) {
          expect(hair?.contactMin[end]).toBeLessThanOrEqual(hair?.ironMin[end] ?? Number.NaN);
        }
      }),
    );
  });
});
