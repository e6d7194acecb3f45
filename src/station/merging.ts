import { type ClosedRecord, isSameLog } from '../../shared/records/closedRecord';
import type { RecordDocument, SkinTestBody } from '../../shared/records/documents/document';
import { wholeEntry } from '../../shared/records/documents/leanSettings';
import type { Held } from '../../shared/records/documents/listDocuments';
import { defaultSettings } from '../../shared/records/settings';
import { listStored, type StoredEntry, type ToldPiece } from '../../shared/records/skinTest/told';
import { accept, type Result, refuse } from '../../shared/result';
import type { Json } from '../storage/json';
import { findTicket } from './findTicket';
import { type JudgingClock, judgeConsultation, judgeSkinTest, type NotTakenUp } from './judgeDocument';
import { CLOSED, ERASED_LOG, readLogId, SKIN_TEST } from './logNames';
import { readMonth } from './readLogs';
import { listSkinTestLogs, nameNextLog } from './skinTestLogs';
import type { StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';

/** What of other stations' documents is to be written here, and what of them was known. */
export interface Judged {
  readonly comes: readonly ClosedRecord[];
  /** As they are told: whether they are here is asked when they are written. */
  readonly tests: readonly SkinTestBody[];
  /** So many records are here already, with the same log. */
  readonly here: number;
  /** By ticket: two stations went on with one record, and both logs stand. */
  readonly toldTwice: readonly string[];
}

/** What these logs hold that another station may hold too, as they lie; a month's entry that is no record is left out. */
export function listHeld(logs: ReadonlyMap<string, readonly Json[]>): Held {
  const named = (beginning: string) => [...logs].filter(([name]) => name.startsWith(beginning));
  return {
    closed: named(CLOSED).flatMap(([name, entries]) => readMonth(name, entries).records),
    skinTests: named(SKIN_TEST).map(([name, log]) => ({ id: readLogId(name), log })),
    erased: logs.get(ERASED_LOG) ?? [],
  };
}

type ById = ReadonlyMap<string, readonly ClosedRecord[]>;

/** What is closed never changes as a list, so it is put in order once, however many pieces come in beside it. */
const inOrder = new WeakMap<readonly ClosedRecord[], ById>();

/** So many are put in order before whatever else is to be done has its turn. Assumed because that takes less than 1 ms. */
const ASSUMED_ORDERED_AT_ONCE = 1000;

/** Closed records by id. A pause lies after each thousand. */
function* byId(closed: readonly ClosedRecord[]): Generator<void, ById> {
  const known = inOrder.get(closed);
  if (known !== undefined) return known;
  const found = new Map<string, readonly ClosedRecord[]>();
  let ordered = 0;
  for (const each of closed) {
    found.set(each.id, [...(found.get(each.id) ?? []), each]);
    ordered += 1;
    if (ordered % ASSUMED_ORDERED_AT_ONCE === 0) yield;
  }
  inOrder.set(closed, found);
  return found;
}

/**
 * What of these documents is to be written here? Every log is judged before the first is written, and one that is refused
 * refuses them all, by name; but for whoever says what is to become of one that is left out. What is here with the same log is known; with another, both stand: nobody's account of what
 * happened is thrown away. A pause lies after each. Checked in tests/src/station/merging.test.ts.
 */
export function* judgeDocuments(
  { open, closed }: Pick<StationState, 'open' | 'closed'>,
  documents: Iterable<RecordDocument>,
  erased: ReadonlySet<string>,
  clock: JudgingClock,
  leaveOut?: (document: RecordDocument, why: NotTakenUp['why']) => void,
): Generator<void, Result<Judged, SubmitRefusal>> {
  const held = yield* byId(closed);
  const came = new Map<string, readonly ClosedRecord[]>();
  const comes: ClosedRecord[] = [];
  const tests: SkinTestBody[] = [];
  const toldTwice: string[] = [];
  let here = 0;
  for (const document of documents) {
    if (document.kind === 'erased' || erased.has(document.body.id)) continue;
    let refused: NotTakenUp | null = null;
    if (document.kind === 'skinTest') {
      const judged = judgeSkinTest(document.body, clock);
      if (judged.ok) tests.push(document.body);
      else refused = judged.error;
    } else {
      const { id, log } = document.body;
      const others = came.get(id) ?? held.get(id) ?? [];
      if (others.some((other) => isSameLog(other.log, log))) here += 1;
      else {
        const judged = judgeConsultation(document.body, clock);
        if (judged.ok) {
          if (others.length > 0 || open.has(id)) toldTwice.push(findTicket(log) ?? id);
          comes.push(judged.value);
          // What comes is not held before it is written: what is known for next time stays as it is.
          came.set(id, [...others, judged.value]);
        } else refused = judged.error;
      }
    }
    if (refused !== null && leaveOut === undefined) return refuse(refused.refusal);
    if (refused !== null) leaveOut?.(document, refused.why);
    yield;
  }
  // In the order in which they ended, whatever the clock was there.
  comes.sort((one, other) => one.endedAtMs - other.endedAtMs);
  return accept({ comes, tests, here, toldTwice });
}

/** Is the one log the other, or its beginning? */
export const isBeginningOf = (one: readonly unknown[], other: readonly unknown[]): boolean =>
  one.length <= other.length && isSameLog(one, other.slice(0, one.length));

interface HeldTelling {
  readonly name: string;
  readonly stored: readonly StoredEntry[];
}

const entriesOf = (told: readonly { readonly entry: unknown }[]): readonly unknown[] =>
  told.map(({ entry }) => entry);

/**
 * Since when is it known here that this test is on, by whatever account? null: it was put on here, or nobody kept when it came
 * in. Only the very same putting-on counts.
 */
function findFirstCame(
  held: readonly HeldTelling[],
  theirs: readonly unknown[],
  nowMs: number,
): number | null {
  const same = held.filter(({ stored }) => isBeginningOf(entriesOf(stored.slice(0, 1)), theirs));
  const came = same.map(({ stored }) => stored[0]?.came?.atMs ?? null);
  return came.reduce<number | null>(
    (first, each) => (first === null || each === null ? null : Math.min(first, each)),
    nowMs,
  );
}

/**
 * Where does this telling of a skin test go, among the logs as they are now? Into the log that it goes on from, all that is
 * new in one piece; into a log of its own where it is told otherwise here, with when the test first came in; null where nothing
 * of it is new.
 */
export function placeTelling(
  logs: ReadonlyMap<string, readonly Json[]>,
  { id, log }: SkinTestBody,
  nowMs: number,
): { readonly name: string; readonly entry: Json } | null {
  const theirs = entriesOf(log);
  const held = listSkinTestLogs(logs, id).map(([name, entries]) => ({
    name,
    stored: listStored(entries, () => defaultSettings),
  }));
  if (held.some(({ stored }) => isBeginningOf(theirs, entriesOf(stored)))) return null;
  const goesOn = held.find(({ stored }) => isBeginningOf(entriesOf(stored), theirs));
  const told = log.slice(goesOn?.stored.length ?? 0).map(wholeEntry);
  const cameAtMs = findFirstCame(held, theirs, nowMs);
  const piece: ToldPiece = { told, ...(cameAtMs === null ? {} : { cameAtMs }) };
  return { name: goesOn?.name ?? nameNextLog(logs, id), entry: piece as unknown as Json };
}
