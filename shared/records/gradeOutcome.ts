import { judgePull } from '../hair/stretch';
import type { Fibre } from './event';
import type { OutcomeAnswers } from './forms/test';
import type { StrandRecord } from './record';

const order = ['sound', 'rough', 'gummy', 'broken'] as const satisfies readonly Exclude<Fibre, 'unknown'>[];
export type Grade = (typeof order)[number];

const byPull = { sound: 'sound', slow: 'rough', gummy: 'gummy', broken: 'broken' } as const;

/** What was seen of a strand while it lay in the mix. */
export interface StrandSigns {
  readonly hasBroken: boolean;
  /** A look found it stretchy, or it was taken off because it looked weak. */
  readonly hasWeakened: boolean;
}

/** What did the looks and the taking off show? */
export const findSigns = (strand: StrandRecord | undefined): StrandSigns => ({
  hasBroken: strand?.ended?.how === 'broke',
  hasWeakened: strand?.why === 'looksWeak' || strand?.looks.some(({ feel }) => feel === 'stretchy') === true,
});

/**
 * How bad is it, all in all? The worst of what was seen, how it came back, and how far it went.
 * The pull is judged in shared/hair/stretch.ts, where its sources stand. A strand that broke in the mix stays
 * broken, one that weakened there is rough at best.
 * Checked in tests/shared/records/gradeOutcome.test.ts.
 */
export function gradeOutcome(
  outcome: Pick<OutcomeAnswers, 'fibre' | 'stretch' | 'wentPast30'>,
  signs: StrandSigns,
): Grade {
  const found: readonly Grade[] = [
    outcome.fibre,
    byPull[judgePull(outcome.stretch, outcome.wentPast30 === 'yes')],
    signs.hasBroken ? 'broken' : 'sound',
    signs.hasWeakened ? 'rough' : 'sound',
  ];
  return order[Math.max(...found.map((grade) => order.indexOf(grade)))] ?? 'broken';
}

/** Is one grade at least as bad as another? */
export const isAtLeastAsBad = (one: Grade, other: Grade): boolean =>
  order.indexOf(one) >= order.indexOf(other);

/** The worst of these; null where none was given. */
export const findWorst = (given: readonly (Grade | null)[]): Grade | null =>
  order.findLast((grade) => given.includes(grade)) ?? null;

/**
 * Has something been seen of this strand that an outcome has to say? It broke, it weakened, or something worse than
 * sound was recorded and taken back. Then it cannot be put aside.
 */
export const hasBadSigns = (strand: StrandRecord): boolean => {
  const { hasBroken, hasWeakened } = findSigns(strand);
  return hasBroken || hasWeakened || (strand.retracted !== null && isAtLeastAsBad(strand.retracted, 'rough'));
};

/** Has some strand held in a mix today: its outcome is recorded, and none of it gummed or broke? */
export const hasHeldStrand = (strands: readonly StrandRecord[]): boolean =>
  strands.some((strand) => {
    if (strand.outcome === null || strand.isVoid) return false;
    return !isAtLeastAsBad(gradeOutcome(strand.outcome, findSigns(strand)), 'gummy');
  });

/** From the best to the worst. */
export const grades = order;
