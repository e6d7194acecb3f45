import type { Consultation } from '../../../machines/consultation/consultation';
import { findCall } from '../../../shared/records/call';
import type { Clock } from '../../../shared/records/clock';
import { findDryingClock } from '../../../shared/records/damp';
import { compareWaiting, type Waiting } from '../../../shared/records/whoFirst';
import { findNextDue } from '../../parts/clockSaid';

/** The places of the bar: two columns of four. */
export const PLACES = 8;

export interface Place {
  readonly chair: number;
  readonly consultation: Consultation | null;
}

export interface RunningClock {
  readonly consultation: Consultation;
  readonly clock: Clock;
  readonly strandNumber: number | null;
  /** What somebody has to go there for by now, silenced or not; null while there is nothing. */
  readonly waiting: Waiting | null;
  /** The next look, or the end once it is near: the moment that is shown. */
  readonly nextAtMs: number;
}

/** A reaction that nobody has closed yet. */
export interface RunningReaction {
  readonly consultation: Consultation;
  /** Something is on her still: since when; else when it was told. */
  readonly isOn: boolean;
  readonly sinceMs: number;
}

/** What somebody has to see to: a reaction, or a clock. */
export type BarDue =
  | ({ readonly what: 'reaction' } & RunningReaction)
  | ({ readonly what: 'clock' } & RunningClock);

export interface BarView {
  readonly places: readonly Place[];
  /** Away between visits, who is back soonest first. */
  readonly parked: readonly Consultation[];
  /** Open, but their place is taken or lies beyond the lanes; the most urgent first. */
  readonly waiting: readonly Consultation[];
  /** All that somebody has to see to, over all clients, the most urgent first. */
  readonly due: readonly BarDue[];
}

/** Hair that may be dry by now calls nobody: it is felt again, no sooner than a look is made. */
const findWaiting = (clock: Clock, nowMs: number): Waiting | null =>
  clock.kind === 'dry'
    ? clock.dueAtMs <= nowMs
      ? { clock, why: 'look', waitsSinceMs: clock.dueAtMs }
      : null
    : findCall(clock, nowMs);

/** Who waits comes before who will, in the order of the calls; of those the one whose look or end comes soonest. */
function compareRunning(one: RunningClock, other: RunningClock): number {
  if (one.waiting !== null && other.waiting !== null) return compareWaiting(one.waiting, other.waiting);
  return Number(one.waiting === null) - Number(other.waiting === null) || one.nextAtMs - other.nextAtMs;
}

/** The same, whoever waits first in front. */
export const sortRunning = <T extends RunningClock>(clocks: readonly T[]): T[] =>
  [...clocks].sort(compareRunning);

const isRunning = ({ endedAtMs }: Clock): boolean => endedAtMs === null;

/** The running clocks of one client, that of her drying hair too; the most urgent first. */
export function listClocks(consultation: Consultation, nowMs: number): readonly RunningClock[] {
  const { record } = consultation;
  const drying = record.ended === null ? findDryingClock(record) : null;
  const running = [...record.clocks.filter(isRunning), ...(drying === null ? [] : [drying])];
  return sortRunning(
    running.map((clock) => ({
      consultation,
      clock,
      strandNumber: record.strands.find((strand) => strand.clock === clock.id)?.number ?? null,
      waiting: findWaiting(clock, nowMs),
      nextAtMs: findNextDue(clock, nowMs).atMs,
    })),
  );
}

/** Does she react at this moment, and since when is something on her, or was it told? */
function findReaction(consultation: Consultation): RunningReaction | null {
  const { record, state, log } = consultation;
  if (record.ended !== null || state.context.facts.care === 'calm') return null;
  const onSince = record.clocks.filter((clock) => clock.kind === 'head' && isRunning(clock));
  if (onSince.length > 0) {
    const sinceMs = Math.min(...onSince.map(({ startedAtMs }) => startedAtMs));
    return { consultation, isOn: true, sinceMs };
  }
  const told = log.findLast(
    (event) => event.type === 'REACTION_SUSPECTED' || (event.type === 'LOOKED' && event.tokens.stings),
  );
  return { consultation, isOn: false, sinceMs: told?.atMs ?? record.newestAtMs };
}

/**
 * Everything one client asks for, the most urgent first: her reaction, then her clocks. What is on her head while she
 * reacts is part of the reaction: it is rinsed now, whatever its clock says.
 */
export function listDueOf(consultation: Consultation, nowMs: number): readonly BarDue[] {
  const reaction = findReaction(consultation);
  const clocks = listClocks(consultation, nowMs)
    .filter(({ clock }) => reaction === null || clock.kind !== 'head')
    .map((clock) => ({ ...clock, what: 'clock' }) as const);
  return reaction === null ? clocks : [{ ...reaction, what: 'reaction' }, ...clocks];
}

/** A reaction is first of all, with something on her before one that is rinsed; then the clocks. */
function compareDue(one: BarDue, other: BarDue): number {
  if (one.what === 'clock' && other.what === 'clock') return compareRunning(one, other);
  if (one.what === 'reaction' && other.what === 'reaction') {
    return Number(other.isOn) - Number(one.isOn) || one.sinceMs - other.sinceMs;
  }
  return one.what === 'reaction' ? -1 : 1;
}

/** Should she be back by now? */
export const isBackLate = ({ record }: Consultation, nowMs: number): boolean =>
  record.parked !== null && record.ended === null && record.parked.untilAtMs < nowMs;

const backAt = ({ record }: Consultation): number => record.parked?.untilAtMs ?? 0;

/** Who sits where, who is away, and what is due next? Checked in tests/src/screens/viewBar.test.tsx. */
export function viewBar(open: readonly Consultation[], chairs: number, nowMs: number): BarView {
  const here = open.filter(({ record }) => record.parked === null);
  const places = Array.from({ length: Math.min(chairs, PLACES) }, (_, index) => ({
    chair: index + 1,
    consultation: here.find(({ record }) => record.chair === index + 1) ?? null,
  }));
  const seated = new Set(places.map(({ consultation }) => consultation?.id));
  const due = open.flatMap((consultation) => listDueOf(consultation, nowMs)).sort(compareDue);
  const rankOf = ({ id }: Consultation): number => {
    const rank = due.findIndex(({ consultation }) => consultation.id === id);
    return rank === -1 ? due.length : rank;
  };
  return {
    places,
    parked: open
      .filter(({ record }) => record.parked !== null)
      .sort((one, other) => backAt(one) - backAt(other)),
    waiting: here.filter(({ id }) => !seated.has(id)).sort((one, other) => rankOf(one) - rankOf(other)),
    due,
  };
}
