import { type ClosedRecord, closeRecord } from '../closedRecord';
import {
  type DayFindings,
  gatherFindings,
  isOftenLifted,
  type RuleCount,
  type Told,
} from '../day/dayFindings';
import { type DayEntry, type DayRecords, type Days, gatherDay, listEntries } from '../day/dayRecords';
import { findHoldsDay, type HoldsDay } from '../holdsDay';
import { type ChanceFigures, reckonChance } from './reckonChance';

/** One consultation whose log was judged anew, and when it was told of, ms. */
export type JudgedVisit = Required<Pick<DayEntry, 'record' | 'log' | 'toldAtMs'>>;

/** Who is open still, by ticket, and how she stands: what holds the end of the day, parked, or between two steps. */
export interface StillOpen {
  readonly ticket: string;
  readonly how: HoldsDay | 'parked' | 'carriesOver';
}

type Shared = Pick<DayFindings, 'endings' | 'outcomes' | 'late' | 'missed'>;

/** What of the days is hers or his: of the clients whose hair she does; what she lifted is hers, whoever the client was. */
export interface PersonFigures extends Shared {
  readonly name: string;
  readonly clients: number;
  readonly lifted: number;
}

/** A reaction that was told: whose, and what came of it. */
export interface ToldOf {
  readonly ticket: string;
  readonly atMs: number;
  readonly came: Told['came']['of'];
}

/** Nobody who works there is named in them: neither who did something, nor the words that somebody signed. */
export interface ReportFigures extends Shared {
  readonly rules: readonly (RuleCount & { readonly isOftenLifted: boolean })[];
  readonly from: string;
  readonly to: string;
  /** Everybody with whom something was done in these days. */
  readonly clients: number;
  readonly told: readonly ToldOf[];
  readonly stillOpen: readonly StillOpen[];
  readonly chance: ChanceFigures;
}

const pickShared = ({ endings, outcomes, late, missed }: DayFindings): Shared => ({
  endings,
  outcomes,
  late,
  missed,
});

const findHow = ({ record }: DayEntry): StillOpen['how'] =>
  findHoldsDay(record) ?? (record.parked === null ? 'carriesOver' : 'parked');

const isClosed = (record: ClosedRecord | null): record is ClosedRecord => record !== null;

/** These visits in these days, as the station's own page gathers them; by `nowMs` all that stands open is told. */
export function gatherVisits(visits: readonly JudgedVisit[], nowMs: number, days: Days): DayRecords {
  const open = visits.filter(({ record }) => record.ended === null);
  const closed = visits.map(({ record, log }) => closeRecord(record, log)).filter(isClosed);
  const kept = {
    open: new Map(open.map((visit) => [visit.record.id, visit])),
    closed: closed.sort((one, other) => one.endedAtMs - other.endedAtMs),
    skinTests: [],
  };
  return gatherDay(kept, nowMs, days);
}

/**
 * What came of these days: the same account as the station's own page of a day, over any number of tablets.
 * Checked in tests/shared/records/report/reckonReport.test.ts.
 */
export function reckonReport(records: DayRecords, nowMs: number): ReportFigures {
  const all = listEntries(records);
  const stillOpen = all.filter(({ record }) => record.ended === null);
  const found = gatherFindings(records, nowMs);
  return {
    ...pickShared(found),
    rules: found.rules.map((count) => ({ ...count, isOftenLifted: isOftenLifted(count) })),
    from: records.from,
    to: records.day,
    clients: all.length,
    chance: reckonChance(records),
    told: found.told.map(({ ticket, atMs, came }) => ({ ticket, atMs, came: came.of })),
    stillOpen: stillOpen.map((entry) => ({ ticket: entry.record.ticket, how: findHow(entry) })),
  };
}

/** The same by first name, in the order of the alphabet. */
export function reckonPeople(records: DayRecords, nowMs: number): readonly PersonFigures[] {
  const { lifted } = gatherFindings(records, nowMs);
  const names = new Set([
    ...listEntries(records).map(({ record }) => record.stylist),
    ...lifted.map(({ by }) => by),
  ]);
  return [...names].sort().map((name) => {
    const isHers = ({ record }: DayEntry): boolean => record.stylist === name;
    const hers = {
      ...records,
      closed: records.closed.filter(isHers),
      open: records.open.filter(isHers),
      goneOn: records.goneOn.filter(isHers),
    };
    const shared = pickShared(gatherFindings(hers, nowMs));
    const clients = listEntries(hers).length;
    return {
      name,
      clients,
      ...shared,
      lifted: lifted.filter(({ by }) => by === name).length,
    };
  });
}
