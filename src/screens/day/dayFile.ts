import type { FindSettings } from '../../../machines/consultation/replay';
import { type DayRecords, listEntries } from '../../../shared/records/day/dayRecords';
import { listEditions } from '../../../shared/records/json/carriedSettings';
import { type LeavingConsultation, writeConsultations } from '../../../shared/records/json/consultationFile';
import { writeMoment } from './dayTable';

/**
 * The day as a file of consultations, piece by piece: what closed, what is open and what went on after it, each with its log, its fold and the
 * settings it was judged under; one that came in from a file keeps those that came with it. A day of the invented salon says
 * that it is one. Checked in tests/src/screens/day/dayFile.test.tsx.
 */
export function writeDay(
  records: DayRecords,
  find: FindSettings,
  made: { readonly madeAtMs: number; readonly isDemo: boolean },
): Generator<string, void> {
  const { from, day, skinTests, unread } = records;
  function* leave(): Generator<LeavingConsultation> {
    for (const { record, log, broughtIn } of listEntries(records)) {
      yield { record, log, settings: broughtIn?.settings ?? listEditions(log, find) };
    }
  }
  return writeConsultations(leave(), { ...made, from, to: day, skinTests, unread }, writeMoment);
}
