import { type DayRecords, listEntries } from '../../../shared/records/day/dayRecords';
import { BOM, writeCsv } from '../../../shared/records/table/csv';
import { flatten } from '../../../shared/records/table/flatten';
import type { UnitSettings } from '../../../shared/units/quantity';

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/**
 * A moment with the offset of this tablet at that moment: published, RFC 3339, section 5.6. To the second, as the clocks
 * of the station count. Takes ms since 1970-01-01 UTC. Checked in tests/src/screens/day/dayTable.test.tsx.
 */
export function writeMoment(atMs: number): string {
  const aheadMin = -new Date(atMs).getTimezoneOffset();
  const local = new Date(atMs + aheadMin * 60_000).toISOString().slice(0, 19);
  const by = Math.abs(aheadMin);
  const offset = `${twoDigits(Math.floor(by / 60))}:${twoDigits(by % 60)}`;
  return `${local}${aheadMin < 0 ? '-' : '+'}${offset}`;
}

/**
 * The day as a table that any spreadsheet opens: what closed, went on or is open, a row for each thing that was told or done.
 * In the station's units, piece by piece, marked as UTF-8, for which some spreadsheets ask.
 */
export function* writeDayTable(records: DayRecords, units: UnitSettings): Generator<string, void> {
  const rows = listEntries(records).flatMap(({ record }) => flatten(record, { units, writeMoment }));
  yield BOM;
  yield* writeCsv(rows, units);
}
