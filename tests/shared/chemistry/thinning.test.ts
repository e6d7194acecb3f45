import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thinDeveloper } from '../../../shared/chemistry/thinning';
import { holds, numberBetween } from '../seeded';

const asked = { strongPercent: 12, weakPercent: 6, wantedPercent: 9, totalG: 100 };

describe('thinning', () => {
  it.each([
    [{ weakPercent: 0 }, 'notADeveloper'],
    [{ weakPercent: -3 }, 'notADeveloper'],
    [{ strongPercent: 12.1 }, 'overCeiling'],
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
