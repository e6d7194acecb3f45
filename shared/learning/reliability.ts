import type { Said } from './brier';
import { type CountedShare, countShare } from './wilson';

/** Strands of which about the same was said, and how many of them broke. */
export interface SaidAndSeen {
  /** Said from (with it) and to (without it; the last with it). */
  readonly from: number;
  readonly to: number;
  /** What was said of them on average. */
  readonly said: number;
  readonly seen: CountedShare;
}

/**
 * Where what was said is parted. Assumed because most chances lie below a third, where tens would leave one bar, and 0.2
 * and 0.3 are where a chance is called raised and high.
 */
export const ASSUMED_SAID_EDGES: readonly number[] = [0, 0.05, 0.1, 0.2, 0.3, 0.5, 1];

/**
 * Did as many break as was said? Strands parted by what was said of them, with the share that broke and where the true one
 * may lie; parts without any are left out. Checked in tests/shared/learning/reliability.test.ts.
 */
export function compareSaidAndSeen(
  all: readonly Said[],
  edges: readonly number[] = ASSUMED_SAID_EDGES,
): readonly SaidAndSeen[] {
  return edges.slice(0, -1).flatMap((from, at) => {
    const to = edges[at + 1] ?? 1;
    const isLast = at === edges.length - 2;
    const within = all.filter(({ chance }) => chance >= from && (chance < to || (isLast && chance <= to)));
    if (within.length === 0) return [];
    const broken = within.filter(({ hasBroken }) => hasBroken).length;
    const said = within.reduce((sum, { chance }) => sum + chance, 0) / within.length;
    return [{ from, to, said, seen: countShare(broken, within.length) }];
  });
}
