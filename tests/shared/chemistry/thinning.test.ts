import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thinDeveloper, weighThinned } from '../../../shared/chemistry/thinning';
import { holds, numberBetween } from '../seeded';

const asked = { strongPercent: 12, weakPercent: 6, wantedPercent: 9, totalG: 100 };

describe('thinning', () => {
  it.each([
    [{ weakPercent: 0 }, 'notADeveloper'],
    [{ weakPercent: -3 }, 'notADeveloper'],
    [{ strongPercent: 12.1 }, 'overCeiling'],
    [{ strongPercent: 18, weakPercent: 12.1, wantedPercent: 15 }, 'overCeiling'],
    [{ strongPercent: 6 }, 'notWeaker'],
    [{ strongPercent: 3 }, 'notWeaker'],
    [{ wantedPercent: 5.9 }, 'outsideBottles'],
    [{ wantedPercent: 12.1 }, 'outsideBottles'],
    [{ totalG: 0 }, 'notPositive'],
    [{ totalG: -1 }, 'notPositive'],
    [{ totalG: 1000.1 }, 'tooMuch'],
    [{ strongPercent: Number.NaN }, 'notFinite'],
    [{ weakPercent: Number.POSITIVE_INFINITY }, 'notFinite'],
    [{ wantedPercent: Number.NaN }, 'notFinite'],
    [{ totalG: Number.NaN }, 'notFinite'],
  ] as const)('with %j is refused: %s', (wrong, error) => {
    expect(thinDeveloper({ ...asked, ...wrong })).toEqual({ ok: false, error });
  });

  it('reaches from all of the weaker to all of the stronger bottle', () => {
    expect(thinDeveloper({ ...asked, wantedPercent: 6 })).toEqual({
      ok: true,
      value: { strongG: 0, weakG: 100 },
    });
    expect(thinDeveloper({ ...asked, wantedPercent: 12 })).toEqual({
      ok: true,
      value: { strongG: 100, weakG: 0 },
    });
    expect(thinDeveloper({ ...asked, totalG: 1000 }).ok).toBe(true);
  });

  it('keeps both masses: of the mix and of the peroxide in it', () => {
    const share = numberBetween(0, 1);
    holds(
      fc.property(
        numberBetween(0.5, 6),
        numberBetween(6.5, 12),
        share,
        numberBetween(1, 1000),
        (weak, strong, s, totalG) => {
          const wantedPercent = Math.min(weak + s * (strong - weak), strong);
          const result = thinDeveloper({ strongPercent: strong, weakPercent: weak, wantedPercent, totalG });
          if (!result.ok) throw new Error(`refused: ${result.error}`);
          const { strongG, weakG } = result.value;
          expect(strongG).toBeGreaterThanOrEqual(0);
          expect(weakG).toBeGreaterThanOrEqual(0);
          expect(strongG + weakG).toBeCloseTo(totalG, 9);
          expect((strongG * strong + weakG * weak) / totalG).toBeCloseTo(wantedPercent, 9);
        },
      ),
    );
  });

  it('takes no less of the stronger bottle when more strength is wanted', () => {
    holds(
      fc.property(numberBetween(6, 12), numberBetween(6, 12), (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((wantedPercent) =>
          thinDeveloper({ ...asked, wantedPercent }),
        );
        if (!less?.ok || !more?.ok) throw new Error('a wish between the bottles was refused');
        expect(more.value.strongG).toBeGreaterThanOrEqual(less.value.strongG);
      }),
    );
  });
});

describe('thinning on a scale', () => {
  it('rounds the stronger bottle down, so that 9 % of 81 g comes out a little weaker', () => {
    expect(weighThinned({ ...asked, totalG: 81 }, 1)).toEqual({
      ok: true,
      value: { strongG: 40, weakG: 41, makesPercent: (40 * 12 + 41 * 6) / 81 },
    });
    expect(weighThinned({ ...asked, totalG: 81 }, 0.5)).toMatchObject({
      value: { strongG: 40.5, weakG: 40.5 },
    });
    expect(weighThinned({ ...asked, weakPercent: 12 }, 1)).toEqual({ ok: false, error: 'notWeaker' });
  });

  it('never comes out stronger than wanted nor a whole step weaker than it could, and always makes the total', () => {
    const bottles = fc.tuple(numberBetween(0.5, 12), numberBetween(0.5, 12), numberBetween(0, 1));
    const scales = fc.tuple(fc.constantFrom(0.1, 0.5, 1), fc.integer({ min: 10, max: 1000 }));
    holds(
      fc.property(bottles, scales, ([one, other, share], [stepG, steps]) => {
        const [weakPercent, strongPercent] = one < other ? [one, other] : [other, one];
        if (strongPercent - weakPercent < 0.1) return;
        const wantedPercent = Math.min(strongPercent, weakPercent + share * (strongPercent - weakPercent));
        const totalG = Math.round(steps * stepG * 1000) / 1000;
        const made = weighThinned({ strongPercent, weakPercent, wantedPercent, totalG }, stepG);
        if (!made.ok) throw new Error(made.error);
        const { strongG, weakG, makesPercent } = made.value;
        expect(strongG + weakG).toBeCloseTo(totalG, 9);
        for (const grams of [strongG, weakG])
          expect(Math.abs(grams / stepG - Math.round(grams / stepG))).toBeLessThan(1e-6);
        // What floats lose is a thousandth of a step of the stronger bottle.
        expect(makesPercent).toBeLessThanOrEqual(wantedPercent + (0.0011 * stepG * strongPercent) / totalG);
        const oneMore = ((strongG + stepG) * strongPercent + (weakG - stepG) * weakPercent) / totalG;
        expect(oneMore).toBeGreaterThan(wantedPercent - 1e-9);
      }),
    );
  });
});
