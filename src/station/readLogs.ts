import * as v from 'valibot';
import type { Consultation } from '../../machines/consultation/consultation';
import { type FindSettings, replay } from '../../machines/consultation/replay';
import { type ClosedRecord, parseClosedRecord } from '../../shared/records/closedRecord';
import { defaultSettings, type Settings, settingsSchema } from '../../shared/records/settings';
import { replaySkinTest } from '../../shared/records/skinTest/replay';
import type { SkinTest } from '../../shared/records/skinTest/skinTest';
import { readTombstone } from '../../shared/records/tombstone';
import type { Json } from '../storage/json';
import { leaveOutErased, listSweeps } from './erased';
import { CLOSED, ERASED_LOG, OPEN, SETTINGS_LOG, SKIN_TEST } from './logNames';
import type { Notice } from './notice';
import type { Erasings, SettingsInForce } from './stationState';

/** What the logs of the store say, all together; what could not be taken up is named. */
export interface ReadLogs {
  readonly settings: SettingsInForce;
  readonly findSettings: FindSettings;
  readonly open: ReadonlyMap<string, Consultation>;
  readonly closed: readonly ClosedRecord[];
  readonly skinTests: readonly SkinTest[];
  readonly erasings: Erasings;
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

/** What came in from a file stands where it ended, among those that were closed here, which stay in their order. */
function placeBrought(closed: readonly ClosedRecord[]): readonly ClosedRecord[] {
  const placed = closed.filter(({ broughtIn }) => broughtIn === undefined);
  const brought = closed.filter(({ broughtIn }) => broughtIn !== undefined);
  for (const each of brought.sort((one, other) => one.endedAtMs - other.endedAtMs)) {
    const before = placed.findLastIndex(({ endedAtMs }) => endedAtMs <= each.endedAtMs);
    placed.splice(before + 1, 0, each);
  }
  return placed;
}

/** Who saved this edition of the settings? */
function findSaver(logs: Logs, id: number): string {
  const read = v.safeParse(v.object({ by: v.string() }), logs.get(SETTINGS_LOG)?.[id]);
  return read.success ? read.output.by : '';
}

/** In the order in which they were closed, month by month: what came later counts, whatever the clock said then. */
function readClosed(logs: Logs): { closed: readonly ClosedRecord[]; notices: readonly Notice[] } {
  const notices: Notice[] = [];
  const byId = new Map<string, ClosedRecord>();
  const months = [...logs].filter(([name]) => name.startsWith(CLOSED));
  for (const [name, entries] of months.sort(([one], [other]) => (one < other ? -1 : 1))) {
    for (const [seq, entry] of entries.entries()) {
      const record = parseClosedRecord(entry);
      if (record === null) notices.push({ kind: 'refusedEntry', name, seq });
      else byId.set(record.id, record);
    }
  }
  return { closed: placeBrought([...byId.values()]), notices };
}

/** A tombstone of a newer edition erases all the same, and is named. */
function readErasings(logs: Logs): { erasings: Erasings; notices: readonly Notice[] } {
  const read = (logs.get(ERASED_LOG) ?? []).map(readTombstone);
  return {
    erasings: {
      tombstones: read.filter((tombstone) => tombstone !== null),
      unfinished: listSweeps(logs).length,
    },
    notices: read.flatMap((tombstone, seq) =>
      tombstone === null ? [{ kind: 'refusedEntry', name: ERASED_LOG, seq } as const] : [],
    ),
  };
}

/** The ticket a refused log was opened for, as far as its first entry still says. */
export const findTicket = (entries: readonly unknown[]): string | null => {
  const read = v.safeParse(v.object({ payload: v.object({ ticket: v.string() }) }), entries[0]);
  return read.success ? read.output.payload.ticket : null;
};

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
  const findSettings = findKept(kept);
  const lastId = kept.findLastIndex((settings) => settings !== undefined);
  const open = new Map<string, Consultation>();
  const notices = [...aboutSettings, ...aboutClosed, ...aboutErased];
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
  const skinTests: SkinTest[] = [];
  for (const [name, entries] of logs) {
    if (!name.startsWith(SKIN_TEST)) continue;
    const read = replaySkinTest(name.slice(SKIN_TEST.length), entries, findSettings);
    if (read.ok) skinTests.push(read.value);
    else {
      notices.push({ kind: 'refusedLog', name, ticket: findTicket(entries), fault: read.error });
      refused.push({ name, isNewer: read.error.code === 'newerVersion' });
    }
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
    skinTests,
    erasings,
    notices,
    refused,
  };
}

const openedAt = ({ record }: Consultation): number => record.opened?.atMs ?? 0;
