import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { ASSUMED_MAX_TOTAL_G, splitByParts } from '../../../shared/chemistry/ratio';
import { thinOnScale } from '../../../shared/chemistry/thinning';
import { weighIn } from '../../../shared/chemistry/weighIn';
import type { Mixture } from '../../../shared/judgement/mixture';
import { computeMadePercent, findWeighedRefusal, listToWeigh } from '../../../shared/judgement/weighedBowl';
import { brand } from '../../../shared/units/brand';
import { holds, numberBetween } from '../seeded';

const settings = { ...salon, scaleStepG: 1 } as const;
const bowl = {
  shades: [
    { shade: 'Mist', parts: 2 },
    { shade: 'Fog', parts: 1 },
  ],
  colourG: 30,
  ratio: 2,
  developerPercent: 6,
} as const;
const two = [{ percent: 9 }, { percent: 3 }];
const said = (change: object) => findWeighedRefusal({ ...bowl, ...change }, settings);
const grams = (...each: readonly number[]) => each.map((amountG) => ({ amountG }));

describe('what the scale said', () => {
  it.each([
    ['nothing, from one bottle', {}, null],
    ['nothing, from two', { bottles: two }, null],
    ['each as ordered', { weighed: grams(20, 10, 60) }, null],
    [
      'two bottles as reckoned: 30 g of 9 % and 30 g of 3 % make 6 %',
      { bottles: two, weighed: grams(20, 10, 30, 30) },
      null,
    ],
    // A twentieth of 60 g, and one step.
    ['4 g of developer too much', { weighed: grams(20, 10, 64) }, null],
    ['5 g of developer too much', { weighed: grams(20, 10, 65) }, 'notTheParts'],
    ['5 g of developer too little', { weighed: grams(20, 10, 55) }, 'notTheParts'],
    ['the shades the other way round', { weighed: grams(10, 20, 60) }, 'notTheParts'],
    ['more colour than is told', { weighed: grams(24, 12, 72) }, 'notTheParts'],
    ['one figure short', { weighed: grams(20, 10) }, 'notTheParts'],
    ['one figure over', { weighed: grams(20, 10, 60, 1) }, 'notTheParts'],
    ['two bottles, one figure', { bottles: two, weighed: grams(20, 10, 60) }, 'notTheParts'],
    // (9 × 31 + 3 × 29) ÷ 60 = 6.1. Exact mass balance.
    [
      'a gram too much of the stronger bottle',
      { bottles: two, weighed: grams(20, 10, 31, 29) },
      'madeStronger',
    ],
    ['a gram too much of the weaker bottle', { bottles: two, weighed: grams(20, 10, 29, 31) }, null],
    ['one bottle named of two', { bottles: [{ percent: 9 }] }, 'bottlesDoNotMakeIt'],
    ['two bottles that are both weaker', { bottles: [{ percent: 5 }, { percent: 3 }] }, 'bottlesDoNotMakeIt'],
    ['the weaker one first', { bottles: [{ percent: 3 }, { percent: 9 }] }, 'bottlesDoNotMakeIt'],
    ['a bottle of the strength itself', { bottles: [{ percent: 9 }, { percent: 6 }] }, 'bottlesDoNotMakeIt'],
    // 12 % is the ceiling. published: Reg. (EC) 1223/2009 Annex III entry 12.
    ['a bottle of 12 %', { bottles: [{ percent: 12 }, { percent: 3 }] }, null],
    ['a bottle of 12.1 %', { bottles: [{ percent: 12.1 }, { percent: 3 }] }, 'bottlesDoNotMakeIt'],
  ] as const)('%s', (_, change, refusal) => expect(said(change)).toBe(refusal));

  it('a bottle over the house’s own is refused', () => {
    const strict = { ...settings, profile: { ...settings.profile, ceilingPercent: 8 } };
    expect(findWeighedRefusal({ ...bowl, bottles: two }, strict)).toBe('bottlesDoNotMakeIt');
    expect(findWeighedRefusal(bowl, strict)).toBe(null);
  });

  it('how strong it is comes from the grams: exact mass balance', () => {
    expect(computeMadePercent({ ...bowl, bottles: two, weighed: grams(20, 10, 20, 40) })).toBe(5);
    expect(computeMadePercent({ ...bowl, bottles: two })).toBe(6);
    expect(computeMadePercent({ ...bowl, weighed: grams(20, 10, 60) })).toBe(6);
  });
});

describe('whoever weighs in to the end', () => {
  const parts = fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 4 });

  it('is never refused at the door, whatever the hand did on the way', () => {
    let grown = 0;
    let ofTwo = 0;
    holds(
      fc.property(
        parts,
        fc.integer({ min: 20, max: 120 }),
        fc.constantFrom(1, 1.5, 2),
        fc.constantFrom(0.1, 0.5, 1),
        fc.boolean(),
        fc.array(numberBetween(0.3, 1.5), { minLength: 40, maxLength: 40 }),
        (each, colourG, ratio, stepG, isOfTwo, slips) => {
          const shades = each.map((count, index) => ({ shade: `Mist ${index}`, parts: count }));
          const split = splitByParts(colourG, each, stepG);
          if (!split.ok) throw new Error(split.error);
          const developerG = Math.round((colourG * ratio) / stepG) * stepG;
          const thinned = thinOnScale(
            { strongPercent: 9, weakPercent: 3, wantedPercent: 6, totalG: developerG },
            stepG,
          );
          if (!thinned.ok) throw new Error(thinned.error);
          const mixed: Mixture = {
            shades: shades.map(({ shade }, index) => ({
              shade,
              amountG: split.value.amountsG[index] ?? 0,
            })),
            developerG,
            developerOffG: 0,
            totalG: colourG + developerG,
            remainderG: 0,
            bottlePercent: brand(6),
            bowlPercent: brand(3),
          };
          const items = listToWeigh(mixed, isOfTwo ? thinned.value : null);
          const inG = items.map(() => 0);
          for (const by of [...slips, ...Array.from({ length: 40 }, () => 1)]) {
            const state = weighIn(items, inG, { stepG, mostG: ASSUMED_MAX_TOTAL_G });
            // Such a bowl is said to be too much, and never sent.
            if (!state.ok) {
              expect(state.error).toBe('tooMuch');
              return;
            }
            const { next, leftG, grewBy } = state.value;
            if (next === null) {
              if (grewBy > 1) grown += 1;
              break;
            }
            const poured = Math.max(1, Math.round(((leftG[next] ?? 0) * by) / stepG)) * stepG;
            inG[next] = (inG[next] ?? 0) + poured;
          }
          if (isOfTwo) ofTwo += 1;
          const colour = inG.slice(0, shades.length).reduce((sum, one) => sum + one, 0);
          const made = {
            shades,
            colourG: colour,
            ratio,
            developerPercent: 6,
            bottles: isOfTwo ? two : [],
            weighed: inG.map((amountG) => ({ amountG })),
          };
          expect(findWeighedRefusal(made, { ...settings, scaleStepG: stepG })).toBe(null);
        },
      ),
      1000,
    );
    expect(Math.min(grown, ofTwo)).toBeGreaterThan(300);
  });
});
