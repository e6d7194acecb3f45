import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { LEGAL_CEILING_PERCENT, type PeroxidePercent } from '../../shared/chemistry/peroxide';
import { computeBowlPercent, splitByParts } from '../../shared/chemistry/ratio';
import { thinDeveloper, weighThinned } from '../../shared/chemistry/thinning';
import { brand } from '../../shared/units/brand';
import { holds } from '../shared/seeded';

// Exact rational arithmetic of a general package (fraction.js 5.3.4), from the mass balance alone:
// peroxide in the bowl = what the developer brings, colour brings none. Source of the balance: conservation of mass.
const tenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => new Fraction(n, 10));
const percents = tenths(5, 120);
const ratios = fc.integer({ min: 2, max: 12 }).map((n) => new Fraction(n, 4));
const num = (fraction: Fraction) => fraction.valueOf();

describe('mixtures against exact ratios', () => {
  it('a bowl is as strong as the exact balance says, to 1e-12', () => {
    holds(
      fc.property(percents, ratios, (bottle, ratio) => {
        const exact = bottle.mul(ratio).div(ratio.add(1));
        const made = computeBowlPercent(brand<PeroxidePercent>(num(bottle)), num(ratio));
        if (!made.ok) throw new Error(made.error);
        expect(Math.abs(made.value - num(exact))).toBeLessThan(1e-12);
      }),
    );
  });

  it('two bottles make what was wanted: both masses balance exactly, to 1e-9 g', () => {
    const asked = fc.tuple(percents, percents, fc.integer({ min: 0, max: 20 }), tenths(50, 9000));
    let checked = 0;
    holds(
      fc.property(asked, ([one, other, twentieths, total]) => {
        const [weak, strong] = one.compare(other) < 0 ? [one, other] : [other, one];
        if (weak.equals(strong)) return;
        const wanted = weak.add(strong.sub(weak).mul(new Fraction(twentieths, 20)));
        const exactStrong = total.mul(wanted.sub(weak)).div(strong.sub(weak));
        const made = thinDeveloper({
          strongPercent: num(strong),
          weakPercent: num(weak),
          wantedPercent: Math.min(num(strong), num(wanted)),
          totalG: num(total),
        });
        if (!made.ok) throw new Error(made.error);
        expect(Math.abs(made.value.strongG - num(exactStrong))).toBeLessThan(1e-9);
        expect(Math.abs(made.value.weakG - num(total.sub(exactStrong)))).toBeLessThan(1e-9);
        checked += 1;
      }),
    );
    expect(checked).toBeGreaterThan(400);
  });

  it('on a scale the stronger bottle is the exact share rounded down to whole steps, and no step less', () => {
    const scale = fc.tuple(
      fc.constantFrom(new Fraction(1, 10), new Fraction(1, 2), new Fraction(1)),
      fc.integer({ min: 5, max: 900 }),
    );
    holds(
      fc.property(
        percents,
        percents,
        fc.integer({ min: 0, max: 20 }),
        scale,
        (one, other, twentieths, [step, steps]) => {
          const [weak, strong] = one.compare(other) < 0 ? [one, other] : [other, one];
          if (weak.equals(strong)) return;
          const total = step.mul(steps);
          const wanted = weak.add(strong.sub(weak).mul(new Fraction(twentieths, 20)));
          const exactSteps = total.mul(wanted.sub(weak)).div(strong.sub(weak)).div(step).floor();
          const made = weighThinned(
            {
              strongPercent: num(strong),
              weakPercent: num(weak),
              wantedPercent: Math.min(num(strong), num(wanted)),
              totalG: num(total),
            },
            num(step),
          );
          if (!made.ok) throw new Error(made.error);
          expect(made.value.strongG).toBeCloseTo(num(exactSteps.mul(step)), 9);
          const exact = exactSteps
            .mul(step)
            .mul(strong)
            .add(total.sub(exactSteps.mul(step)).mul(weak))
            .div(total);
          expect(Math.abs(made.value.makesPercent - num(exact))).toBeLessThan(1e-9);
          expect(exact.compare(wanted)).toBeLessThanOrEqual(0);
        },
      ),
    );
  });

  it('shades by parts are the exact shares, none a whole step off, and together what the scale can show', () => {
    const parts = fc.array(
      fc.integer({ min: 1, max: 16 }).map((n) => new Fraction(n, 4)),
      { minLength: 1, maxLength: 6 },
    );
    holds(
      fc.property(parts, tenths(300, 3000), (shares, total) => {
        const split = splitByParts(num(total), shares.map(num), 1);
        if (!split.ok) {
          expect(split.error).toBe('stepTooCoarse');
          return;
        }
        const sum = shares.reduce((all, share) => all.add(share), new Fraction(0));
        const shown = total.floor();
        shares.forEach((share, index) => {
          const exact = shown.mul(share).div(sum);
          expect(Math.abs((split.value.amountsG[index] ?? 0) - num(exact))).toBeLessThan(1);
        });
        expect(split.value.amountsG.reduce((all, grams) => all + grams, 0)).toBe(num(shown));
        expect(split.value.remainderG).toBeCloseTo(num(total.sub(shown)), 9);
      }),
    );
  });

  it('the ceiling is 12 % of the bottle, whatever the bowl comes to', () => {
    // Reg. (EC) 1223/2009 Annex III no. 12.
    expect(LEGAL_CEILING_PERCENT).toBe(12);
  });
});
