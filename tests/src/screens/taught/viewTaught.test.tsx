import { describe, expect, it } from 'vitest';
import { priorMeans } from '../../../../shared/judgement/chance/prior';
import type { Foreseen, WhatStrandsTaught } from '../../../../shared/learning/teach';
import { ASSUMED_STRANDS_TO_TELL, viewTaught } from '../../../../src/screens/taught/viewTaught';

const make = (
  foreseen: readonly Foreseen[],
  by: Readonly<Record<number, number>> = {},
): WhatStrandsTaught => ({
  learnt: {
    coefficients: { means: priorMeans.map((mean, at) => mean + (by[at] ?? 0)), covariance: [] },
    strands: foreseen.length,
  },
  foreseen,
});
const tell = (assumed: number, learnt: number, ...broken: readonly number[]): readonly Foreseen[] =>
  broken.map((each) => ({ assumed, learnt, hasBroken: each === 1 }));
const many = (count: number, of: number): readonly number[] =>
  Array.from({ length: of }, (_, at) => (at < count ? 1 : 0));

describe('what is shown of what strands taught', () => {
  it('says too few below twenty, and then names no fit', () => {
    const few = viewTaught(make(tell(0.04, 0.04, ...many(9, ASSUMED_STRANDS_TO_TELL - 1))), true);
    expect([few.isEnough, few.rows[0]?.fits]).toEqual([false, null]);
    const enough = viewTaught(make(tell(0.04, 0.04, ...many(9, ASSUMED_STRANDS_TO_TELL))), true);
    expect([enough.isEnough, enough.rows[0]?.fits]).toEqual([true, 'more']);
  });

  it('compares what is shown now with what came: learned, or assumed where learning is off', () => {
    const what = make(tell(0.6, 0.15, ...many(4, 40)));
    expect(viewTaught(what, true).rows).toMatchObject([
      { from: 0.1, fits: 'fits', seen: { count: 4, of: 40 } },
    ]);
    expect(viewTaught(what, false).rows).toMatchObject([{ from: 0.5, fits: 'fewer' }]);
  });

  it('measures both against always saying the average, by hand', () => {
    // Half broke: always a half is off by 0.25; always 0.1 or 0.9, rightly, by 0.01; 0.6 of all by 0.26.
    const right = [...tell(0.6, 0.9, ...many(10, 10)), ...tell(0.6, 0.1, ...many(0, 10))];
    const { gain } = viewTaught(make(right), true);
    expect(gain?.learnt).toBeCloseTo(1 - 0.01 / 0.25, 12);
    expect(gain?.assumed).toBeCloseTo(1 - 0.26 / 0.25, 12);
    expect(viewTaught(make(tell(0.1, 0.1, 0, 0, 0)), true).gain).toBeNull();
  });

  it('names the four weights that moved most, and no small move', () => {
    const by = { 0: 0.3, 1: -0.25, 2: 0.1, 5: 0.9, 7: -0.5, 9: 0.21 };
    expect(viewTaught(make([], by), true).moved).toEqual([
      { name: 'bleaches', way: 'more' },
      { name: 'slowStretch', way: 'less' },
      { name: 'base', way: 'more' },
      { name: 'helixLost', way: 'less' },
    ]);
    expect(viewTaught(make([]), true).moved).toEqual([]);
  });
});
