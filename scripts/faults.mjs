// npm run faults: each guard of the chart replaced by "true" in turn, and the behaviours that caught it.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const reports = join(root, 'node_modules', '.cache', 'reports');
const file = join(reports, 'faults.json');
mkdirSync(reports, { recursive: true });
rmSync(file, { force: true });

const { status } = spawnSync(
  join(root, 'node_modules', '.bin', 'vitest'),
  [
    'run',
    ...['--project', 'node', 'tests/machines/consultation/faults.test.ts'],
    ...['--reporter=json', `--outputFile.json=${file}`],
  ],
  { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] },
);

/** @typedef {{ title: string, status: string, meta: { caughtBy?: string[] } }} Outcome */
/** @type {{ numPassedTests: number, numFailedTests: number, testResults: { assertionResults: Outcome[] }[] }} */
const report = JSON.parse(readFileSync(file, 'utf8'));
const outcomes = report.testResults.flatMap(({ assertionResults }) => assertionResults);
const guards = outcomes.flatMap(({ title, status: how, meta }) =>
  meta.caughtBy === undefined ? [] : [{ guard: title.split(' ')[0] ?? title, how, caughtBy: meta.caughtBy }],
);
const width = Math.max(...guards.map(({ guard }) => guard.length));
for (const { guard, how, caughtBy } of guards) {
  const [first = 'caught by none', ...more] = caughtBy;
  const others = more.length > 0 ? ` (and by ${more.length} more)` : '';
  console.log(`${how === 'passed' ? ' ' : '!'} ${guard.padEnd(width)}  ${first}${others}`);
}
console.log(`\n${guards.length} guards replaced by "true" in turn`);
// A report without a single guard is a failure whatever it counts.
const isSound = status === 0 && guards.length > 0;
console.log(
  `${report.numPassedTests} passed, ${report.numFailedTests + (isSound || report.numFailedTests > 0 ? 0 : 1)} failed`,
);
process.exitCode = isSound ? 0 : 1;
