import type { BowlRecord, ConsultationRecord } from './record';
import type { Zone } from './zones';

type Told = Pick<ConsultationRecord, 'reaction' | 'bowls'>;

/** Was this bowl rinsed since the reaction was told, by its place in the log? */
export const isRinsedSinceTold = ({ reaction }: Told, { state, rinsedSeq }: BowlRecord): boolean =>
  reaction !== null && state === 'rinsed' && rinsedSeq !== null && rinsedSeq > reaction.seq;

/** Zones over which water was said to run since the reaction was told. */
export const listRinsedSinceTold = (record: Told): readonly Zone[] =>
  record.bowls.filter((bowl) => isRinsedSinceTold(record, bowl)).map(({ zone }) => zone);
