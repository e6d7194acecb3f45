import type { Clock } from '../../../shared/records/clock';
import type { ConsultationRecord, StrandRecord } from '../../../shared/records/record';
import { msPerMinute } from '../../../shared/units/time';

/** A strand that can be taped to a card: it is off, whatever became of it. */
export type CardStrand = StrandRecord & { readonly ended: NonNullable<StrandRecord['ended']> };

/**
 * Of which strands can a card be printed? Those that are out of their mix, the newest first: also one that broke, one
 * that was put aside, and one whose outcome nobody recorded yet; each says so. Last time's, carried over, is no hair of
 * today, and what a correction voided is no card.
 */
export const listCardStrands = ({ strands }: Pick<ConsultationRecord, 'strands'>): readonly CardStrand[] =>
  strands
    .filter((strand): strand is CardStrand => strand.ended !== null && strand.carried === null)
    .filter(({ isVoid }) => !isVoid)
    .toReversed();

/** Which one is shown first? The newest that said something, else the newest. */
export const findFirstCard = (strands: readonly CardStrand[]): CardStrand | undefined =>
  strands.find(({ outcome }) => outcome !== null) ?? strands[0];

/** What keeps this card from being one like any other: it is said beside its number. */
export type CardStamp = 'broke' | 'discarded' | 'noOutcome';

/** null where it came off and said what it said. */
export function findStamp({ ended, outcome }: CardStrand): CardStamp | null {
  if (ended.how === 'discarded') return 'discarded';
  if (ended.how === 'broke' || outcome?.grade === 'broken') return 'broke';
  return outcome === null ? 'noOutcome' : null;
}

/** When a strand was on, by its own clock, which went along when the tablet's was put right. */
export interface CardTimes {
  readonly startedAtMs: number;
  readonly endedAtMs: number;
  readonly onMs: number;
  /** What was planned at the start, and what its clock was set to at last; minutes. */
  readonly plannedMin: number;
  readonly setMin: number;
  /** What counts as tested: whole minutes, never beyond the clock; null where it was put aside. */
  readonly countsMin: number | null;
}

export const findStrandClock = ({ clocks }: ConsultationRecord, strand: StrandRecord): Clock | undefined =>
  clocks.find(({ id }) => id === strand.clock);

/** How long was it on, and how long was it to be? */
export function findTimes(record: ConsultationRecord, strand: CardStrand): CardTimes {
  const clock = findStrandClock(record, strand);
  const startedAtMs = clock?.startedAtMs ?? strand.atMs;
  const endedAtMs = clock?.endedAtMs ?? strand.ended.atMs;
  const dueAtMs = clock?.dueAtMs ?? startedAtMs + strand.minutes * msPerMinute;
  return {
    startedAtMs,
    endedAtMs,
    onMs: endedAtMs - startedAtMs,
    plannedMin: strand.minutes,
    setMin: (dueAtMs - startedAtMs) / msPerMinute,
    countsMin: strand.ended.how === 'discarded' ? null : strand.minutesOn,
  };
}
