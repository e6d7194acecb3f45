// npm run prove -- NAME…: the long form of what `npm test` proves in a short one; without a name, all of them. What a
// run did, and what was left to this one, is printed by each. The last line is the count.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { addUp, countReport } from './counting.mjs';

const root = join(import.meta.dirname, '..');
const reports = join(root, 'node_modules', '.cache', 'reports');

/**
 * Which files have a long form, by the name under which it is called, and the project that runs them.
 * @type {Readonly<Record<string, { project: string, files: readonly string[] }>>}
 */
const proofs = {
  looks: { project: 'browser', files: ['tests/browser/looks.test.ts'] },
  walks: {
    project: 'node',
    files: ['walks', 'carriedWalks', 'forgedLogs'].map(
      (name) => `tests/machines/consultation/${name}.test.ts`,
    ),
  },
  store: { project: 'alone', files: ['tests/src/storage/storeProperty.test.ts'] },
  forecast: { project: 'node', files: ['tests/evidence/liftCurveNoise.test.ts'] },
  hand: { project: 'browser', files: ['tests/browser/clumsyHand.test.ts'] },
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in proofs));
if (unknown.length > 0) {
  throw new Error(
    `There is no long form called ${unknown.join(', ')}, but ${Object.keys(proofs).join(', ')}`,
  );
}

/** @param {string} file */
function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

mkdirSync(reports, { recursive: true });
const counts = (asked.length > 0 ? asked : Object.keys(proofs)).map((name) => {
  const { project = '', files = [] } = proofs[name] ?? {};
  const file = join(reports, `prove-${name}.json`);
  rmSync(file, { force: true });
  const { status } = spawnSync(
    join(root, 'node_modules', '.bin', 'vitest'),
    [
      ...['run', '--project', project, ...files],
      ...['--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
    ],
    { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], env: { ...process.env, LONG: '1' } },
  );
  return countReport(readReport(file), status ?? 1);
});
const { passed, failed } = addUp(counts);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
