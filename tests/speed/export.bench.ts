import papa from 'papaparse';
import { bench, describe } from 'vitest';
import { columnNames, nameColumn, type Row } from '../../shared/records/table/columns';
import { writeCsv } from '../../shared/records/table/csv';
import { rowsOf, stories } from '../shared/records/table/stories';

const units = { temperature: 'C', mass: 'g', length: 'cm' } as const;
const told = stories.flatMap(([, record]) => rowsOf(record, units));
const ROWS = 100_000;
const rows = Array.from({ length: ROWS }, (_, index) => told[index % told.length] as Row);
const fields = columnNames.map((name) => nameColumn(name, units));
const newline = '\r\n';

/** 100,000 rows of real consultations as CSV: what the station writes, piece by piece, beside papaparse alone in one go. */
describe('export', () => {
  bench('papaparse alone, ready-made lines', () => void papa.unparse([fields, ...lines], { newline }), {
    iterations: 5,
    time: 0,
  });
  bench('papaparse alone, from rows', () => void papa.unparse([fields, ...rows.map(toLine)], { newline }), {
    iterations: 5,
    time: 0,
  });
  bench('the station’s, from rows', () => void [...writeCsv(rows, units)].join(''), {
    iterations: 5,
    time: 0,
  });
  bench('the station’s longest piece', () => void pieces.next(), { iterations: 150, time: 0 });
});

const toLine = (row: Row) => columnNames.map((name) => row[name]);
const lines = rows.map(toLine);
const pieces = (function* () {
  for (;;) yield* writeCsv(rows, units);
})();
