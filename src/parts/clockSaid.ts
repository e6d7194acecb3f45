import { findCall } from '../../shared/records/call';
import { type Clock, readClock } from '../../shared/records/clock';
import { formatCountdown, formatQuantity } from '../../shared/units/format';
import type { UnitSettings } from '../../shared/units/quantity';
import type { Words } from '../words/words';

/** A clock in words and digits; `tone` is said by its colour too. */
export interface ClockSaid {
  /** STRAND or HEAD, always first. */
  readonly name: string;
  readonly says: string;
  readonly digits: string;
  readonly tone: 'running' | 'look' | 'warn' | 'over' | 'ended';
  /** When the next look is, or that it is now; null when nobody looks any more. */
  readonly look: string | null;
  readonly dueAt: string;
  readonly missed: string | null;
}

const tones = {
  running: 'running',
  lookDue: 'look',
  nearlyDue: 'warn',
  over: 'over',
  ended: 'ended',
} as const;

/** STRAND 1 and where it is from, HEAD, GLASS or DRYING. */
export const nameClock = (
  clock: Pick<Clock, 'kind' | 'zone'>,
  strandNumber: string,
  { clock: said }: Words,
): string => {
  switch (clock.kind) {
    case 'strand':
      return said.strandName(strandNumber, clock.zone);
    case 'head':
      return said.headName(clock.zone);
    case 'incompatibility':
      return said.glassName;
    case 'dry':
      return said.dryName;
  }
};

/** What does this clock say now? Checked in tests/src/parts/clockSaid.test.tsx. */
export function sayClock(
  clock: Clock,
  strandNumber: number | null,
  nowMs: number,
  words: Words,
  units: UnitSettings,
): ClockSaid {
  const reading = readClock(clock, nowMs);
  const write = (value: number) => formatQuantity(value, 'count', units, words.locale);
  /** One made before it fell due leaves the schedule as it is, and was a look all the same. */
  const isFirstLook =
    clock.lookedAtMs.length === 0 &&
    reading.nextLookAtMs === clock.startedAtMs + (clock.looks?.firstAfterMs ?? 0);
  const sayLookIn = isFirstLook ? words.clock.firstLookIn : words.clock.nextLookIn;
  const leftToLookMs = reading.nextLookAtMs === null ? null : reading.nextLookAtMs - nowMs;
  return {
    name: nameClock(clock, strandNumber === null ? '' : write(strandNumber), words),
    says: words.clock[clock.kind][reading.phase],
    digits: formatCountdown(reading.remainingMs),
    tone: tones[reading.phase],
    look:
      leftToLookMs === null
        ? null
        : leftToLookMs > 0
          ? sayLookIn(formatCountdown(leftToLookMs))
          : words.clock.lookNow,
    dueAt: words.clock.endsAt[clock.kind](words.moments.time(clock.dueAtMs)),
    missed: reading.missedLooks === 0 ? null : words.clock.missedLooks(write(reading.missedLooks)),
  };
}

/** What of this clock comes next, a look or the end; for the strip and the places of the bar. */
export interface NextDue {
  readonly name: string;
  readonly says: string;
  readonly digits: string;
  readonly tone: ClockSaid['tone'];
  readonly atMs: number;
}

/** When does this clock next want somebody: at a look (since when, if it is due), or at the end once it is near? */
export function findNextDue(
  clock: Clock,
  nowMs: number,
): { readonly comes: 'lookDue' | 'look' | 'end'; readonly atMs: number } {
  const call = findCall(clock, nowMs);
  if (call?.why === 'look') return { comes: 'lookDue', atMs: call.waitsSinceMs };
  const { nextLookAtMs, phase } = readClock(clock, nowMs);
  return nextLookAtMs === null || phase === 'nearlyDue'
    ? { comes: 'end', atMs: clock.dueAtMs }
    : { comes: 'look', atMs: nextLookAtMs };
}

/** What of this clock is due next, and in how long? Digits count up once it is due. */
export function sayNextDue(
  clock: Clock,
  strandNumber: number | null,
  nowMs: number,
  words: Words,
  units: UnitSettings,
): NextDue {
  const { name, says, tone } = sayClock(clock, strandNumber, nowMs, words, units);
  const { comes, atMs } = findNextDue(clock, nowMs);
  const digits = formatCountdown(atMs - nowMs);
  switch (comes) {
    case 'lookDue':
      return { name, says: words.clock.lookDue, digits, tone: 'look', atMs };
    case 'look':
      return { name, says: words.clock.lookIn, digits, tone, atMs };
    case 'end':
      return { name, says, digits, tone, atMs };
  }
}
