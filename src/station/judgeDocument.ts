import { judgeTold } from '../../machines/consultation/bringIn';
import { isFromLater } from '../../shared/records/backupFile';
import { type ClosedRecord, closeRecord } from '../../shared/records/closedRecord';
import type { ConsultationBody, SkinTestBody } from '../../shared/records/documents/document';
import { wholeEdition, wholeEntry } from '../../shared/records/documents/leanSettings';
import { defaultSettings } from '../../shared/records/settings';
import { replaySkinTest } from '../../shared/records/skinTest/replay';
import { accept, type Result, refuse } from '../../shared/result';
import { findTicket } from './findTicket';
import type { SubmitRefusal } from './submitRefusal';

export interface JudgingClock {
  readonly nowMs: number;
  /** When they come in, by this station's clock. */
  readonly broughtAtMs: number;
}

/**
 * Why one document is not taken up. `newer`: a newer edition of the station wrote it; `notJudged`: it could not have been
 * tapped like that; `fromLater`: its moments lie more than a day after this clock. `refusal`: what a file is refused by.
 */
export interface NotTakenUp {
  readonly why: 'newer' | 'notJudged' | 'fromLater';
  readonly refusal: SubmitRefusal;
}

const refuseEntry = (
  told: readonly unknown[],
  id: string,
  { seq, code }: { readonly seq: number; readonly code?: string },
): Result<never, NotTakenUp> =>
  refuse({
    why: code === 'newerVersion' ? 'newer' : 'notJudged',
    refusal: { kind: 'recordRefused', ticket: findTicket(told) ?? id, entry: seq + 1 },
  });

const fromLater = refuse<NotTakenUp>({ why: 'fromLater', refusal: { kind: 'backup', why: 'fromLater' } });

/** What closed record is this document of another station, judged anew? Checked in tests/src/station/merging.test.ts. */
export function judgeConsultation(
  body: ConsultationBody,
  { nowMs, broughtAtMs }: JudgingClock,
): Result<ClosedRecord, NotTakenUp> {
  const { id, log } = body;
  const settings = body.settings.map(wholeEdition);
  const judged = judgeTold({ id, log, settings });
  if (!judged.ok) return refuseEntry(log, id, judged.error);
  const { record } = judged.value;
  if (isFromLater({ madeAtMs: record.newestAtMs }, nowMs)) return fromLater;
  const closed = closeRecord(record, judged.value.log);
  // It stood among the closed ones, and its log does not end.
  if (closed === null) return refuseEntry(log, id, { seq: log.length - 1 });
  return accept({ ...closed, log, broughtIn: { atMs: broughtAtMs, settings } });
}

/** Is this document of another station a skin test that people could have told so? */
export function judgeSkinTest({ id, log }: SkinTestBody, { nowMs }: JudgingClock): Result<void, NotTakenUp> {
  const judged = replaySkinTest(id, [{ told: log.map(wholeEntry) }], () => defaultSettings);
  if (!judged.ok) {
    return refuseEntry(
      log.map(({ entry }) => entry),
      id,
      judged.error,
    );
  }
  return isFromLater({ madeAtMs: judged.value.newestAtMs }, nowMs) ? fromLater : accept(undefined);
}
