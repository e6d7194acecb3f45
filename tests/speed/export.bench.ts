import papa from 'papaparse';
import { bench, describe } from 'vitest';
import { columnNames, type Row } from '../../shared/records/table/columns';
import { writeCsv } from '../../shared/records/table/csv';
import { rowsOf, stories } from '../shared/records/table/stories';

const units = { temperature: 'C', mass: 'g', length: 'cm' } as const;
const told = stories.flatMap(([, record]) => rowsOf(record, units));
const ROWS = 100_000;
/** As many as the station writes at one go. */
const AT_ONCE = 500;
const rows = Array.from({ length: ROWS }, (_, index) => told[index % told.length] as Row);
const toLine = (row: Row) => columnNames.map((name) => row[name]);

/** Piece after piece of the same 100,000 rows, and from the first again. */
const bare = (function* () {
  for (;;) {
    for (let from = 0; from < ROWS; from += AT_ONCE) {
      yield papa.unparse(rows.slice(from, from + AT_ONCE).map(toLine), { newline: '\r\n' });
    }
  }
})();
const ours = (function* () {
  for (;;) yield* writeCsv(rows, units);
})();

/**
 * 100,000 rows of consultations as CSV, 500 at a time: what the station writes beside papaparse alone. Each takes its turn
 * three times, so that neither has the warmer engine, and a median of hundreds of pieces does not swing with the garbage of
 * all of them at once.
 */
describe('export', () => {
  const often = { iterations: ROWS / AT_ONCE, time: 0, warmupIterations: 40 };
  for (const turn of [1, 2, 3]) {
    bench(`papaparse alone, turn ${turn}`, () => void bare.next(), often);
    bench(`the station’s, turn ${turn}`, () => void ours.next(), often);
  }
});
