import type { ConsultationRecord, StrandRecord } from '../../../shared/records/record';
import { findStrandClock } from './viewCard';

/** One look at a strand, so long after it began; null: it fell due and nobody made it. */
export interface CardLook {
  readonly sinceMs: number;
  readonly seen: Pick<StrandRecord['looks'][number], 'level' | 'feel'> | null;
}

/** So many looks are written out. Assumed because more lines than these leave the hair no room. */
const ASSUMED_CARD_LOOKS = 12;

/**
 * Which looks were made and missed, in order, and how many of them have no room? The first stays, and the newest do. A
 * look's time is that of its clock, which goes along when the tablet's own clock is put right.
 */
export function listCardLooks(
  record: ConsultationRecord,
  strand: StrandRecord,
): { readonly shown: readonly CardLook[]; readonly left: number } {
  const clock = findStrandClock(record, strand);
  const startedAtMs = clock?.startedAtMs ?? strand.atMs;
  const made = strand.looks.map((look, index) => ({
    sinceMs: (clock?.lookedAtMs[index] ?? look.atMs) - startedAtMs,
    seen: look,
  }));
  const missed = strand.missedLooksAtMs.map((atMs) => ({ sinceMs: atMs - startedAtMs, seen: null }));
  const all: readonly CardLook[] = [...made, ...missed].sort((one, other) => one.sinceMs - other.sinceMs);
  const left = Math.max(all.length - ASSUMED_CARD_LOOKS, 0);
  return { shown: left === 0 ? all : [...all.slice(0, 1), ...all.slice(left + 1)], left };
}
