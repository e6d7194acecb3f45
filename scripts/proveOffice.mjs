// npm run prove:office: a spreadsheet opens the station's table and runs nothing of it. Asks Debian's
// libreoffice-calc-nogui to convert it, formulas switched on, and looks for one. The last line is the count.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runnerImport } from 'vite';

const root = join(import.meta.dirname, '..');
/** @param {string} file */
const load = async (file) =>
  (await runnerImport(join(root, file), { root, configFile: false, logLevel: 'error' })).module;
const { columnNames, columns } = /** @type {typeof import('../shared/records/table/columns')} */ (
  await load('shared/records/table/columns.ts')
);
const { writeCsv, BOM } = /** @type {typeof import('../shared/records/table/csv')} */ (
  await load('shared/records/table/csv.ts')
);

/** Published: OWASP, CSV Injection: = + - @, tab, CR, LF, and the full-width twins of the first four. */
const signs = [...'=+-@\t\r\n＝＋－＠'];
/** What a spreadsheet would run, behind each sign; a link as well. */
const texts = signs.flatMap((sign) => [`${sign}1+1`, `${sign}SUM(1,1)`, `${sign}HYPERLINK("x","y")`]);

/** Separated by commas, quoted with ", UTF-8, from line 1: what begins like a formula is run, the first check sees it. */
const FILTER = 'CSV:44,34,76,1,,0,false,true';
const folder = mkdtempSync(join(tmpdir(), 'office-'));

/**
 * The spreadsheet's own account of this CSV, as flat XML.
 * @param {string} name
 * @param {string} csv
 */
function convert(name, csv) {
  const file = join(folder, `${name}.csv`);
  writeFileSync(file, csv);
  const args = [`-env:UserInstallation=file://${join(folder, 'profile')}`, '--headless'];
  args.push(`--infilter=${FILTER}`, '--convert-to', 'fods', '--outdir', folder, file);
  const { status, error, stderr } = spawnSync('soffice', args, { timeout: 120_000, encoding: 'utf8' });
  if (error !== undefined || status !== 0) throw new Error(`${name} was not converted: ${error ?? stderr}`);
  return readFileSync(join(folder, `${name}.fods`), 'utf8');
}

/** @param {string} xml */
const countFormulas = (xml) => (xml.match(/table:formula=/g) ?? []).length;

let passed = 0;
let failed = 0;
/**
 * @param {string} what
 * @param {boolean} isSo
 */
function check(what, isSo) {
  console.log(`${isSo ? 'passed' : 'FAILED'}: ${what}`);
  if (isSo) passed += 1;
  else failed += 1;
}

try {
  if (spawnSync('soffice', ['--version']).error !== undefined) {
    console.log('libreoffice-calc-nogui is not installed');
    console.log('0 passed, 0 failed, 3 skipped');
  } else {
    const bare = countFormulas(convert('bare', `"${texts[0]}"\r\n"${texts[1]?.replaceAll('"', '""')}"\r\n`));
    check(`texts as they are do run: ${bare} formulas of 2`, bare === 2);
    const textColumns = columnNames.filter((name) => columns[name].type === 'string');
    // One text to a row: equal neighbours would be counted as one.
    const rows = texts.flatMap((text) =>
      textColumns.map((filled) =>
        Object.fromEntries(columnNames.map((name) => [name, name === filled ? text : null])),
      ),
    );
    for (const mark of ['', BOM]) {
      const csv = [...writeCsv(/** @type {never} */ (rows), { temperature: 'C', mass: 'g' })].join('');
      const xml = convert(mark === '' ? 'table' : 'tableWithMark', mark + csv);
      const cells = (xml.match(/office:value-type="string"/g) ?? []).length;
      const told = `${rows.length} texts in ${textColumns.length} columns`;
      check(
        `the station's table ${mark === '' ? '' : 'with its mark '}runs none of ${told} (${countFormulas(xml)} formulas, ${cells} cells of text with the header's)`,
        countFormulas(xml) === 0 && cells === rows.length + columnNames.length,
      );
    }
    console.log(`${passed} passed, ${failed} failed`);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
process.exitCode = failed > 0 ? 1 : 0;
