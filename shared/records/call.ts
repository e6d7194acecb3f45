import { msPerMinute } from '../units/time';
import { type Clock, readClock, WARN_BEFORE_MS } from './clock';

/** Somebody is called to a clock: since when, and what for. */
export interface Call {
  readonly clock: Clock;
  readonly why: 'look' | 'basin' | 'end' | 'overrun';
  readonly sinceMs: number;
}

/** How calls differ in sound and sight, the gravest last: a look; off, to the basin or rinsed; and that too late. */
export const callKinds = ['look', 'due', 'overrun'] as const;
export type CallKind = (typeof callKinds)[number];

const kindOf = { look: 'look', basin: 'due', end: 'due', overrun: 'overrun' } as const;

/** As which of the three is this call heard and seen? */
export const findCallKind = ({ why }: Pick<Call, 'why'>): CallKind => kindOf[why];

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
 * before its rinse; whatever is over from its end on, and as an overrun from the second call for it. Drying hair calls nobody: no chemistry runs.
 * Checked in tests/shared/records/call.test.ts.
 */
export function findCall(clock: Clock, nowMs: number): Call | null {
  if (clock.kind === 'dry') return null;
  const { phase, nextLookAtMs } = readClock(clock, nowMs);
  if (phase === 'over') {
    const sinceMs = findOverCall(clock.dueAtMs, nowMs);
    return { clock, why: sinceMs > clock.dueAtMs ? 'overrun' : 'end', sinceMs };
  }
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

const gravityOf = (call: Call): number => callKinds.indexOf(findCallKind(call));
const isOnHead = ({ clock }: Call): number => Number(clock.kind === 'head');

/**
 * Which of several calls is heard? The gravest; of those one on a head; of those the one that waits longest. Undefined
 * where nobody is called. Checked in tests/shared/records/call.test.ts.
 */
export const findGravest = <T extends Call>(calls: readonly T[]): T | undefined =>
  [...calls].sort(
    (one, other) =>
      gravityOf(other) - gravityOf(one) ||
      isOnHead(other) - isOnHead(one) ||
      one.clock.dueAtMs - other.clock.dueAtMs,
  )[0];
