import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');
const settings = [
  '.gitignore',
  'biome.json',
  'package.json',
  'tsconfig.base.json',
  'tsconfig.json',
  ...['shared', 'machines', 'src', 'src/storage', 'src/demo', 'src/offline', 'seeds', 'scripts', 'tests'].map(
    (name) => `${name}/tsconfig.json`,
  ),
];

/** Small honest files, one for each part of the house. */
const honest: Record<string, string> = {
  'shared/result.ts': 'export const accept = (value: number) => value;\nexport type Result = number;\n',
  'machines/way.ts': "import { accept } from '../shared/result';\n\nexport const way = accept(1);\n",
  'src/storage/copies.ts':
    "import { accept } from '../../shared/result';\n\nexport const copies = accept(1);\n",
  'src/station/submit.ts': "import { copies } from '../storage/copies';\n\nexport const submit = copies;\n",
  'src/words/en.ts': 'export const words = 1;\n',
  'src/parts/clock.ts': "import { words } from '../words/en';\n\nexport const clock = words;\n",
  'src/screens/bar.ts': "import { clock } from '../parts/clock';\n\nexport const bar = clock;\n",
  'src/demo/day.ts': "import { story } from '../../seeds/story';\n\nexport const day = story;\n",
  'src/offline/serviceWorker.ts': "self.addEventListener('activate', () => undefined);\n",
  'seeds/story.ts': "import type { Result } from '../shared/result';\n\nexport const story: Result = 1;\n",
  'scripts/serve.mjs': 'export const serve = 1;\n',
  'tests/way.ts': "import { way } from '../machines/way';\n\nexport const seen = way;\n",
};

/** A small house of its own, under the true settings, in which breaches can be planted and tools run. */
export function makePlantedHouse() {
  const home = mkdtempSync(join(tmpdir(), 'strandproof-planted-'));
  const write = (path: string, text: string) => {
    mkdirSync(dirname(join(home, path)), { recursive: true });
    writeFileSync(join(home, path), text);
  };
  for (const [path, text] of Object.entries(honest)) write(path, text);
  for (const path of settings) cpSync(join(root, path), join(home, path));
  mkdirSync(join(home, 'node_modules'));
  for (const name of ['typescript', '@typescript', '@types', '@biomejs', 'vite', 'solid-js', 'xstate']) {
    symlinkSync(join(root, 'node_modules', name), join(home, 'node_modules', name));
  }

  const run = (tool: string, args: readonly string[]) => {
    const { status, stdout, stderr } = spawnSync(join(root, 'node_modules', '.bin', tool), args, {
      cwd: home,
      encoding: 'utf8',
    });
    return { code: status, said: stdout + stderr };
  };
  return {
    run,
    /** Runs a tool with one or more files planted, and takes them away again. */
    plant: (files: Record<string, string>, tool: string, args: readonly string[]) => {
      for (const [path, text] of Object.entries(files)) write(path, text);
      try {
        return run(tool, args);
      } finally {
        for (const path of Object.keys(files)) rmSync(join(home, path));
      }
    },
    remove: () => rmSync(home, { recursive: true, force: true }),
  };
}
