import papa from 'papaparse';
import { accept, type Result, refuse } from '../../result';
import type { UnitSettings } from '../../units/quantity';
import { type Cell, columnNames, columns, nameColumn, type Row } from './columns';

/** Lines end as in RFC 4180, section 2: with both. */
const CRLF = '\r\n';

/** Says in front of a UTF-8 text that it is one: what some spreadsheets ask for. published: RFC 3629, section 6. */
export const BOM = '\ufeff';

/**
 * A text that a spreadsheet might run as a formula begins with one of these (published: OWASP, CSV Injection), some as
 * their full-width twins; and the mark itself, so that it can be told from one that was added.
 */
const mayRun: ReadonlySet<string> = new Set([...'=+-@\t\r\n＝＋－＠', "'"]);
const SAFE = "'";

const toSafe = (cell: Cell): Cell =>
  typeof cell === 'string' && mayRun.has(cell.charAt(0)) ? `${SAFE}${cell}` : cell;

/** The units that stand in a header: no column is a length. */
export type FileUnits = Pick<UnitSettings, 'temperature' | 'mass'>;

const listUnits = (['C', 'F'] as const).flatMap((temperature) =>
  (['g', 'oz'] as const).map((mass): FileUnits => ({ temperature, mass })),
);

const nameColumns = (units: FileUnits): readonly string[] =>
  columnNames.map((name) => nameColumn(name, { ...units, length: 'cm' }));

/** Lines of any table: RFC 4180, CRLF after every one, texts that might be run made safe with a leading '. */
export const writeLines = (lines: readonly (readonly Cell[])[]): string =>
  `${papa.unparse(
    lines.map((line) => line.map(toSafe)),
    { newline: CRLF },
  )}${CRLF}`;

/** So many rows are written at one go. Assumed because that takes a few milliseconds on a tablet, and nobody waits for it. */
const ASSUMED_ROWS_AT_ONCE = 500;

/**
 * The rows as CSV, piece by piece, so that whoever writes can let others have a turn: RFC 4180, CRLF after every line, the
 * header first, texts that might be run made safe with a leading ', which `readCsv` takes away again.
 * Checked in tests/shared/records/table/csv.test.ts and tests/evidence/csv.test.ts.
 */
export function* writeCsv(rows: readonly Row[], units: FileUnits): Generator<string, void> {
  yield writeLines([nameColumns(units)]);
  for (let from = 0; from < rows.length; from += ASSUMED_ROWS_AT_ONCE) {
    const some = rows.slice(from, from + ASSUMED_ROWS_AT_ONCE);
    yield writeLines(some.map((row) => columnNames.map((name) => row[name])));
  }
}

/** Why a file is not read. Rows count from 1, the header not among them. */
export type CsvRefusal =
  | { readonly code: 'anotherProgram' | 'cutOff' | 'notText' }
  | { readonly code: 'badCell'; readonly row: number; readonly column: string };

/** A figure as it was written, and nothing a spreadsheet may have made of it. */
const plainFigure = /^-?[0-9]+(\.[0-9]+)?(e[-+]?[0-9]+)?$/;
const plainMoment =
  /^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\.[0-9]+)?(Z|[-+][0-9]{2}:[0-9]{2})$/;

function readCell(type: 'string' | 'number' | 'datetime', text: string): Cell | undefined {
  if (text === '') return null;
  if (type === 'number') return plainFigure.test(text) ? Number(text) : undefined;
  if (type === 'datetime') return plainMoment.test(text) ? text : undefined;
  return text.startsWith(SAFE) ? text.slice(SAFE.length) : text;
}

/**
 * For whoever reads the table again by a program of their own; a station takes up logs alone, which a table is not.
 * The rows of a CSV that this station wrote, and the units it was written in; nothing of a file that is another's, that
 * was cut off within a line, or of which one cell does not read. One that ends with a whole line is taken as whole: RFC
 * 4180 has no place for how many lines there are, so what has to be whole is handed over as a backup.
 * Checked in tests/shared/records/table/csv.test.ts.
 */
export function readCsv(
  file: string,
): Result<{ readonly rows: readonly Row[]; readonly units: FileUnits }, CsvRefusal> {
  const text = file.startsWith(BOM) ? file.slice(BOM.length) : file;
  if (text.includes('\ufffd')) return refuse({ code: 'notText' });
  const headerEnd = text.indexOf(CRLF);
  const header = headerEnd === -1 ? text : text.slice(0, headerEnd);
  const units = listUnits.find((each) => nameColumns(each).join(',') === header);
  if (units === undefined) return refuse({ code: isBegun(header) ? 'cutOff' : 'anotherProgram' });
  if (!text.endsWith(CRLF)) return refuse({ code: 'cutOff' });
  const parsed = papa.parse(text.slice(headerEnd + CRLF.length, -CRLF.length), {
    newline: CRLF,
    delimiter: ',',
  });
  const lines = text.length === headerEnd + CRLF.length ? [] : parsed.data;
  if (parsed.errors.some(({ code }) => code === 'MissingQuotes')) return refuse({ code: 'cutOff' });
  const rows: Row[] = [];
  for (const [index, line] of lines.entries()) {
    if (line.length !== columnNames.length) return refuse({ code: 'cutOff' });
    const cells: [string, Cell][] = [];
    for (const [at, name] of columnNames.entries()) {
      const cell = readCell(columns[name].type, line[at] ?? '');
      if (cell === undefined) {
        return refuse({
          code: 'badCell',
          row: index + 1,
          column: nameColumn(name, { ...units, length: 'cm' }),
        });
      }
      cells.push([name, cell]);
    }
    rows.push(Object.fromEntries(cells) as unknown as Row);
  }
  return accept({ rows, units });
}

/** Does it begin like a header of ours, and end too early? */
const isBegun = (header: string): boolean =>
  header !== '' &&
  listUnits.some((each) => nameColumns(each).join(',').startsWith(header.replace(/\r$/, '')));
