// npm run prove:kills [-- KILLS]: the power cuts of tests/browser/kills.test.ts, 300 of them or as many as are named.
// SEED=… repeats or varies a run. The last line is the count.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { countReport } from './counting.mjs';

const root = join(import.meta.dirname, '..');
const reports = join(root, 'node_modules', '.cache', 'reports');
const file = join(reports, 'kills.json');
mkdirSync(reports, { recursive: true });
rmSync(file, { force: true });

const kills = process.argv[2] ?? process.env.KILLS ?? '300';
if (!/^[1-9]\d*$/.test(kills)) throw new Error(`How many kills? A whole number, not "${kills}"`);

const { status } = spawnSync(
  join(root, 'node_modules', '.bin', 'vitest'),
  [
    'run',
    ...['--project', 'browser', 'tests/browser/kills.test.ts'],
    ...['--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
  ],
  { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], env: { ...process.env, KILLS: kills } },
);

/** @returns {import('./counting.mjs').Report | undefined} */
function readReport() {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

const { passed, failed } = countReport(readReport(), status ?? 1);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
