import type { ConsultationRecord, StrandRecord } from '../records/record';
import type { Settings } from '../records/settings';
import { msPerDay, msPerHour } from '../units/time';
import { isLifting } from './stops';

/** After so many days an outcome lapses. Assumed because hair goes on being washed and ironed meanwhile. */
export const ASSUMED_OUTCOME_LAPSES_DAYS = 28;

/**
 * For so many weeks a strand's outcome is carried to the same deposit, if nothing is new. Assumed because that is about
 * three visits, and hair that grew and was washed a whole season is no longer the hair that was tested.
 */
export const ASSUMED_CARRIED_LAPSES_WEEKS = 12;

/** Away for longer than this, what holds for today is asked anew. Assumed because skin changes overnight. */
export const ASSUMED_SAME_DAY_MS = 12 * msPerHour;

const OUTCOME_LAPSES_MS = ASSUMED_OUTCOME_LAPSES_DAYS * msPerDay;
const CARRIED_LAPSES_MS = ASSUMED_CARRIED_LAPSES_WEEKS * 7 * msPerDay;

/** Is a strand that came off then too old to be carried? One that seems to lie ahead of the clock is, too. */
export const isTooOldToCarry = (strandAtMs: number, nowMs: number): boolean =>
  nowMs < strandAtMs || nowMs - strandAtMs > CARRIED_LAPSES_MS;

/** A strand is as old as the moment it came off: recorded anew, or carried, it grows no younger. */
const findStrandAtMs = (strand: StrandRecord): number => strand.ended?.atMs ?? strand.atMs;

/**
 * Until when does this strand's outcome count, if nothing else changes? In ms of the clock, the last moment included.
 * Whoever asks has an outcome in hand. Exact. Checked in tests/shared/judgement/lapse.test.ts.
 */
export const findLapseAtMs = (strand: StrandRecord): number =>
  findStrandAtMs(strand) + (strand.carried === null ? OUTCOME_LAPSES_MS : CARRIED_LAPSES_MS);

/** Is this outcome too old to stand for today's hair? */
export function isLapsed(strand: StrandRecord, nowMs: number): boolean {
  if (strand.outcome === null) return false;
  return strand.carried === null
    ? nowMs > findLapseAtMs(strand)
    : isTooOldToCarry(findStrandAtMs(strand), nowMs);
}

/** Was the wet stretch told today? */
export const isFeltToday = ({ stretchAtMs }: ConsultationRecord, nowMs: number): boolean =>
  stretchAtMs !== null && nowMs - stretchAtMs <= ASSUMED_SAME_DAY_MS;

/** Why a carried outcome holds nothing up at this moment. */
export type CarriedHold = 'carriedOff' | 'carriedTooOld' | 'carriedNotToday' | 'carriedLifts';

/**
 * Why does this carried outcome untie nothing now? null: nothing speaks against it, or it is no carried one.
 * Turned off by the owner it holds at once, whatever was carried under it: off means a strand each time, and a permit is
 * derived anew at every use. What is on a head already stays until its time.
 */
export function findCarriedHold(
  strand: StrandRecord,
  record: ConsultationRecord,
  settings: Settings,
  nowMs: number,
): CarriedHold | null {
  if (strand.carried === null) return null;
  if (!settings.carried) return 'carriedOff';
  if (isLifting(record.answers.client?.service ?? 'lighten')) return 'carriedLifts';
  if (isLapsed(strand, nowMs)) return 'carriedTooOld';
  return isFeltToday(record, nowMs) ? null : 'carriedNotToday';
}
