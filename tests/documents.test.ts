import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readBlock, replaceBlock } from './printedBlock';

const root = join(import.meta.dirname, '..');

const print = (script: string): string =>
  `${execFileSync(process.execPath, [join(root, 'scripts', script)], { cwd: root, encoding: 'utf8' }).trim()}\n`;

describe('the documents', () => {
  // UPDATE_DOCS=1 writes instead of comparing: that is `npm run docs`.
  it.each([
    ['README.md', 'story', 'story.mjs'],
    ['DEVELOPERS.md', 'tables', 'tables.mjs'],
  ])('%s shows what the command for its %s prints now', (file, name, script) => {
    const path = join(root, file);
    const text = readFileSync(path, 'utf8');
    const printed = print(script);
    if (process.env.UPDATE_DOCS === '1') {
      writeFileSync(path, replaceBlock(text, name, printed));
    }
    expect(readBlock(readFileSync(path, 'utf8'), name)).toBe(printed);
  });

  it.each(['README.md', 'DEVELOPERS.md'])(
    '%s names only files, folders and commands that are there',
    (file) => {
      const text = readFileSync(join(root, file), 'utf8');
      const scripts = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).scripts as Record<
        string,
        string
      >;
      const paths = [...text.matchAll(/`((?:shared|machines|src|seeds|tests|scripts|public)\/[\w./-]*)`/g)];
      const commands = [...text.matchAll(/npm run ([\w:]+)/g)];
      expect(paths.length + commands.length).toBeGreaterThan(2);
      expect(paths.map(([, path]) => path ?? '').filter((path) => !existsSync(join(root, path)))).toEqual([]);
      expect(commands.map(([, name]) => name ?? '').filter((name) => !(name in scripts))).toEqual([]);
    },
  );
});
