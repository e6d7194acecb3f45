// npm run taps: counts the taps of tests/browser/taps.test.ts and prints their table.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const { status } = spawnSync(
  join(root, 'node_modules', '.bin', 'vitest'),
  ['run', '--project', 'browser', 'tests/browser/taps.test.ts'],
  { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] },
);
process.exitCode = status ?? 1;
