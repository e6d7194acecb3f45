// npm run bench -- profile
// npm run bench -- export
// npm run bench -- start: in a real Chromium, tests/browser/startSize.test.ts; SIZE= and STARTS= for others
//
// Runs tests/speed/NAME.bench.ts, each side in the same process one after the other, and prints their medians in
// milliseconds and how many times as long each takes as the first. Not a test: nothing fails for being slow.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const names = process.argv.slice(2);
const cli = join(import.meta.dirname, '..', 'node_modules', 'vitest', 'vitest.mjs');
if (names.includes('start')) {
  const run = spawnSync(
    process.execPath,
    [cli, 'run', '--project', 'browser', 'tests/browser/startSize.test.ts'],
    { stdio: 'inherit', env: { SIZE: '100000', STARTS: '5', ...process.env } },
  );
  process.exit(run.status ?? 1);
}
const folder = mkdtempSync(join(tmpdir(), 'bench-'));
const file = join(folder, 'bench.json');
const args = [cli, 'bench', '--run', '--project', 'node', '--outputJson', file, ...names];
const { status, stderr } = spawnSync(process.execPath, args, {
  encoding: 'utf8',
  stdio: ['ignore', 'ignore', 'pipe'],
});
if (status !== 0) {
  console.error(stderr || `No bench of that name: ${names.join(' ')}`);
  process.exit(1);
}
/** @type {{ files: { groups: { fullName: string, benchmarks: { name: string, median: number, sampleCount: number }[] }[] }[] }} */
const report = JSON.parse(readFileSync(file, 'utf8'));
rmSync(folder, { recursive: true });
for (const { groups } of report.files) {
  for (const { benchmarks } of groups) {
    const [first] = benchmarks;
    for (const { name, median, sampleCount } of benchmarks) {
      const ratio = first === undefined ? 1 : median / first.median;
      console.log(
        `${name}: median ${median.toFixed(3)} ms of ${sampleCount} runs, ${ratio.toFixed(2)} × the first`,
      );
    }
  }
}
