// npm run report -- FILE… : what a week came to, from the files that stations saved. --help tells the rest.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runnerImport } from 'vite';
import { addDays, nameDaysAhead, nameDaysIn, sayOffset } from './report/days.mjs';
import { findInTheWay } from './report/findInTheWay.mjs';
import { formatHtml, formatJson, formatText, plain } from './report/formatSheet.mjs';
import { laySheet } from './report/laySheet.mjs';
import { readCall, readLanguage } from './report/readCall.mjs';

const root = join(import.meta.dirname, '..');
/** @param {string} path */
const load = async (path) =>
  (await runnerImport(join(root, path), { root, configFile: false, logLevel: 'error' })).module;

/** What is wrong with the call is said in its language too, so this is read before all else. */
const locale = readLanguage(process.argv.slice(2));
const { report: words } =
  locale === 'es'
    ? /** @type {{ report: typeof import('../src/words/es/report').report }} */ (
        await load('src/words/es/report.ts')
      )
    : /** @type {typeof import('../src/words/en/report')} */ (await load('src/words/en/report.ts'));

const read = readCall(process.argv.slice(2), words.calls);
if (read === 'help') {
  console.log(words.calls.usage);
  process.exit(0);
}
if ('wrong' in read) {
  console.error(`${read.wrong.split('\n').map(plain).join('\n')}\n\n${words.calls.usage}`);
  process.exit(2);
}
const { files, from, to, zone, html, isJson, isByStylist } = read.call;
const inTheWay = html === undefined ? null : findInTheWay(html, files);
if (html !== undefined && inTheWay !== null) {
  console.error(plain(words.calls[inTheWay](html)));
  process.exit(2);
}

/** @param {string} name */
function readText(name) {
  try {
    return readFileSync(name, 'utf8');
  } catch {
    return null;
  }
}

/** The zone of this machine, where neither the call nor a file names one. */
const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
/** @param {number | null} offsetMin */
const findNameDay = (offsetMin) => {
  if (zone !== undefined) return nameDaysIn(zone);
  return offsetMin === null ? nameDaysIn(here) : nameDaysAhead(offsetMin);
};
/** @param {number | null} offsetMin */
const sayZone = (offsetMin) => {
  if (zone !== undefined) return zone;
  return offsetMin === null ? words.ofThisMachine(here) : sayOffset(offsetMin);
};

const { makeReport } = /** @type {typeof import('../shared/records/report/makeReport')} */ (
  await load('shared/records/report/makeReport.ts')
);
const { isSame, replay } = /** @type {typeof import('../machines/consultation/replay')} */ (
  await load('machines/consultation/replay.ts')
);

const { report, faults } = makeReport({
  files: files.map((name) => ({ name, text: readText(name) })),
  isByStylist,
  findDays: (offsetMin, newestAtMs) => {
    const nameDay = findNameDay(offsetMin);
    const last = to ?? nameDay(newestAtMs);
    return { from: from ?? addDays(last, -6), day: last, nameDay };
  },
  isSame,
  judge: ({ id, log, find }) => {
    const judged = replay(id, log, find);
    return judged.ok ? { ok: true, value: { record: judged.value.record, log: judged.value.log } } : judged;
  },
});

// Told beside the figures where those are read by eye; else where nothing else goes.
if (report === null || isJson || !process.stdout.isTTY) {
  for (const fault of faults) console.error(plain(words.sayFault(fault)));
}
let isRefused = faults.length > 0;
if (report !== null) {
  const { from: first, to: last } = report.figures;
  if (first > last) {
    console.error(words.calls.backwards(first, last));
    process.exit(2);
  }
  const by = sayZone(report.offsetMin);
  const offsets = zone === undefined && report.offsetsMin.length > 1 ? report.offsetsMin : [];
  const lines = [
    words.daysBy(by),
    ...(offsets.length > 0 ? [words.offsetsDiffer(offsets.map(sayOffset).join(', '))] : []),
  ];
  const sheet = laySheet(report, faults, words, lines);
  if (isJson) console.log(formatJson({ strandproof: 'report', v: 1, zone: by, ...report, faults }));
  else console.log(formatText(sheet));
  if (html !== undefined) {
    try {
      writeFileSync(html, formatHtml(sheet, locale));
      console.error(plain(words.calls.written(html)));
    } catch (error) {
      isRefused = true;
      console.error(
        plain(words.calls.notWritten(html, error instanceof Error ? error.message : String(error))),
      );
    }
  }
}
process.exitCode = isRefused ? 1 : 0;
