import { msPerMinute } from '../units/time';
import { type Clock, readClock, WARN_BEFORE_MS } from './clock';
import { findLookDueSinceMs } from './lookDue';

/** Somebody is called to a clock: what for, since when, and since when the client waits for it. */
export interface Call {
  readonly clock: Clock;
  readonly why: 'look' | 'basin' | 'end' | 'overrun';
  /** When it began to call; whoever was there since then has heard it. */
  readonly sinceMs: number;
  /** Since when she waits, however often it called: the first look that nobody made, the way to the basin, the end. */
  readonly waitsSinceMs: number;
}

/** How calls differ in sound and sight, the gravest last: a look; off, to the basin or rinsed; and that too late. */
export const callKinds = ['look', 'due', 'overrun'] as const;
export type CallKind = (typeof callKinds)[number];

const kindOf = { look: 'look', basin: 'due', end: 'due', overrun: 'overrun' } as const;

/** As which of the three is this call heard and seen? */
export const findCallKind = ({ why }: Pick<Call, 'why'>): CallKind => kindOf[why];

/**
 * From so long over on it is an overrun, and so long it stays silent after somebody silenced it. Assumed because whoever
 * silences it walks to the client and takes off or rinses within that time; one who forgot is called again.
 */
export const ASSUMED_SILENT_OVER_MS = 3 * msPerMinute;

/** When somebody last heard this clock; before all time where nobody did. */
const findHeardAtMs = (clock: Clock, silencedAtMs: number | null): number =>
  Math.max(clock.acknowledgedAtMs ?? Number.NEGATIVE_INFINITY, silencedAtMs ?? Number.NEGATIVE_INFINITY);

function findOverCall(clock: Clock, nowMs: number, heardAtMs: number): Call {
  const { dueAtMs } = clock;
  const overrunAtMs = dueAtMs + ASSUMED_SILENT_OVER_MS;
  const why = nowMs < overrunAtMs ? 'end' : 'overrun';
  const call = { clock, why, waitsSinceMs: dueAtMs } as const;
  if (heardAtMs < dueAtMs) return { ...call, sinceMs: why === 'end' ? dueAtMs : overrunAtMs };
  const againAtMs = heardAtMs + ASSUMED_SILENT_OVER_MS;
  return { ...call, sinceMs: againAtMs <= nowMs ? againAtMs : dueAtMs };
}

/**
 * Does this clock call somebody at this moment? A look from when the newest one fell due; a head from two minutes
 * before its rinse; whatever is over from its end on, once more as an overrun after some minutes, and again as long
 * after each time it was heard since its end. `silencedAtMs` is when this tablet was told to be quiet, where that could
 * not be written. Drying hair calls nobody: no chemistry runs. Checked in tests/shared/records/call.test.ts.
 */
export function findCall(clock: Clock, nowMs: number, silencedAtMs: number | null = null): Call | null {
  if (clock.kind === 'dry') return null;
  const { phase, nextLookAtMs } = readClock(clock, nowMs);
  if (phase === 'over') return findOverCall(clock, nowMs, findHeardAtMs(clock, silencedAtMs));
  if (phase === 'nearlyDue' && clock.kind === 'head') {
    const sinceMs = clock.dueAtMs - WARN_BEFORE_MS;
    return { clock, why: 'basin', sinceMs, waitsSinceMs: sinceMs };
  }
  if (nextLookAtMs === null || nextLookAtMs > nowMs) return null;
  const waitsSinceMs = findLookDueSinceMs(clock, nowMs) ?? nextLookAtMs;
  return { clock, why: 'look', sinceMs: nextLookAtMs, waitsSinceMs };
}

/** Was it silenced, or looked at, since it began to call? What calls anew after that is a call of its own. */
export const isHeard = ({ clock, sinceMs }: Call, silencedAtMs: number | null = null): boolean =>
  findHeardAtMs(clock, silencedAtMs) >= sinceMs;
