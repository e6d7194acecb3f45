import type { StretchAnswers } from './forms/bowl';
import type { ConsultationRecord, StretchRecord } from './record';
import type { Zone } from './zones';

/** What was known when a toner was weighed: kept with it, whatever is felt later. */
export interface TonerProof {
  readonly stretch: StretchAnswers['stretch'];
  readonly stretchSeq: number;
  /** The rinse before it, by its place in the log. */
  readonly rinsedSeq: number;
}

/** The newest wet stretch that was felt on the head in this zone. */
export const findStretch = (
  { stretches }: Pick<ConsultationRecord, 'stretches'>,
  zone: Zone,
): StretchRecord | undefined => stretches.findLast((felt) => felt.zone === zone);

/** When was the last bowl of this zone rinsed, by its place in the log? null while one is on or waits, and before any. */
export function findLastRinse({ bowls }: Pick<ConsultationRecord, 'bowls'>, zone: Zone): number | null {
  const last = bowls.findLast(
    (bowl) =>
      bowl.zone === zone && bowl.state !== 'thrown' && !(bowl.kind === 'toner' && bowl.state === 'weighed'),
  );
  return last?.state === 'rinsed' ? last.rinsedSeq : null;
}

/** What a toner weighed now stands on: null when something is missing. */
export function findTonerProof(
  record: Pick<ConsultationRecord, 'bowls' | 'stretches'>,
  zone: Zone,
): TonerProof | null {
  const felt = findStretch(record, zone);
  const rinsedSeq = findLastRinse(record, zone);
  return felt === undefined || rinsedSeq === null
    ? null
    : { stretch: felt.stretch, stretchSeq: felt.seq, rinsedSeq };
}
