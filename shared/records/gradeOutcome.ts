import { judgePull } from '../hair/stretch';
import type { Fibre } from './event';
import type { OutcomeAnswers } from './forms/test';

const order = ['sound', 'rough', 'gummy', 'broken'] as const satisfies readonly Exclude<Fibre, 'unknown'>[];
export type Grade = (typeof order)[number];

const byPull = { sound: 'sound', slow: 'rough', gummy: 'gummy', broken: 'broken' } as const;

/**
 * How bad is it, all in all? The worst of what was seen, how it came back, and how far it went.
 * The pull is judged in shared/hair/stretch.ts, where its sources stand. A strand that broke in the mix stays broken.
 * Checked in tests/shared/records/gradeOutcome.test.ts.
 */
export function gradeOutcome(
  outcome: Pick<OutcomeAnswers, 'fibre' | 'stretch' | 'wentPast30'>,
  hasBroken: boolean,
): Grade {
  const found: readonly Grade[] = [
    outcome.fibre,
    byPull[judgePull(outcome.stretch, outcome.wentPast30 === 'yes')],
    hasBroken ? 'broken' : 'sound',
  ];
  return order[Math.max(...found.map((grade) => order.indexOf(grade)))] ?? 'broken';
}

/** Is one grade at least as bad as another? */
export const isAtLeastAsBad = (one: Grade, other: Grade): boolean =>
  order.indexOf(one) >= order.indexOf(other);

/** From the best to the worst. */
export const grades = order;
