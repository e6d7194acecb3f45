import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isOneSlipAway } from '../../../../shared/chemistry/ingredients/oneSlip';
import { holds } from '../../seeded';

const letters = fc.string({ unit: fc.constantFrom('A', 'B', 'C'), maxLength: 7 });

/** Every text that one slip of the finger makes of this one, letter by letter. */
const listSlips = (text: string): ReadonlySet<string> => {
  const slips = new Set<string>();
  for (let at = 0; at <= text.length; at += 1) {
    const [before, after] = [text.slice(0, at), text.slice(at)];
    for (const letter of ['A', 'B', 'C']) {
      slips.add(before + letter + after);
      if (after !== '') slips.add(before + letter + after.slice(1));
    }
    slips.add(before + after.slice(1));
    if (after.length > 1) slips.add(`${before}${after[1]}${after[0]}${after.slice(2)}`);
  }
  slips.delete(text);
  return slips;
};

describe('one slip of the finger', () => {
  it('is one letter too many, missing, another one, or two swapped, and nothing else', () => {
    holds(
      fc.property(letters, letters, (one, other) => {
        expect(isOneSlipAway(one, other)).toBe(listSlips(one).has(other));
      }),
    );
  });

  it('is seen wherever it was made, from either side', () => {
    holds(
      fc.property(letters, (one) => {
        for (const other of listSlips(one)) {
          expect(isOneSlipAway(one, other), `${one} ${other}`).toBe(true);
          expect(isOneSlipAway(other, one), `${other} ${one}`).toBe(true);
        }
      }),
      100,
    );
  });

  it.each([
    ['POLYQUATERNIUM7', 'POLYQUATERNIUM70'],
    ['QUATERNIUM15', 'QUATERNIUM16'],
    ['C1213', 'C1231'],
  ])('is never a number: %s and %s', (one, other) => expect(isOneSlipAway(one, other)).toBe(false));
});
