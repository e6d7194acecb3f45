import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makePlantedHouse } from './architecture/plantedHouse';

let house: ReturnType<typeof makePlantedHouse>;
beforeAll(() => {
  house = makePlantedHouse();
});
afterAll(() => house.remove());

describe('the compiler', () => {
  it('accepts an honest house', () => {
    expect(house.run('tsc', ['-b'])).toEqual({ code: 0, said: '' });
  });

  it.each([
    ['shared/a.ts', "import { way } from '../machines/way';\nexport const a = way;", 'TS6307'],
    ['shared/a.ts', "export type A = import('../machines/way').Way;", 'TS6307'],
    ['shared/a.ts', "import { submit } from '../src/station/submit';\nexport const a = submit;", 'TS6307'],
    ['shared/a.ts', 'export const a = document.title;', 'TS2584'],
    ['shared/a.ts', 'export const a = process.env;', 'TS2591'],
    ['shared/a.ts', 'setTimeout(() => undefined, 1);', 'TS2304'],
    ['shared/a.ts', "export { readFile } from 'node:fs';", 'TS2591'],
    ['shared/a.ts', 'export const a = (b: string[]): string => b[0];', 'TS2322'],
    ['shared/a.ts', 'export const a: { b?: string } = { b: undefined };', 'TS2375'],
    ['machines/a.ts', "import { submit } from '../src/station/submit';\nexport const a = submit;", 'TS6307'],
    ['machines/a.ts', 'export const a = document.title;', 'TS2584'],
    ['src/storage/a.ts', "import { submit } from '../station/submit';\nexport const a = submit;", 'TS6307'],
    ['src/storage/a.ts', 'export const a = document.title;', 'TS2584'],
    ['src/demo/a.ts', "import { submit } from '../station/submit';\nexport const a = submit;", 'TS6307'],
    ['src/demo/a.ts', 'export const a = document.title;', 'TS2584'],
    ['src/offline/a.ts', "import { submit } from '../station/submit';\nexport const a = submit;", 'TS6307'],
    ['src/offline/a.ts', 'export const a = document.title;', 'TS2584'],
    ['src/tablet/a.ts', "import '../offline/serviceWorker';", 'TS6307'],
    ['src/a.ts', "import { seen } from '../tests/way';\nexport const a = seen;", 'TS6307'],
    ['seeds/a.ts', "import { submit } from '../src/station/submit';\nexport const a = submit;", 'TS6307'],
    ['scripts/a.mjs', '/** @type {number} */\nexport const a = "one";', 'TS2322'],
  ])('refuses in %s: %s', (path, text, code) => {
    const answer = house.plant({ [path]: text }, 'tsc', ['-b']);
    expect(answer.code).not.toBe(0);
    expect(answer.said).toContain(`${path}(`);
    expect(answer.said).toContain(code);
  });
});

describe('the linter', () => {
  const lint = ['lint', '--error-on-warnings', '--reporter=summary', '.'];

  it('accepts an honest house', () => {
    expect(house.run('biome', lint)).toMatchObject({ code: 0 });
  });

  it.each([
    ['shared/a.ts', "import { way } from '../machines/way';\nexport const a = way;", 'noRestrictedImports'],
    [
      'shared/heat/a.ts',
      "import type { way } from '../../machines/way';\nexport type A = typeof way;",
      'noRestrictedImports',
    ],
    ['shared/a.ts', "export const a = () => import('../machines/way');", 'noRestrictedImports'],
    ['shared/a.ts', "export { way } from '../machines/way';", 'noRestrictedImports'],
    [
      'machines/a.ts',
      "import { submit } from '../src/station/submit';\nexport const a = submit;",
      'noRestrictedImports',
    ],
    [
      'src/words/a.ts',
      "import { clock } from '../parts/clock';\nexport const a = clock;",
      'noRestrictedImports',
    ],
    ['src/parts/a.ts', "import { bar } from '../screens/bar';\nexport const a = bar;", 'noRestrictedImports'],
    [
      'src/parts/a.ts',
      "import { submit } from '../station/submit';\nexport const a = submit;",
      'noRestrictedImports',
    ],
    [
      'src/screens/a.ts',
      "import { copies } from '../storage/copies';\nexport const a = copies;",
      'noRestrictedImports',
    ],
    [
      'src/a.ts',
      "import { copies } from './storage/copies';\nexport const a = copies;",
      'noRestrictedImports',
    ],
    [
      'src/tablet/a.ts',
      "import { copies } from '../storage/copies';\nexport const a = copies;",
      'noRestrictedImports',
    ],
    [
      'src/station/a.ts',
      "import { bar } from '../screens/bar';\nexport const a = bar;",
      'noRestrictedImports',
    ],
    [
      'src/storage/a.ts',
      "import { submit } from '../station/submit';\nexport const a = submit;",
      'noRestrictedImports',
    ],
    [
      'seeds/a.ts',
      "import { submit } from '../src/station/submit';\nexport const a = submit;",
      'noRestrictedImports',
    ],
    // The compiler knows the seeds in all of src, since src reaches src/demo: here the linter stands alone.
    ['src/a.ts', "import { story } from '../seeds/story';\nexport const a = story;", 'noRestrictedImports'],
    ['src/a.ts', "import { day } from './demo/day';\nexport const a = day;", 'noRestrictedImports'],
    [
      'src/station/a.ts',
      "import { story } from '../../seeds/story';\nexport const a = story;",
      'noRestrictedImports',
    ],
    ['src/screens/a.ts', "import { day } from '../demo/day';\nexport const a = day;", 'noRestrictedImports'],
    [
      'src/demo/a.ts',
      "import { submit } from '../station/submit';\nexport const a = submit;",
      'noRestrictedImports',
    ],
    [
      'src/offline/a.ts',
      "import { copies } from '../storage/copies';\nexport const a = copies;",
      'noRestrictedImports',
    ],
    ['shared/a.ts', 'export const a = Date.now();', 'noRestrictedGlobals'],
    ['machines/a.ts', 'setTimeout(() => undefined, 1);', 'noRestrictedGlobals'],
    ['machines/a.ts', 'export const a = performance.now();', 'noRestrictedGlobals'],
    ['src/a.ts', 'export const a: any = 1;', 'noExplicitAny'],
  ])('refuses in %s: %s', (path, text, rule) => {
    const answer = house.plant({ [path]: text }, 'biome', lint);
    expect(answer.code).not.toBe(0);
    expect(answer.said).toContain(rule);
  });

  it('refuses two files that import each other', () => {
    const answer = house.plant(
      {
        'shared/a.ts': "import { b } from './b';\nexport const a = () => b;\n",
        'shared/b.ts': "import { a } from './a';\nexport const b = () => a;\n",
      },
      'biome',
      lint,
    );
    expect(answer.code).not.toBe(0);
    expect(answer.said).toContain('noImportCycles');
  });
});
