import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thinDeveloper, thinOnScale } from '../../../shared/chemistry/thinning';
import { holds, numberBetween } from '../seeded';

const asked = { strongPercent: 12, weakPercent: 6, wantedPercent: 9, totalG: 100 };

describe('thinning', () => {
  it.each([
    [{ weakPercent: 0 }, 'notADeveloper'],
    [{ weakPercent: -3 }, 'notADeveloper'],
    [{ strongPercent: 12.1 }, 'overCeiling'],
    [{ strongPercent: 6 }, 'notWeaker'],
    [{ strongPercent: 3 }, 'notWeaker'],
    [{ wantedPercent: 5.9 }, 'bothStronger'],
    [{ wantedPercent: 12.1 }, 'bothWeaker'],
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
  it('takes a bottle of 12.0 % and refuses one of 12.1 %', () => {
    expect(thinOnScale({ ...asked, strongPercent: 12 }, 1).ok).toBe(true);
    expect(thinOnScale({ ...asked, strongPercent: 12.1 }, 1)).toEqual({ ok: false, error: 'overCeiling' });
  });

  it('rounds the stronger bottle down, and says how strong that is', () => {
    expect(thinOnScale({ ...asked, wantedPercent: 8, totalG: 100 }, 5)).toEqual({
      ok: true,
      value: { strongG: 30, weakG: 70, madePercent: 7.8 },
    });
    expect(thinOnScale({ ...asked, totalG: 80 }, 0.1)).toEqual({
      ok: true,
      value: { strongG: 40, weakG: 40, madePercent: 9 },
    });
  });

  it.each([0, -1, 0.0004, Number.NaN, 101, 51])('shows nothing with a step of %d g', (stepG) => {
    expect(thinOnScale(asked, stepG)).toEqual({ ok: false, error: 'stepTooCoarse' });
  });

  it('weighs whole steps, never more than asked and never stronger, and at most one step weaker', () => {
    holds(
      fc.property(
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: 61, max: 120 }),
        numberBetween(0, 1),
        numberBetween(10, 1000),
        fc.constantFrom(0.1, 0.5, 1, 2),
        (weak, strong, share, totalG, stepG) => {
          const [weakPercent, strongPercent] = [weak / 10, strong / 10];
          const wantedPercent = Math.round((weak + share * (strong - weak)) * 100) / 1000;
          const result = thinOnScale({ strongPercent, weakPercent, wantedPercent, totalG }, stepG);
          if (!result.ok) {
            expect(result.error).toBe('stepTooCoarse');
            return;
          }
          const { strongG, weakG, madePercent } = result.value;
          for (const grams of [strongG, weakG]) {
            expect(grams / stepG).toBeCloseTo(Math.round(grams / stepG), 6);
          }
          const weighedG = strongG + weakG;
          expect(weighedG).toBeLessThanOrEqual(totalG + 0.0005);
          expect((strongG * strongPercent + weakG * weakPercent) / weighedG).toBeCloseTo(madePercent, 9);
          expect(madePercent).toBeLessThanOrEqual(wantedPercent);
          const oneStep = (stepG * (strongPercent - weakPercent)) / weighedG;
          expect(wantedPercent - madePercent).toBeLessThan(oneStep + 1e-9);
        },
      ),
    );
  });
});
