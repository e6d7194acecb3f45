import type { Consultation } from '../../../machines/consultation/consultation';
import { type Clock, readClock } from '../../../shared/records/clock';
import { findDryingClock } from '../../../shared/records/damp';
import { findNextDue } from '../../parts/clockSaid';

/** The places of the bar: two columns of four. */
export const PLACES = 8;

export interface Place {
  readonly chair: number;
  readonly consultation: Consultation | null;
}

/** How soon somebody has to go there: the first comes first of all. */
const urgencies = ['over', 'basin', 'look', 'later'] as const;
type Urgency = (typeof urgencies)[number];

export interface RunningClock {
  readonly consultation: Consultation;
  readonly clock: Clock;
  readonly strandNumber: number | null;
  readonly urgency: Urgency;
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

/** Over, to the basin, to be looked at, or none of it yet? */
function findUrgency(clock: Clock, nowMs: number): Urgency {
  const { phase, nextLookAtMs } = readClock(clock, nowMs);
  // Hair that may be dry by now waits for nobody: it is felt again, no sooner than a look is made.
  if (clock.kind === 'dry') return phase === 'over' ? 'look' : 'later';
  if (phase === 'over') return 'over';
  if (phase === 'nearlyDue') return clock.kind === 'head' ? 'basin' : 'later';
  return nextLookAtMs !== null && nextLookAtMs <= nowMs ? 'look' : 'later';
}

/** What is over comes before the basin, that before a look; a head before a strand that is over as well. */
const compareUrgency = (one: RunningClock, other: RunningClock): number =>
  urgencies.indexOf(one.urgency) - urgencies.indexOf(other.urgency) ||
  (one.urgency === 'over' ? Number(other.clock.kind === 'head') - Number(one.clock.kind === 'head') : 0) ||
  one.nextAtMs - other.nextAtMs;

/** The same, the most urgent first. */
export const sortByUrgency = <T extends RunningClock>(clocks: readonly T[]): T[] =>
  [...clocks].sort(compareUrgency);

const isRunning = ({ endedAtMs }: Clock): boolean => endedAtMs === null;

/** The running clocks of one client, that of her drying hair too; the most urgent first. */
export function listClocks(consultation: Consultation, nowMs: number): readonly RunningClock[] {
  const { record } = consultation;
  const drying = record.ended === null ? findDryingClock(record) : null;
  const running = [...record.clocks.filter(isRunning), ...(drying === null ? [] : [drying])];
  return sortByUrgency(
    running.map((clock) => ({
      consultation,
      clock,
      strandNumber: record.strands.find((strand) => strand.clock === clock.id)?.number ?? null,
      urgency: findUrgency(clock, nowMs),
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
  if (one.what === 'clock' && other.what === 'clock') return compareUrgency(one, other);
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
