import { msPerMinute } from '../units/time';
import { type Clock, readClock, WARN_BEFORE_MS } from './clock';

/** Somebody is called to a clock: since when, and what for. */
export interface Call {
  readonly clock: Clock;
  readonly why: 'look' | 'basin' | 'over';
  readonly sinceMs: number;
}

/**
 * So long an overrun stays silent after somebody silenced it. Assumed because whoever silences it walks to the client
 * and takes off or rinses within that time; one who forgot is called again.
 */
export const ASSUMED_SILENT_OVER_MS = 3 * msPerMinute;

/** The newest moment an overrun called: at the end, and every few minutes from then on. */
const findOverCall = (dueAtMs: number, nowMs: number): number =>
  dueAtMs + Math.floor((nowMs - dueAtMs) / ASSUMED_SILENT_OVER_MS) * ASSUMED_SILENT_OVER_MS;

/**
 * Does this clock call somebody at this moment? A look from when the newest one fell due; a head from two minutes
 * before its rinse; whatever is over from its end on. Drying hair calls nobody: no chemistry runs.
 * Checked in tests/shared/records/call.test.ts.
 */
export function findCall(clock: Clock, nowMs: number): Call | null {
  if (clock.kind === 'dry') return null;
  const { phase, nextLookAtMs } = readClock(clock, nowMs);
  if (phase === 'over') return { clock, why: 'over', sinceMs: findOverCall(clock.dueAtMs, nowMs) };
  if (phase === 'nearlyDue' && clock.kind === 'head') {
    return { clock, why: 'basin', sinceMs: clock.dueAtMs - WARN_BEFORE_MS };
  }
  if (nextLookAtMs !== null && nextLookAtMs <= nowMs) return { clock, why: 'look', sinceMs: nextLookAtMs };
  return null;
}

/** Was it silenced, or looked at, since it began to call? What calls anew after that is a call of its own. */
export const isHeard = ({ clock, sinceMs }: Call, silencedAtMs: number | null = null): boolean =>
  Math.max(clock.acknowledgedAtMs ?? Number.NEGATIVE_INFINITY, silencedAtMs ?? Number.NEGATIVE_INFINITY) >=
  sinceMs;
