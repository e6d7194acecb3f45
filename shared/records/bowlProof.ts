import type { Decision } from '../judgement/decisions';
import type { Mix } from '../judgement/mixes';
import type { Fibre } from './event';

/** What was known when a bowl was weighed: kept with it, whatever is retracted later. */
export interface BowlProof {
  readonly tested: Mix;
  readonly grade: Exclude<Fibre, 'unknown'>;
  readonly outcomeSeq: number;
  readonly decisionSeq: number;
  readonly decision: Decision;
  /** Where the outcome was carried: when the strand itself came off, and for which service the bowl is. */
  readonly carried: { readonly strandAtMs: number; readonly service: string } | null;
}

/** What a strand and a decision have to say about it. */
interface Tested {
  readonly outcome: { readonly grade: BowlProof['grade']; readonly seq: number } | null;
}
interface Decided {
  readonly decision: Decision;
  readonly seq: number;
}

/** What was known of this zone when a bowl was weighed for it: null when something is missing. */
export const findProof = (
  strand: Tested | undefined,
  decision: Decided | null,
  tested: Mix | undefined,
  carried: BowlProof['carried'],
): BowlProof | null =>
  strand?.outcome == null || decision === null || tested === undefined
    ? null
    : {
        tested,
        grade: strand.outcome.grade,
        outcomeSeq: strand.outcome.seq,
        decisionSeq: decision.seq,
        decision: decision.decision,
        carried,
      };
