import { type CovariateName, covariateNames } from '../../../shared/judgement/chance/covariates';
import { priorMeans } from '../../../shared/judgement/chance/prior';
import { type Said, scoreBrier, splitBrier } from '../../../shared/learning/brier';
import { compareSaidAndSeen, type SaidAndSeen } from '../../../shared/learning/reliability';
import type { WhatStrandsTaught } from '../../../shared/learning/teach';
import { type CountedShare, countShare } from '../../../shared/learning/wilson';

/** Of fewer strands nothing is said. Assumed because of 20 that held, one in six may still break (Wilson, 19 times in 20). */
export const ASSUMED_STRANDS_TO_TELL = 20;

/** A weight that moved by less is not named, log-odds. Assumed because it moves no chance by more than five points. */
export const ASSUMED_MOVED_FROM = 0.2;
const MOST_NAMED = 4;

/** One thing that weighs otherwise than was assumed; `base` is hair with nothing against it. */
export interface Moved {
  readonly name: CovariateName | 'base';
  readonly way: 'more' | 'less';
}

/** Strands of which about the same was said, and whether what came fits it; null where that is too few to tell. */
export interface SaidRow extends SaidAndSeen {
  readonly fits: 'fits' | 'more' | 'fewer' | null;
}

/** What the page shows of what strands taught. */
export interface TaughtView {
  readonly strands: number;
  /** How many of the newest are looked back at, and how many of those broke. */
  readonly broken: CountedShare;
  readonly isEnough: boolean;
  readonly rows: readonly SaidRow[];
  /** By how much nearer it came than always saying the average (Brier), as a share; null where none or all of them broke. */
  readonly gain: { readonly learnt: number; readonly assumed: number } | null;
  /** What weighs otherwise than assumed, the most moved first. */
  readonly moved: readonly Moved[];
}

const findFit = ({ said, seen }: SaidAndSeen): SaidRow['fits'] => {
  if (said < seen.low) return 'more';
  return said > seen.high ? 'fewer' : 'fits';
};

const listMoved = (means: readonly number[]): readonly Moved[] =>
  (['base', ...covariateNames] as const)
    .map((name, at) => ({ name, by: (means[at] ?? 0) - (priorMeans[at] ?? 0) }))
    .filter(({ by }) => Math.abs(by) >= ASSUMED_MOVED_FROM)
    .sort((one, other) => Math.abs(other.by) - Math.abs(one.by))
    .slice(0, MOST_NAMED)
    .map(({ name, by }) => ({ name, way: by > 0 ? 'more' : 'less' }));

/**
 * What did strands teach, and did what was said of them come? The rows and the weights are of what is shown now: learned, or
 * assumed where learning is off. Checked in tests/src/screens/taught/viewTaught.test.tsx.
 */
export function viewTaught({ learnt, foreseen }: WhatStrandsTaught, learns: boolean): TaughtView {
  const say = (by: 'learnt' | 'assumed'): readonly Said[] =>
    foreseen.map((each) => ({ chance: each[by], hasBroken: each.hasBroken }));
  const { uncertain } = splitBrier(say('assumed'));
  const gain = (by: 'learnt' | 'assumed'): number => 1 - scoreBrier(say(by)) / uncertain;
  const isEnough = learnt.strands >= ASSUMED_STRANDS_TO_TELL;
  const broken = foreseen.filter(({ hasBroken }) => hasBroken).length;
  return {
    strands: learnt.strands,
    broken: countShare(broken, foreseen.length),
    isEnough,
    rows: compareSaidAndSeen(say(learns ? 'learnt' : 'assumed')).map((row) => ({
      ...row,
      fits: isEnough ? findFit(row) : null,
    })),
    gain: uncertain > 0 ? { learnt: gain('learnt'), assumed: gain('assumed') } : null,
    moved: listMoved(learnt.coefficients.means),
  };
}
