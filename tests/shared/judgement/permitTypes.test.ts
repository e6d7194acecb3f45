import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { Order } from '../../../shared/judgement/mixture';
import { mixture } from '../../../shared/judgement/mixture';
import { issuePermit, issueTestPermit } from '../../../shared/judgement/permit';
import { readTree } from '../../architecture/tree';
import { attempts, swapPermits } from '../../types/permit';
import { tell, until } from '../records/telling';
import { findPermitLeaks } from './permitLeaks';

const root = join(import.meta.dirname, '../../..');
const folder = join(root, 'node_modules/.cache/permit-proofs', String(process.pid));

/** What the compiler says of one piece of code that lies beside the house: the codes of its errors. */
function compile(code: string): readonly string[] {
  mkdirSync(folder, { recursive: true });
  const judgement = join(root, 'shared/judgement');
  const head = `import { mixture, type Order } from '${judgement}/mixture';
import { issuePermit, type MixPermit, type TestPermit } from '${judgement}/permit';
declare const order: Order; declare const mix: MixPermit; declare const test: TestPermit;
export const used = [issuePermit, mixture];\n`;
  writeFileSync(join(folder, 'proof.ts'), head + code);
  const options = {
    composite: false,
    emitDeclarationOnly: false,
    noEmit: true,
    incremental: false,
    rootDir: root,
  };
  const config = { extends: join(root, 'tsconfig.base.json'), compilerOptions: options, files: ['proof.ts'] };
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(config));
  try {
    execFileSync(join(root, 'node_modules/.bin/tsc'), ['-p', folder], { encoding: 'utf8', stdio: 'pipe' });
    return [];
  } catch (failure) {
    const { stdout } = failure as { stdout: string };
    return [...stdout.matchAll(/proof\.ts\S* error (TS\d+)/g)].map(([, code]) => code ?? '');
  }
}

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('mixing without a permit', () => {
  it('does not compile, for one reason each, while mixing with one does', () => {
    expect(compile('export const a = [mixture(mix, order, 1), mixture(test, order, 1)];')).toEqual([]);
    expect(compile('export const a = mixture(order, 1);')).toEqual(['TS2554']);
    const wrong = [
      'mixture(undefined, order, 1)',
      'mixture(null, order, 1)',
      'mixture({} as unknown, order, 1)',
      "mixture({ kind: 'mix' } as const, order, 1)",
      'mixture({ ...order }, order, 1)',
      'mixture(issuePermit, order, 1)',
    ];
    expect(compile(`export const a = [${wrong.join(',\n')}];`)).toEqual(wrong.map(() => 'TS2345'));
    // TS2740, TS2741: properties are missing, the brand among them.
    const swapped = 'export const a: MixPermit = test;\nexport const b: TestPermit = mix;';
    expect(compile(swapped)).toEqual(['TS2740', 'TS2741']);
  });

  it('mixes nothing when it is run all the same', () => {
    const told = tell(until('BOWL_WEIGHED'));
    const permit = issuePermit(told.record, 'lengths', salon, told.atMs);
    if (!permit.ok) throw new Error(permit.error.code);
    const order: Order = {
      ...permit.value.tested,
      developerPercent: permit.value.maxDeveloperPercent,
      zone: 'lengths',
      shades: [{ shade: 'x', parts: 1 }],
      colourG: 40,
    };
    expect(mixture(permit.value, order, 1).ok).toBe(true);
    for (const [name, attempt] of Object.entries(attempts)) {
      // The part of a permit is the real one under a weaker type: only the compiler can tell.
      if (name === 'a part of one') continue;
      const made = (() => {
        try {
          return attempt(order, permit.value).ok;
        } catch {
          return 'threw';
        }
      })();
      expect(made, name).toBe(false);
    }
  });
});

it('bends no permit at run time either', () => {
  const { record, atMs } = tell(until('BOWL_WEIGHED'));
  const mix = issuePermit(record, 'lengths', salon, atMs);
  const test = issueTestPermit(record, salon);
  if (!mix.ok || !test.ok) throw new Error('refused');
  expect(() => swapPermits(test.value, mix.value)).toThrow(TypeError);
  expect(mix.value.maxMinutes).toBe(25);
});

describe('the house', () => {
  const files = readTree();

  it('makes a permit in one module only, by one cast for each of the three kinds', () => {
    expect(findPermitLeaks(files).map(({ path, line, what }) => `${path}:${line} ${what}`)).toEqual([]);
    const maker = readFileSync(join(root, 'shared/judgement/permit.ts'), 'utf8');
    expect(maker.match(/ as (Mix|Test|Toner)Permit/g)).toHaveLength(3);
    expect(files.filter(({ path }) => path.startsWith('shared/')).length).toBeGreaterThan(40);
  });

  const mixes = "import { mixture } from './mixture'; ";
  const plant = (path: string, text: string) => findPermitLeaks([{ path, text }]).map(({ what }) => what);
  it.each([
    ['cast to a permit', 'export const p = {} as MixPermit;'],
    ['cast to a permit', 'export const p = {} as unknown as TestPermit;'],
    ['cast to a permit', 'export const p = <MixPermit>{};'],
    ['cast to a permit', 'export const p = [] as readonly MixPermit[];'],
    ['cast to a permit', 'export const p = {} as Parameters<typeof mixture>[0];'],
    ['any', 'export const p: any = {};'],
    ['any', 'export const f = (raw: unknown) => raw as any;'],
    ['claims a permit', 'export const isPermit = (raw: unknown): raw is MixPermit => true;'],
    ['claims a permit', 'export function check(raw: unknown): asserts raw is TestPermit {}'],
    ['names a permit where one could be made', 'export type Leave = MixPermit;'],
    ['names a permit where one could be made', 'export interface Leave extends MixPermit {}'],
    ['names a permit where one could be made', 'export const p: MixPermit = JSON.parse(text);'],
    ['names a permit where one could be made', 'export const f = (): MixPermit => JSON.parse(text);'],
    ['names a permit where one could be made', 'export const s = signal<MixPermit>();'],
    ['names a permit where one could be made', 'declare const p: permits.MixPermit;'],
    ['borrows a permit type', "export type P = import('./permit').MixPermit;"],
    ['hides a name', "import type { MixPermit as P } from './permit';"],
    ['hides a name', "import { issuePermit as issue } from './permit';"],
    ['hides a name', "import * as judgement from './mixture';"],
    ['mixes with what nobody issued', `${mixes}mixture(JSON.parse(text), order, 1);`],
    ['mixes with what nobody issued', `${mixes}mixture(kept, order, 1);`],
    ['mixes with what nobody issued', `${mixes}const kept = restore(); mixture(kept.value, order, 1);`],
    ['mixes with what nobody issued', `${mixes}const p = issuePermit(); mixture({ ...p.value }, order, 1);`],
    ['silences the compiler', '// @ts-expect-error later\nexport const x = 1;'],
    ['silences the compiler', '// @ts-nocheck\nexport const x = 1;'],
  ])('is told when somebody %s: %s', (what, text) => {
    expect(plant('src/screens/mix/planted.ts', text)).toEqual([what]);
    expect(plant('tests/planted.ts', text)).toEqual([]);
  });

  it('leaves alone what only hands a permit on', () => {
    const handsOn = 'export function show(permit: MixPermit | TestPermit): string { return permit.kind; }';
    expect(plant('src/screens/mix/planted.ts', handsOn)).toEqual([]);
    const kept = 'export interface AtScale { readonly permit: Result<MixPermit, PermitRefusal>; }';
    expect(plant('src/screens/mix/planted.ts', kept)).toEqual([]);
    const issued = `${mixes}const p = issuePermit(r, z, s, n); if (p.ok) mixture(p.value, order, 1);`;
    expect(plant('src/screens/mix/planted.ts', issued)).toEqual([]);
  });

  it('allows the module three casts and notices a fourth', () => {
    const three = 'const a = x as MixPermit; const b = y as TestPermit; const c = z as TonerPermit;';
    expect(plant('shared/judgement/permit.ts', three)).toEqual([]);
    expect(plant('shared/judgement/permit.ts', `${three} const d = w as MixPermit;`)).toHaveLength(4);
  });
});
