import { msPerMinute } from '../units/time';
import type { Zone } from './zones';

/** A countdown kept as data: wall-clock moments only, so that it survives sleep, reload and power cut. */
export interface Clock {
  readonly id: string;
  readonly kind: 'strand' | 'head' | 'incompatibility' | 'dry';
  readonly zone: Zone | null;
  readonly startedAtMs: number;
  /** First look after the start, then every so often; null where nobody looks in between. */
  readonly looks: { readonly firstAfterMs: number; readonly everyMs: number } | null;
  readonly dueAtMs: number;
  /** The maker's limit: no extension reaches beyond it. */
  readonly limitAtMs: number;
  readonly lookedAtMs: readonly number[];
  readonly acknowledgedAtMs: number | null;
  readonly endedAtMs: number | null;
}

/** What a clock says at one moment. `remainingMs` is negative once it is over. */
export interface ClockReading {
  readonly phase: 'running' | 'lookDue' | 'nearlyDue' | 'over' | 'ended';
  readonly remainingMs: number;
  readonly nextLookAtMs: number | null;
  readonly missedLooks: number;
}

/** Warn so early before the end that the client reaches the basin in time: common practice, no source. */
export const WARN_BEFORE_MS = 2 * msPerMinute;

/** How many scheduled looks have begun by `nowMs`? The last one begins before the clock is due. */
const countLooksBegun = (clock: Clock, nowMs: number): number => {
  if (clock.looks === null) return 0;
  const untilMs = Math.min(nowMs, clock.dueAtMs - 1);
  const sinceFirstMs = untilMs - clock.startedAtMs - clock.looks.firstAfterMs;
  return sinceFirstMs < 0 ? 0 : Math.floor(sinceFirstMs / clock.looks.everyMs) + 1;
};

/** In which intervals was looked? A look counts for the one it was made in, and none after the end, which a look may bring. */
const listLooked = (clock: Clock): ReadonlySet<number> =>
  new Set(
    clock.lookedAtMs
      .filter((lookMs) => lookMs <= clock.dueAtMs)
      .map((lookMs) => countLooksBegun(clock, lookMs)),
  );

/**
 * Which looks were missed by now, each as the moment it fell due? An interval that ended without a look is a missed one,
 * and stays one when somebody looks after the end; the interval that runs is not over yet. In ms since 1970-01-01 UTC,
 * the earliest first; exact. Checked in tests/shared/records/clock.test.ts.
 */
export function listMissedLooks(clock: Clock, nowMs: number): readonly number[] {
  const { looks, startedAtMs } = clock;
  if (looks === null) return [];
  const atMs = clock.endedAtMs ?? nowMs;
  const begun = countLooksBegun(clock, atMs);
  const looked = listLooked(clock);
  const closed = atMs < clock.dueAtMs ? Math.max(0, begun - 1) : begun;
  return Array.from({ length: closed }, (_, index) => index)
    .filter((index) => !looked.has(index + 1))
    .map((index) => startedAtMs + looks.firstAfterMs + index * looks.everyMs);
}

/**
 * What does this clock say now?
 * Exact in milliseconds; checked in tests/shared/records/clock.test.ts.
 */
export function readClock(clock: Clock, nowMs: number): ClockReading {
  const atMs = clock.endedAtMs ?? nowMs;
  const begun = countLooksBegun(clock, atMs);
  const isLookOpen = begun > 0 && !listLooked(clock).has(begun) && atMs < clock.dueAtMs;
  const remainingMs = clock.dueAtMs - atMs;
  return {
    phase: readPhase(clock, remainingMs, isLookOpen),
    remainingMs,
    nextLookAtMs: findNextLook(clock, begun, isLookOpen),
    missedLooks: listMissedLooks(clock, nowMs).length,
  };
}

function readPhase(clock: Clock, remainingMs: number, isLookOpen: boolean): ClockReading['phase'] {
  if (clock.endedAtMs !== null) return 'ended';
  if (remainingMs <= 0) return 'over';
  if (remainingMs <= WARN_BEFORE_MS) return 'nearlyDue';
  return isLookOpen ? 'lookDue' : 'running';
}

function findNextLook(clock: Clock, begun: number, isLookOpen: boolean): number | null {
  if (clock.looks === null || clock.endedAtMs !== null) return null;
  const index = isLookOpen ? begun - 1 : begun;
  const lookAtMs = clock.startedAtMs + clock.looks.firstAfterMs + index * clock.looks.everyMs;
  return lookAtMs < clock.dueAtMs ? lookAtMs : null;
}

/** The same clock, all of it so much later: also the end of one whose bowl may still be on. */
export const moveClock = (clock: Clock, byMs: number): Clock => ({
  ...clock,
  startedAtMs: clock.startedAtMs + byMs,
  dueAtMs: clock.dueAtMs + byMs,
  limitAtMs: clock.limitAtMs + byMs,
  lookedAtMs: clock.lookedAtMs.map((lookMs) => lookMs + byMs),
  acknowledgedAtMs: clock.acknowledgedAtMs === null ? null : clock.acknowledgedAtMs + byMs,
  endedAtMs: clock.endedAtMs === null ? null : clock.endedAtMs + byMs,
});

/** The same clock after the tablet's own clock was moved by `shiftMs`: what ran stays as long as it was. */
export const shiftClock = (clock: Clock, shiftMs: number): Clock =>
  clock.endedAtMs === null ? moveClock(clock, shiftMs) : clock;

/** The same clocks with those that match ended at this moment; an ended one keeps its end. */
export const endClocks = (
  clocks: readonly Clock[],
  atMs: number,
  matches: (clock: Clock) => boolean = () => true,
): readonly Clock[] =>
  clocks.map((clock) => (clock.endedAtMs === null && matches(clock) ? { ...clock, endedAtMs: atMs } : clock));
