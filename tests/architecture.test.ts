import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findHeldSentences } from './architecture/heldSentences';
import { findInlineStyles } from './architecture/inlineStyles';
import { findLostTests } from './architecture/namedTests';
import { findForbiddenImports } from './architecture/oneWay';
import { findBarrels, findMisplacedFiles } from './architecture/places';
import { findClockAndChance, findLivingCharts } from './architecture/purity';
import { type Breach, readTree, type SourceFile } from './architecture/tree';
import { findVisibleWords } from './architecture/visibleWords';

const house = readTree();
const { dependencies } = JSON.parse(readFileSync(join(import.meta.dirname, '..', 'package.json'), 'utf8'));
const packages = Object.keys(dependencies);
const findForbidden = (files: readonly SourceFile[]) => findForbiddenImports(files, packages);

const show = ({ path, line, what }: Breach) => `${path}:${line} ${what}`;

/** What a rule says of one file that lies only here. */
const plant = (rule: (files: readonly SourceFile[]) => Breach[], path: string, text: string) =>
  rule([{ path, text }]).map(({ what }) => what);

describe('the house', () => {
  it('is read whole', () => {
    for (const path of [
      'shared/result.ts',
      'src/main.tsx',
      'scripts/serve.mjs',
      'tests/architecture.test.ts',
    ]) {
      expect(house.map((file) => file.path)).toContain(path);
    }
  });

  it.each([
    ['imports run one way', findForbidden],
    ['shared and machines read no clock and draw no lots', findClockAndChance],
    ['no chart waits, invokes or runs', findLivingCharts],
    ['every file lies where its topic is', findMisplacedFiles],
    ['no file only hands on others', findBarrels],
    ['every test that is named is there', findLostTests],
    ['every word that a person sees stands in src/words', findVisibleWords],
    ['no screen carries a style that the policy refuses', findInlineStyles],
    ['no screen goes on saying what it said first', findHeldSentences],
  ])('%s', (_title, rule) => {
    expect(rule(house).map(show)).toEqual([]);
  });
});

describe('a planted import against the one way is found', () => {
  it.each([
    ['shared/heat/dose.ts', "import { chart } from '../../machines/a';"],
    ['shared/heat/dose.ts', "import type { Chart } from '../../machines/a';"],
    ['shared/heat/dose.ts', "import '../../src/station/open';"],
    ['shared/heat/dose.ts', "export type Chart = import('../../machines/a').Chart;"],
    ['shared/heat/dose.ts', "export const late = () => import('../../machines/a');"],
    ['shared/heat/dose.ts', 'export const late = (name: string) => import(`../../machines/${name}`);'],
    ['shared/heat/dose.ts', "export { chart } from '../../machines/a';"],
    ['shared/heat/dose.ts', "export * from '../../machines/a';"],
    ['shared/heat/dose.ts', "import chart = require('../../machines/a');"],
    ['shared/heat/dose.ts', "const chart = require('../../machines/a');"],
    ['shared/heat/dose.ts', '/// <reference path="../../machines/a.ts" />\nexport {};'],
    ['shared/heat/dose.ts', "declare module '../../machines/a' {}"],
    ['shared/heat/dose.ts', "const all = import.meta.glob('../../machines/*.ts');"],
    ['shared/heat/dose.ts', "import { readFile } from 'node:fs';"],
    ['shared/heat/dose.ts', "import { createSignal } from 'solid-js';"],
    ['shared/heat/dose.ts', "import { setup } from 'xstate';"],
    ['shared/heat/dose.ts', "import x from 'not-in-package';"],
    ['shared/heat/dose.ts', "import x from '../../elsewhere/x';"],
    ['shared/heat/dose.ts', "import x from '/src/station/open';"],
    ['machines/way.ts', "import { open } from '../src/station/open';"],
    ['machines/way.ts', "import { createSignal } from 'solid-js';"],
    ['machines/way.ts', "import type { Story } from '../seeds/story';"],
    ['src/words/en.ts', "import { Clock } from '../parts/Clock';"],
    ['src/parts/Clock.tsx', "import { Bar } from '../screens/bar/Bar';"],
    ['src/parts/Clock.tsx', "import { submit } from '../station/submit';"],
    ['src/screens/bar/Bar.tsx', "import { append } from '../../storage/copies';"],
    ['src/screens/bar/Bar.tsx', "import { get } from 'idb-keyval';"],
    ['src/screens/bar/Bar.tsx', "import { story } from '../../../seeds/story';"],
    ['src/main.tsx', "import { append } from './storage/copies';"],
    ['src/main.tsx', "new Worker(new URL('./storage/worker/journal.ts', import.meta.url));"],
    ['src/tablet/wakeLock.ts', "import { append } from '../storage/copies';"],
    ['src/storage/copies.ts', "import { submit } from '../station/submit';"],
    ['src/station/submit.ts', "import { Bar } from '../screens/bar/Bar';"],
    ['seeds/story.ts', "import { open } from '../src/station/open';"],
    ['seeds/story.ts', "import { fold } from '../shared/records/fold';"],
    ['scripts/serve.mjs', "import '../tests/browser/server';"],
    ['src/station/demo.ts', "import { day } from '../demo/day';"],
    ['src/station/demo.ts', "import { day } from '../../seeds/day';"],
    ['src/screens/bar/Bar.tsx', "export const late = () => import('../../demo/day');"],
    ['src/demo/day.ts', "import { submit } from '../station/submit';"],
    ['src/offline/serviceWorker.ts', "import { append } from '../storage/copies';"],
    ['src/offline/serviceWorker.ts', "import { get } from 'idb-keyval';"],
    ['src/tablet/pageKeeper.ts', "import '../offline/serviceWorker';"],
    ['src/station/submit.ts', "import { precache } from 'workbox-precaching';"],
  ])('%s: %s', (path, text) => {
    expect(plant(findForbidden, path, text)).toHaveLength(1);
  });

  it.each([
    ['shared/heat/dose.ts', "import { accept } from '../result';"],
    ['machines/way.ts', "import { setup } from 'xstate'; import { accept } from '../shared/result';"],
    ['src/parts/Clock.tsx', "import { words } from '../words/en'; import { Show } from 'solid-js';"],
    ['src/screens/bar/Bar.tsx', "import { submit } from '../../station/submit';"],
    ['src/station/submit.ts', "import { append } from '../storage/copies';"],
    [
      'src/storage/open.ts',
      "new Worker(new URL('./worker/journal.ts', import.meta.url)); import 'idb-keyval';",
    ],
    ['seeds/story.ts', "import type { Event } from '../shared/records/event'; import { day } from './day';"],
    ['src/demo/day.ts', "import { day } from '../../seeds/day';"],
    ['src/station/demo.ts', "export const late = () => import('../demo/day');"],
    ['src/station/demo.ts', "import type { Day } from '../demo/day';"],
    ['tests/shared/a.test.ts', "import { append } from '../../src/storage/copies';"],
  ])('and the right way is let through: %s: %s', (path, text) => {
    expect(plant(findForbidden, path, text)).toEqual([]);
  });
});

describe('a planted clock, chance or waiting is found', () => {
  it.each([
    'export const now = Date.now();',
    'export const now = new Date();',
    'export type When = Date;',
    'const { now } = Date;',
    'export const at = { Date };',
    'export const chance = Math.random();',
    "export const chance = Math['random']();",
    'const { random } = Math;',
    'export const pass = (use: unknown) => use; pass(Math);',
    'setTimeout(() => undefined, 1);',
    'const wait = setInterval;',
    'export const t = performance.now();',
    "export const t = globalThis['Date'].now();",
    'export const id = crypto.randomUUID();',
    'queueMicrotask(() => undefined);',
  ])('%s', (text) => {
    for (const path of ['shared/a.ts', 'machines/a.ts']) {
      expect(plant(findClockAndChance, path, text)).not.toEqual([]);
    }
    expect(plant(findClockAndChance, 'src/station/ticker.ts', text)).toEqual([]);
  });

  it.each([
    'export const top = Math.max(1, 2);',
    'export const read = (record: { Date: number }) => record.Date;',
    'export interface Row { performance: number }',
    'export const words = "Date, Math.random()"; // new Date()',
  ])('and what only looks like it is let through: %s', (text) => {
    expect(plant(findClockAndChance, 'shared/a.ts', text)).toEqual([]);
  });

  it.each([
    "export const chart = { after: { 1000: 'late' } };",
    "export const chart = { 'after': {} };",
    "export const chart = { invoke: { src: 'job' } };",
    "export const chart = raise({ type: 'LATE' }, { delay: 10 });",
    'export const actor = createActor(chart);',
    "import { fromPromise } from 'xstate';",
  ])('in a chart: %s', (text) => {
    expect(plant(findLivingCharts, 'machines/chart.ts', text)).not.toEqual([]);
  });

  it('in the station: a running actor', () => {
    const text = "import { createActor } from 'xstate';";
    expect(plant(findLivingCharts, 'src/station/open.ts', text)).not.toEqual([]);
    expect(plant(findLivingCharts, 'tests/machines/a.test.ts', text)).toEqual([]);
  });
});

describe('a planted file in the wrong place is found', () => {
  it.each([
    'shared/utils/round.ts',
    'src/helpers/a.ts',
    'machines/common/a.ts',
    'src/screens/bar/utils/a.tsx',
    'shared/heat/types.ts',
    'shared/heat/dose.test.ts',
    'src/parts/__tests__/a.ts',
    'seeds/story.spec.ts',
  ])('%s', (path) => {
    expect(plant(findMisplacedFiles, path, '')).toHaveLength(1);
  });

  it.each([
    ['shared/index.ts', 'export const a = 1;'],
    ['shared/all.ts', "export { accept } from './result';"],
    ['shared/all.ts', "export * from './result';"],
    ['shared/all.ts', "export type { Result } from './result';"],
  ])('a barrel: %s: %s', (path, text) => {
    expect(plant(findBarrels, path, text)).toHaveLength(1);
  });
});

describe('a planted name of a test', () => {
  const file = { path: 'shared/dose.ts', text: '/** Doses.\n * Checked in tests/shared/dose.test.ts. */' };

  it('that is not there is found where it stands', () => {
    expect(findLostTests([file]).map(show)).toEqual([
      'shared/dose.ts:2 names tests/shared/dose.test.ts, which is not there',
    ]);
  });

  it('that is there is let through', () => {
    expect(findLostTests([file, { path: 'tests/shared/dose.test.ts', text: '' }])).toEqual([]);
  });
});

describe('a planted word outside src/words is found', () => {
  it.each([
    'const a = <p>No mix yet</p>;',
    'const a = <p>{"Next"}</p>;',
    'const a = <p>{`Next ${n}`}</p>;',
    'const a = <p>{due() ? "Take off" : words.wait}</p>;',
    'const a = <p>{due() && "Take off"}</p>;',
    'const a = <p>{n + " grams"}</p>;',
    'const a = <button aria-label="Next" />;',
    'const a = <button attr:aria-label="Next" />;',
    'const a = <button title={"Next"} />;',
    'const a = <input placeholder={`Next`} />;',
    'const a = <img alt="strand" />;',
    'const a = <div textContent="done" />;',
    'const a = <BigButton text="Next" />;',
    'const a = <BigButton text="go on now" />;',
    'const a = <Show when={x()} fallback={<b>Nothing</b>}>{words.a}</Show>;',
    'const refusal = "this cannot be mixed"; const a = <p>{refusal}</p>;',
    'const refusal = `this cannot be ${n}`;',
  ])('%s', (text) => {
    for (const path of ['src/parts/A.tsx', 'src/screens/bar/A.tsx', 'src/tablet/A.tsx', 'src/main.tsx']) {
      expect(plant(findVisibleWords, path, text)).toHaveLength(1);
    }
  });

  it.each([
    'const a = <p class="big warm">{words.noMix}</p>;',
    'const a = <p>· {n()} / 12:47</p>;',
    'const a = <p role="status" aria-live="polite" data-part="clock">{words.of(n())}</p>;',
    'const a = <path d="M0 0 L10 10 Z" viewBox="0 0 10 10" />;',
    'const a = <BigButton kind="primary" class="wide tall" text={words.next} />;',
    'throw new Error("no such zone here");',
    'const a = <Show when={step() === "hotTools"}>{words.tools}</Show>;',
    'matchMedia("(prefers-reduced-motion: reduce)");',
  ])('and what is no word is let through: %s', (text) => {
    expect(plant(findVisibleWords, 'src/parts/A.tsx', text)).toEqual([]);
  });
});

describe('a planted sentence that would never change is found', () => {
  it.each([
    '<Show when={said()}>{(a) => say(a())}</Show>',
    '<Show when={said()}>{(a) => `· ${a()}`}</Show>',
    '<Show when={said()} fallback={<b />}>\n  {(a) => words.steps[a()]}\n</Show>',
    '<Match when={said()}>{(a) => words.steps[a()]}</Match>',
  ])('%s', (text) => {
    expect(plant(findHeldSentences, 'src/parts/A.tsx', `const a = ${text};`)).toHaveLength(1);
  });

  it.each([
    '<Show when={said()}>{(a) => <p>{say(a())}</p>}</Show>',
    '<Show when={said()}>\n  {(a) => (\n    <p>{a()}</p>\n  )}\n</Show>',
    '<Show when={said()} keyed>{(a) => say(a)}</Show>',
    '<For each={all()}>{(a) => words.steps[a]}</For>',
  ])('and what follows is let through: %s', (text) => {
    expect(plant(findHeldSentences, 'src/parts/A.tsx', `const a = ${text};`)).toEqual([]);
  });
});

describe('a planted style that the policy refuses is found', () => {
  it.each([
    '<p style="color: red" />',
    "<p style={{ color: 'red' }} />",
    '<p style={{ top: x(), left: 0 }} />',
    '<p style={`color: red`} />',
  ])('%s', (text) => {
    expect(plant(findInlineStyles, 'src/parts/A.tsx', `const a = ${text};`)).toHaveLength(1);
  });

  it.each(['<p style={{ top: x() }} />', '<p class="red" />', '<p style={styles()} />'])(
    'and a living one is let through: %s',
    (text) => {
      expect(plant(findInlineStyles, 'src/parts/A.tsx', `const a = ${text};`)).toEqual([]);
    },
  );
});
