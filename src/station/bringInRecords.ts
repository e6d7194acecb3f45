import { judgeTold } from '../../machines/consultation/bringIn';
import { isSame } from '../../machines/consultation/replay';
import { isFromLater } from '../../shared/records/backupFile';
import { type ClosedRecord, closeRecord } from '../../shared/records/closedRecord';
import { readConsultations, type ToldConsultation } from '../../shared/records/json/consultationFile';
import { accept, type Result, refuse } from '../../shared/result';
import { findTicket } from './findTicket';
import type { StationState } from './stationState';
import type { SubmitRefusal } from './submitRefusal';

/** What a file of consultations brought: so many came, so many were here already, and whose were still open. */
export interface RecordsBrought {
  readonly came: number;
  readonly here: number;
  /** So many were erased here for good, and stay so. */
  readonly erased: number;
  /** By ticket. They stay where they are: two tablets would go on with one client. */
  readonly open: readonly string[];
}

/** What is to be written for it, in order. */
interface RecordsPlan extends Pick<RecordsBrought, 'here' | 'erased' | 'open'> {
  readonly comes: readonly ClosedRecord[];
}

type Known = Pick<StationState, 'open' | 'closed'>;

/** Her logs as they are held here: none, one, or more where several stations told her otherwise. */
const listLogs = ({ open, closed }: Known, id: string): readonly (readonly unknown[])[] => [
  ...closed.filter((each) => each.id === id).map(({ log }) => log),
  ...(open.has(id) ? [open.get(id)?.log ?? []] : []),
];

const nameTicket = ({ id, log }: ToldConsultation): string => findTicket(log) ?? id;

/** Whoever was handed on from another clock is put in the order in which she ended there. */
const inOrder = (records: readonly ClosedRecord[]): readonly ClosedRecord[] =>
  [...records].sort((one, other) => one.endedAtMs - other.endedAtMs);

/**
 * What is to be written so that the consultations of this file come in? Every log is judged before the first is written, and
 * one that is refused refuses them all, by name. A pause lies after each, so that whoever asks can let others have a turn.
 * Checked in tests/src/station/bringInRecords.test.ts.
 */
export function* planRecords(
  known: Known,
  file: string,
  {
    isDemo,
    nowMs,
    broughtAtMs,
    erased,
  }: {
    readonly isDemo: boolean;
    readonly nowMs: number;
    readonly broughtAtMs: number;
    /** What was erased here, by id: it never comes back. */
    readonly erased: ReadonlySet<string>;
  },
): Generator<void, Result<RecordsPlan, SubmitRefusal>> {
  const read = yield* readConsultations(file);
  if (!read.ok) return refuse({ kind: 'records', why: read.error });
  const { told, made } = read.value;
  if (made.isDemo !== isDemo) return refuse({ kind: 'records', why: 'invented' });
  if (isFromLater(made, nowMs)) return refuse({ kind: 'records', why: 'fromLater' });
  const comes = new Map<string, ClosedRecord>();
  const open: string[] = [];
  let here = 0;
  for (const each of told.filter(({ id }) => !erased.has(id))) {
    const { id, settings, log } = each;
    const judged = judgeTold(each);
    yield;
    if (!judged.ok) {
      return refuse({ kind: 'recordRefused', ticket: nameTicket(each), entry: judged.error.seq + 1 });
    }
    const { record } = judged.value;
    if (isFromLater({ madeAtMs: record.newestAtMs }, nowMs)) {
      return refuse({ kind: 'records', why: 'fromLater' });
    }
    const held = [...listLogs(known, id), ...(comes.has(id) ? [comes.get(id)?.log ?? []] : [])];
    const closed = closeRecord(record, judged.value.log);
    if (held.some((each) => isSame(each, log))) here += 1;
    else if (closed === null) open.push(nameTicket(each));
    else if (held.length > 0) return refuse({ kind: 'recordDiffers', ticket: nameTicket(each) });
    else comes.set(id, { ...closed, log, broughtIn: { atMs: broughtAtMs, settings } });
  }
  return accept({
    comes: inOrder([...comes.values()]),
    here,
    erased: told.filter(({ id }) => erased.has(id)).length,
    open,
  });
}
