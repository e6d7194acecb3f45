import { msPerHour, msPerMinute } from '../units/time';

/** What is tried at the bench, on cut hair and never on a head. */
export const benchKinds = ['boilSet', 'dryWet'] as const;
export type BenchKind = (typeof benchKinds)[number];

/** For so long a strand on a rod lies in boiling water, minutes. common practice, no source. */
export const BOIL_SET_MIN = 30;
/** It dries on its rod for at least so long, hours. common practice, no source. */
export const BOIL_SET_DRIES_FROM_H = 24;
/** It is taken off its rod after so long at the latest, hours. common practice, no source. */
export const BOIL_SET_DRIES_TO_H = 48;
/** After a press a cut piece lies for so long before anybody pulls it, minutes. Assumed because hair is cool by then. */
export const ASSUMED_COOL_MIN = 10;

/** How far a trial has come: in the water, to come out now, drying, to be read now, later than it should be, read. */
export type BenchStage = 'boiling' | 'boiled' | 'drying' | 'cooling' | 'readable' | 'late' | 'read';

/** What of a trial its stage hangs on. */
export interface BenchCourse {
  readonly kind: BenchKind;
  readonly startedAtMs: number;
  /** When it came out of the water; null where it did not, or never was in any. */
  readonly outAtMs: number | null;
  readonly isRead: boolean;
}

/**
 * How far is this trial, and when is the next thing due? Reading late is told and never refused: what is seen is seen.
 * Checked by tests/shared/hair/benchTrial.test.ts.
 */
export function findBenchStage(
  { kind, startedAtMs, outAtMs, isRead }: BenchCourse,
  nowMs: number,
): { readonly stage: BenchStage; readonly dueAtMs: number | null } {
  if (isRead) return { stage: 'read', dueAtMs: null };
  if (kind === 'dryWet') {
    const dueAtMs = startedAtMs + ASSUMED_COOL_MIN * msPerMinute;
    return { stage: nowMs < dueAtMs ? 'cooling' : 'readable', dueAtMs };
  }
  if (outAtMs === null) {
    const dueAtMs = startedAtMs + BOIL_SET_MIN * msPerMinute;
    return { stage: nowMs < dueAtMs ? 'boiling' : 'boiled', dueAtMs };
  }
  const fromMs = outAtMs + BOIL_SET_DRIES_FROM_H * msPerHour;
  const toMs = outAtMs + BOIL_SET_DRIES_TO_H * msPerHour;
  if (nowMs < fromMs) return { stage: 'drying', dueAtMs: fromMs };
  return { stage: nowMs <= toMs ? 'readable' : 'late', dueAtMs: toMs };
}

/** Is there something to be done with it now? */
export const isBenchDue = (stage: BenchStage): boolean =>
  stage === 'boiled' || stage === 'readable' || stage === 'late';
