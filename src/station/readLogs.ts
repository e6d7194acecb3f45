import * as v from 'valibot';
import type { Consultation } from '../../machines/consultation/consultation';
import { type FindSettings, replay } from '../../machines/consultation/replay';
import type { BenchTrial } from '../../shared/records/bench/benchTrial';
import { type ClosedRecord, isSameLog, parseClosedRecord } from '../../shared/records/closedRecord';
import { defaultSettings, type Settings, settingsSchema } from '../../shared/records/settings';
import type { SkinTest } from '../../shared/records/skinTest/skinTest';
import { tellEntries } from '../../shared/records/skinTest/told';
import { isToldErasing, readTombstone } from '../../shared/records/tombstone';
import type { Json } from '../storage/json';
import { readOutline } from '../storage/packed';
import { readBenchTrials } from './benchTrials';
import { leaveOutErased, listSweeps } from './erased';
import { findTicket } from './findTicket';
import { CLOSED, ERASED_LOG, OPEN, SETTINGS_LOG, UNJUDGED_LOG } from './logNames';
import type { Notice } from './notice';
import { placeBrought } from './placeBrought';
import { type PracticeKept, readPractice } from './practice/practiceLogs';
import { readSkinTests } from './skinTestLogs';
import type { Erasings, SettingsInForce } from './stationState';
import { readUnjudged, type Unjudged } from './unjudged';

/** What the logs of the store say, all together; what could not be taken up is named. */
export interface ReadLogs {
  readonly settings: SettingsInForce;
  readonly findSettings: FindSettings;
  readonly open: ReadonlyMap<string, Consultation>;
  readonly closed: readonly ClosedRecord[];
  readonly skinTests: readonly SkinTest[];
  readonly bench: readonly BenchTrial[];
  readonly erasings: Erasings;
  readonly unjudged: readonly Unjudged[];
  readonly practice: PracticeKept | null;
  readonly notices: readonly Notice[];
  /** Logs the replay refused: to be set aside by the window that writes. */
  readonly refused: readonly { readonly name: string; readonly isNewer: boolean }[];
}

type Logs = ReadonlyMap<string, readonly Json[]>;

function readSettings(logs: Logs): { kept: readonly (Settings | undefined)[]; notices: readonly Notice[] } {
  const notices: Notice[] = [];
  const kept = (logs.get(SETTINGS_LOG) ?? []).map((entry, seq) => {
    const read = v.safeParse(v.object({ settings: settingsSchema }), entry);
    if (read.success) return read.output.settings;
    notices.push({ kind: 'refusedEntry', name: SETTINGS_LOG, seq });
    return undefined;
  });
  return { kept, notices };
}

/** Who saved this edition of the settings? */
function findSaver(logs: Logs, id: number): string {
  const read = v.safeParse(v.object({ by: v.string() }), logs.get(SETTINGS_LOG)?.[id]);
  return read.success ? read.output.by : '';
}

interface MonthRead {
  readonly records: readonly ClosedRecord[];
  readonly notices: readonly Notice[];
}

/** A month is a list that never changes, so it is read once. */
const monthsRead = new WeakMap<readonly Json[], MonthRead>();

/** The closed records of one month, one by one. Judged by their outline: their logs are read when somebody asks for them. */
export function* judgeMonth(name: string, entries: readonly Json[]): Generator<void, MonthRead> {
  const known = monthsRead.get(entries);
  if (known !== undefined) return known;
  const records: ClosedRecord[] = [];
  const notices: Notice[] = [];
  for (const [seq, entry] of entries.entries()) {
    const shape = readOutline(entry);
    const record = parseClosedRecord(shape);
    if (record === null) notices.push({ kind: 'refusedEntry', name, seq });
    else records.push(shape === entry ? record : (entry as unknown as ClosedRecord));
    yield;
  }
  const read = { records, notices };
  monthsRead.set(entries, read);
  return read;
}

/** At one go. */
function finishAll<T>(pieces: Generator<void, T>): T {
  for (let next = pieces.next(); ; next = pieces.next()) if (next.done === true) return next.value;
}

/** The closed records of one month. */
export const readMonth = (name: string, entries: readonly Json[]): MonthRead =>
  finishAll(judgeMonth(name, entries));

interface ClosedRead {
  readonly closed: readonly ClosedRecord[];
  readonly notices: readonly Notice[];
}

/** What the same months came to last time: they are asked for at each change of a setting, and there may be years of them. */
let lastRead: { readonly months: readonly MonthRead[]; readonly read: ClosedRead } | null = null;

/** In the order in which they were closed, month by month: what came later counts, whatever the clock said then. */
function* gatherClosed(logs: Logs): Generator<void, ClosedRead> {
  const named = [...logs].filter(([name]) => name.startsWith(CLOSED));
  const inOrder = named.sort(([one], [other]) => (one < other ? -1 : 1));
  const months = inOrder.map(([name, entries]) => readMonth(name, entries));
  const known = lastRead?.months ?? [];
  const isSame = known.length === months.length && months.every((month, at) => month === known[at]);
  if (lastRead !== null && isSame) return lastRead.read;
  const byId = new Map<string, readonly ClosedRecord[]>();
  for (const { records } of months) {
    for (const record of records) {
      const others = byId.get(record.id) ?? [];
      // What two stations tell otherwise of one record stands twice; the same log once.
      byId.set(record.id, [...others.filter(({ log }) => !isSameLog(log, record.log)), record]);
    }
    yield;
  }
  const read = {
    closed: placeBrought([...byId.values()].flat()),
    notices: months.flatMap(({ notices }) => notices),
  };
  lastRead = { months, read };
  return read;
}

const readClosed = (logs: Logs): ClosedRead => finishAll(gatherClosed(logs));

/** Puts what closed in its order, month by month, so that `readLogs` finds it done. */
export const prepareClosed = (all: Logs): Generator<void, unknown> => gatherClosed(leaveOutErased(all));

/** A tombstone of a newer edition erases all the same, and is named. */
function readErasings(logs: Logs): { erasings: Erasings; notices: readonly Notice[] } {
  const entries = logs.get(ERASED_LOG) ?? [];
  const read = entries.map(readTombstone);
  return {
    erasings: {
      tombstones: read.filter((tombstone) => tombstone !== null),
      unfinished: listSweeps(logs).length,
    },
    notices: read.flatMap((tombstone, seq) =>
      tombstone === null && !isToldErasing(entries[seq])
        ? [{ kind: 'refusedEntry', name: ERASED_LOG, seq } as const]
        : [],
    ),
  };
}

const findKept =
  (kept: readonly (Settings | undefined)[]): FindSettings =>
  (id) =>
    kept.slice(0, id + 1).findLast((settings) => settings !== undefined) ?? defaultSettings;

/** The editions of the settings that are kept in these logs, by the number that events name. */
export const findSettingsIn = (logs: Logs): FindSettings => findKept(readSettings(logs).kept);

/**
 * What is on this station? Every log is folded; one that is not what it claims to be is named and left out. What was
 * erased is not there, whatever the rest of it still lies in.
 */
export function readLogs(all: Logs): ReadLogs {
  const logs = leaveOutErased(all);
  const { kept, notices: aboutSettings } = readSettings(logs);
  const { closed, notices: aboutClosed } = readClosed(logs);
  const { erasings, notices: aboutErased } = readErasings(all);
  const { unjudged, unread } = readUnjudged(logs);
  const findSettings = findKept(kept);
  const lastId = kept.findLastIndex((settings) => settings !== undefined);
  const open = new Map<string, Consultation>();
  const notices = [
    ...[...aboutSettings, ...aboutClosed, ...aboutErased],
    ...unread.map((seq): Notice => ({ kind: 'refusedEntry', name: UNJUDGED_LOG, seq })),
  ];
  const refused: { name: string; isNewer: boolean }[] = [];
  for (const [name, entries] of logs) {
    if (!name.startsWith(OPEN)) continue;
    const id = name.slice(OPEN.length);
    const read = replay(id, entries, findSettings);
    if (read.ok) open.set(id, read.value);
    else {
      notices.push({ kind: 'refusedLog', name, ticket: findTicket(entries), fault: read.error });
      refused.push({ name, isNewer: read.error.code === 'newerVersion' });
    }
  }
  const practice = readPractice(logs);
  notices.push(...practice.notices);
  const skinTests = readSkinTests(logs, findSettings);
  for (const { name, fault } of skinTests.refused) {
    const told = tellEntries(logs.get(name) ?? [], findSettings).map(({ entry }) => entry);
    notices.push({ kind: 'refusedLog', name, ticket: findTicket(told), fault });
    refused.push({ name, isNewer: fault.code === 'newerVersion' });
  }
  const bench = readBenchTrials(logs);
  for (const { name, fault } of bench.refused) {
    notices.push({ kind: 'refusedLog', name, ticket: null, fault });
    refused.push({ name, isNewer: fault.code === 'newerVersion' });
  }
  const inOrder = [...open].sort(([, one], [, other]) => openedAt(one) - openedAt(other));
  return {
    settings: {
      id: Math.max(lastId, 0),
      settings: kept[lastId] ?? defaultSettings,
      by: findSaver(logs, lastId),
    },
    findSettings,
    open: new Map(inOrder),
    closed,
    skinTests: skinTests.tests,
    bench: bench.trials,
    erasings,
    unjudged,
    practice: practice.kept,
    notices,
    refused,
  };
}

const openedAt = ({ record }: Consultation): number => record.opened?.atMs ?? 0;
