import { type Covariates, readCovariates } from '../judgement/chance/covariates';
import { findShortTime } from '../judgement/shortTime';
import { findStrandKind } from '../judgement/strandKind';
import type { ConsultationEvent } from '../records/event';
import type { Answers } from '../records/forms/asked';
import { isAtLeastAsBad } from '../records/gradeOutcome';
import { beginRecord, type StrandRecord } from '../records/record';
import { reduce } from '../records/reduce';

/** One finished strand as it teaches. */
export interface TaughtStrand {
  readonly consultation: string;
  readonly number: number;
  /** When its outcome was recorded; where nobody recorded one of a strand that broke, when it broke. */
  readonly atMs: number;
  readonly hasBroken: boolean;
  /** What was known when it was started: nothing that it showed is in it. */
  readonly covariates: Covariates;
}

/** One consultation, as it is kept. */
export interface Kept {
  readonly id: string;
  readonly log: readonly ConsultationEvent[];
}

/**
 * How did it end, for learning? Gummy and broken broke: either closes its mix. Sound and rough held, if it stood its
 * whole time or its level was reached: one that was taken off earlier was not given the time to break. null teaches
 * nothing: it runs, was put aside, carried, corrected away, or nobody recorded what came of it.
 */
function readEnd(strand: StrandRecord): Pick<TaughtStrand, 'atMs' | 'hasBroken'> | null {
  const { ended, outcome, carried, isVoid, why } = strand;
  if (ended === null || ended.how === 'discarded' || carried !== null || isVoid) return null;
  if (outcome === null) return ended.how === 'broke' ? { atMs: ended.atMs, hasBroken: true } : null;
  const hasBroken = isAtLeastAsBad(outcome.grade, 'gummy');
  const isCutShort = findShortTime(strand) !== null && why !== 'levelReached';
  return hasBroken || !isCutShort ? { atMs: outcome.atMs, hasBroken } : null;
}

/**
 * What do the strands of this consultation teach?
 * Only strands of a lightening or lift: colour that merely deposits hardly ever breaks one, and many glosses would talk
 * the chance of a lightener down. Each stands with her answers as they were when it was started, since that is when its
 * chance was said; later answers, its own looks among their reasons, are not in it. As the log says now: an outcome that
 * was taken back teaches nothing. Checked in tests/shared/learning/strandsTaught.test.ts.
 */
export function listTaught({ id, log }: Kept): readonly TaughtStrand[] {
  const before = new Map<number, Answers>();
  let record = beginRecord(id);
  for (const event of log) {
    if (event.type === 'STRAND_STARTED') before.set(record.strands.length + 1, record.answers);
    record = reduce(record, event);
  }
  return record.strands.flatMap((strand) => {
    const answers = before.get(strand.number);
    const end = readEnd(strand);
    if (answers === undefined || end === null || findStrandKind(answers.client?.service) === 'short')
      return [];
    const covariates = readCovariates(answers);
    return [{ consultation: id, number: strand.number, ...end, covariates }];
  });
}

/** All that these consultations teach, in the order in which it was known; a consultation that comes twice counts once. */
export const gatherTaught = (kept: Iterable<Kept>): readonly TaughtStrand[] =>
  [...new Map([...kept].map((each) => [each.id, each])).values()]
    .flatMap(listTaught)
    .sort((one, other) => one.atMs - other.atMs);
