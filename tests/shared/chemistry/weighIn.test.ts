import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ASSUMED_HAND_OFF_SHARE, type ToWeigh, weighIn } from '../../../shared/chemistry/weighIn';
import { holds, numberBetween } from '../seeded';

const scale = { stepG: 1, mostG: 1000 };
/** 20 g and 10 g of two shades, 60 g of developer: 1 : 2. */
const bowl: readonly ToWeigh[] = [20, 10, 60].map((wantedG) => ({ wantedG, mayBe: 'either' }));
/** 100 g of 6 % from bottles of 9 and 3 %. Exact mass balance. */
const bottles: readonly ToWeigh[] = [
  { wantedG: 50, mayBe: 'less' },
  { wantedG: 50, mayBe: 'more' },
];
const weigh = (items: readonly ToWeigh[], inG: readonly number[], at = scale) => {
  const read = weighIn(items, inG, at);
  if (!read.ok) throw new Error(`refused: ${read.error}`);
  return read.value;
};

describe('weighing in', () => {
  it('asks for one after another, then for nothing', () => {
    expect(weigh(bowl, [])).toMatchObject({ leftG: [20, 10, 60], next: 0, totalG: 90, grewBy: 1 });
    expect(weigh(bowl, [20])).toMatchObject({ leftG: [0, 10, 60], next: 1 });
    expect(weigh(bowl, [20, 10, 60])).toMatchObject({ leftG: [0, 0, 0], next: null, totalG: 90 });
  });

  it('asks for the rest of what is short', () => {
    expect(weigh(bowl, [15])).toMatchObject({ leftG: [5, 10, 60], next: 0, grewBy: 1 });
  });

  it('grows with what went in too far, and tops up what was right before', () => {
    // 15 g for 10: half as much again of all.
    expect(weigh(bowl, [20, 15])).toMatchObject({
      targetG: [30, 15, 90],
      leftG: [10, 0, 90],
      next: 0,
      totalG: 135,
      grewBy: 1.5,
    });
  });

  it('lets a hand be a fiftieth beside, and no more', () => {
    const fine = { stepG: 0.1, mostG: 1000 };
    const [by] = [50 * ASSUMED_HAND_OFF_SHARE];
    const one: readonly ToWeigh[] = [{ wantedG: 50, mayBe: 'either' }, ...bowl];
    expect(weigh(one, [50 + by], fine).grewBy).toBe(1);
    expect(weigh(one, [50 + by + 0.1], fine).grewBy).toBeCloseTo(51.1 / 50, 12);
    expect(weigh(one, [50 - by], fine).leftG[0]).toBe(0);
    expect(weigh(one, [50 - by - 0.1], fine).leftG[0]).toBeCloseTo(1.1, 9);
  });

  it('lets the stronger bottle be no gram more, and the weaker one no gram less', () => {
    expect(weigh(bottles, [50, 49]).next).toBe(1);
    expect(weigh(bottles, [51, 50])).toMatchObject({ leftG: [0, 1], grewBy: 1.02 });
    expect(weigh(bottles, [49, 50]).next).toBe(null);
  });

  it.each([
    [[Number.NaN], 'notFinite'],
    [[-1], 'notPositive'],
    [[20, 10, 1001], 'tooMuch'],
    [[223], 'tooMuch'],
  ] as const)('with %j on the scale is refused: %s', (inG, error) => {
    expect(weighIn(bowl, inG, scale)).toEqual({ ok: false, error });
  });

  it('ends with parts and strength as wanted, whatever a hand does on the way', () => {
    const slip = numberBetween(0.2, 1.6);
    const grams = numberBetween(5, 80);
    let grown = 0;
    let toppedUp = 0;
    holds(
      fc.property(
        fc.array(grams, { minLength: 1, maxLength: 4 }),
        fc.array(slip, { minLength: 60, maxLength: 60 }),
        fc.constantFrom(0.1, 0.5, 1),
        (shades, slips, stepG) => {
          const mostG = 1e9;
          const items: readonly ToWeigh[] = [
            ...shades.map((wantedG): ToWeigh => ({ wantedG, mayBe: 'either' })),
            ...bottles,
          ];
          const inG = items.map(() => 0);
          const order: number[] = [];
          for (const by of [...slips, ...Array.from({ length: 60 }, () => 1)]) {
            const { next, leftG } = weigh(items, inG, { stepG, mostG });
            if (next === null) break;
            order.push(next);
            const poured = Math.max(stepG, Math.round(((leftG[next] ?? 0) * by) / stepG) * stepG);
            inG[next] = (inG[next] ?? 0) + poured;
          }
          const end = weigh(items, inG, { stepG, mostG });
          expect(end.next).toBe(null);
          if (end.grewBy > 1) grown += 1;
          if (order.some((item, at) => at > 0 && item < (order[at - 1] ?? 0))) toppedUp += 1;
          for (const [index, { wantedG }] of items.entries()) {
            const off = Math.abs((inG[index] ?? 0) - wantedG * end.grewBy);
            const hand = wantedG * end.grewBy * ASSUMED_HAND_OFF_SHARE;
            expect(off).toBeLessThanOrEqual(hand + 1.5 * stepG + 1e-6);
          }
          const [strong = 0, weak = 0] = inG.slice(-2);
          expect((9 * strong + 3 * weak) / (strong + weak)).toBeLessThanOrEqual(6 + 1e-6);
        },
      ),
    );
    expect(Math.min(grown, toppedUp)).toBeGreaterThan(50);
  });
});
