import type { LevelSeen } from '../../../shared/chemistry/liftReadings';
import type { ConsultationRecord, OutcomeRecord, StrandRecord } from '../../../shared/records/record';
import { viewLevels } from '../strandTest/viewLevels';

/** A strand that can be taped to a card: it was tested today's way, and said what it said. */
export type CardStrand = StrandRecord & { readonly outcome: OutcomeRecord };

/** So many levels are written out. Assumed because more lines than these leave the hair no room. */
const ASSUMED_CARD_LEVELS = 12;

/**
 * Of which strands can a card be printed? Those with an outcome that stands; the newest first. Last time's, carried over,
 * is no hair of today.
 */
export const listCardStrands = ({ strands }: Pick<ConsultationRecord, 'strands'>): readonly CardStrand[] =>
  strands
    .filter((strand): strand is CardStrand => strand.outcome !== null && strand.carried === null)
    .filter(({ isVoid }) => !isVoid)
    .toReversed();

/** The levels that were seen, and how many of them have no room: the first stays, and the newest do. */
export function listCardLevels(
  record: ConsultationRecord,
  strand: StrandRecord,
): { readonly shown: readonly LevelSeen[]; readonly left: number } {
  const { seen } = viewLevels(record, strand);
  const left = Math.max(seen.length - ASSUMED_CARD_LEVELS, 0);
  return { shown: left === 0 ? seen : [...seen.slice(0, 1), ...seen.slice(left + 1)], left };
}
