import type { ConsultationEvent, EventOf, EventType } from '../../../../shared/records/event';
import type { LivedStep, LivedWalk } from './walk';

/** In how many walks something happened before the first bowl, and after it. */
export interface Counts {
  readonly refusedBefore: number;
  readonly refusedAfter: number;
  readonly correctedBefore: number;
  readonly correctedAfter: number;
  readonly reopenedBefore: number;
  readonly reopenedAfter: number;
}

export const noCounts: Counts = {
  refusedBefore: 0,
  refusedAfter: 0,
  correctedBefore: 0,
  correctedAfter: 0,
  reopenedBefore: 0,
  reopenedAfter: 0,
};

export const addCounts = (one: Counts, other: Counts): Counts => ({
  refusedBefore: one.refusedBefore + other.refusedBefore,
  refusedAfter: one.refusedAfter + other.refusedAfter,
  correctedBefore: one.correctedBefore + other.correctedBefore,
  correctedAfter: one.correctedAfter + other.correctedAfter,
  reopenedBefore: one.reopenedBefore + other.reopenedBefore,
  reopenedAfter: one.reopenedAfter + other.reopenedAfter,
});

const has = (steps: readonly LivedStep[], type: EventType): number =>
  steps.some(({ raw, isAccepted }) => isAccepted && raw.type === type) ? 1 : 0;
const hasRefusal = (steps: readonly LivedStep[]): number =>
  steps.some(({ isAccepted }) => !isAccepted) ? 1 : 0;

/** What happened around the first bowl of this walk: 1 where it happened at all. */
export function countAround({ steps }: LivedWalk): Counts {
  const first = steps.findIndex(({ raw, isAccepted }) => isAccepted && raw.type === 'BOWL_WEIGHED');
  const [before, after] = [steps.slice(0, first), steps.slice(first + 1)];
  return {
    refusedBefore: hasRefusal(before),
    refusedAfter: hasRefusal(after),
    correctedBefore: has(before, 'CORRECTED'),
    correctedAfter: has(after, 'CORRECTED'),
    reopenedBefore: has(before, 'REOPENED'),
    reopenedAfter: has(after, 'REOPENED'),
  };
}

/** Two walks are different when their accepted events are, whatever the clock said. */
export const sign = ({ consultation }: LivedWalk): string =>
  consultation.log.map(({ type, tokens }) => `${type} ${JSON.stringify(tokens)}`).join('\n');

export type Log = readonly ConsultationEvent[];

/** Where in the log are its last bowl, the outcome of that bowl's zone, and the decision under which it was weighed? */
export function findGate(log: Log) {
  const bowlSeq = log.findLastIndex(({ type }) => type === 'BOWL_WEIGHED');
  const { zone } = (log[bowlSeq] as EventOf<'BOWL_WEIGHED'>).payload;
  const before = log.slice(0, bowlSeq);
  return {
    bowlSeq,
    decisionSeq: before.findLastIndex(({ type }) => type === 'DECIDED'),
    outcomeSeq: before.findLastIndex(
      (event) => event.type === 'OUTCOME_RECORDED' && event.payload.zone === zone,
    ),
    startSeq: before.findLastIndex((event) => event.type === 'STRAND_STARTED' && event.payload.zone === zone),
  };
}

export const cutOut = (log: Log, seq: number): Log => log.filter((_event, index) => index !== seq);
