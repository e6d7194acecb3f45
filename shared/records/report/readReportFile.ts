import { type Result, refuse } from '../../result';
import { readBackupFile } from './readBackupFile';
import { isBeyondDays } from './readEntry';
import { readRecordsFile } from './readRecordsFile';
import type { FileRefusal, ReportFile } from './reportFile';

const BACKUP = '{"strandproof":"backup"';

/**
 * What does this file of a station tell a report: a JSON of days, or a backup? A file that is neither, or no longer what it
 * was, is refused by name and with its place. Checked in tests/shared/records/report/readReportFile.test.ts.
 */
export function readReportFile(file: string): Result<ReportFile, FileRefusal> {
  // Some programs put this mark in front of UTF-8.
  const text = file.replace(/^\ufeff/, '');
  if (text.trim() === '') return refuse({ why: 'empty', place: null });
  const read = text.startsWith(BACKUP) ? readBackupFile(text) : readRecordsFile(text);
  if (!read.ok || !isBeyondDays(read.value.madeAtMs)) return read;
  return refuse({ why: 'beyondDays', place: read.value.kind === 'backup' ? { line: 1 } : null });
}
