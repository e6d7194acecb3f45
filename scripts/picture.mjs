// npm run pictures -- [--size 1280x800,800x1280] [--only NAME] [--questions] [--forced-colors] [--readme] [--scenario FILE.mjs] [--name start]
//
// Builds and serves the station and writes PNG files to node_modules/.cache/pictures: every scene of
// tests/browser/scenes in each size, or those whose name contains --only; with --questions every question of their
// sheets as well. With --readme it makes the one picture of README.md anew. With a scenario it opens an empty station
// instead and goes on from there, taking as many pictures as it likes:
//   export default async ({ page, shoot, address, size }) => {
//     await page.getByRole('button').first().tap();
//     await shoot('after-the-first-tap');
//   };
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { runnerImport } from 'vite';
import { buildStation } from './build.mjs';
import { chromiumFlags, readyChromium } from './chromium.mjs';
import { listen, makeServer } from './server.mjs';

const { values } = parseArgs({
  options: {
    size: { type: 'string', default: '1280x800,800x1280' },
    only: { type: 'string', default: '' },
    readme: { type: 'boolean', default: false },
    questions: { type: 'boolean', default: false },
    'forced-colors': { type: 'boolean', default: false },
    scenario: { type: 'string' },
    name: { type: 'string', default: 'start' },
  },
});

const root = join(import.meta.dirname, '..');
const cache = join(root, 'node_modules', '.cache');
const pictures = values.readme ? join(root, 'docs') : join(cache, 'pictures');
/** The one picture of the README: its scene, its size, its file. */
const ofReadme = { scene: 'bar-usual', size: '1280x800', file: 'bar' };
await mkdir(pictures, { recursive: true });

/** @param {string} size such as 1280x800 */
function readSize(size) {
  const [, width, height] = /^(\d+)x(\d+)$/.exec(size) ?? [];
  if (!width || !height) throw new Error(`--size takes 1280x800, or several with commas, not "${size}"`);
  return { width: Number(width), height: Number(height) };
}

const folder = await mkdtemp(join(cache, 'station-'));
await buildStation(folder);
const server = makeServer(folder);
const address = `http://127.0.0.1:${await listen(server, { host: '127.0.0.1', port: 0 })}`;
const { executablePath, env } = await readyChromium();
const browser = await chromium.launch({ executablePath, env, args: chromiumFlags });

/**
 * @param {Page} page
 * @param {string} name
 */
async function shoot(page, name) {
  await page.evaluate('document.fonts.ready.then(() => undefined)');
  const path = join(pictures, `${name}.png`);
  await page.screenshot({ path });
  console.log(path);
}

/**
 * @param {Browser} browser
 * @param {string} file
 */
async function playScenario(browser, file) {
  const { default: play } = await import(pathToFileURL(resolve(file)).href);
  for (const size of values.size.split(',')) {
    const context = await browser.newContext({
      viewport: readSize(size),
      hasTouch: true,
      locale: 'en-US',
      timezoneId: 'America/St_Johns',
    });
    const page = await context.newPage();
    page.on('pageerror', (error) => console.error(`page: ${error.message}`));
    page.on('console', (message) => console.log(`page: ${message.text()}`));
    /** @param {string} name */
    const shootHere = (name) => shoot(page, `${name}-${size}`);
    await page.goto(address, { waitUntil: 'networkidle' });
    await shootHere(values.name);
    await play({ page, shoot: shootHere, address, size });
    await context.close();
  }
}

/** @typedef {import('playwright-core').Browser} Browser */
/** @typedef {import('playwright-core').Page} Page */
/** @typedef {(page: Page) => Promise<void>} Settle */
/** @typedef {{ page: Page, problem: string | null, close: () => Promise<void> }} Shown */
/** @typedef {(browser: Browser, address: string, scene: object) => Promise<Shown>} ShowScene */

/** @param {string} path */
const load = async (path) => {
  const { module } = await runnerImport(join(root, path), { root, configFile: false, logLevel: 'error' });
  return module;
};

/** @param {Browser} browser */
async function shootScenes(browser) {
  /** @type {{ allScenes: readonly { name: string, scene: object }[] }} */
  const { allScenes } = await load('tests/browser/scenes/allScenes.ts');
  /** @type {{ settle: Settle, showScene: ShowScene }} */
  const { settle, showScene } = await load('tests/browser/scenes/showScene.ts');
  /** @type {{ listQuestions: (page: Page) => Promise<readonly string[]>, turnTo: (page: Page, question: string) => Promise<void> }} */
  const { listQuestions, turnTo } = await load('tests/browser/scenes/questions.ts');
  const wanted = allScenes.filter(({ name }) =>
    values.readme ? name === ofReadme.scene : name.includes(values.only),
  );
  if (wanted.length === 0) throw new Error(`No scene is called ${values.only}`);
  for (const { name, scene } of wanted) {
    const { page, problem, close } = await showScene(browser, address, scene);
    if (problem !== null) {
      console.error(`${name} is not what this shows: ${problem}`);
      process.exitCode = 1;
    }
    if (values['forced-colors']) await page.emulateMedia({ forcedColors: 'active' });
    for (const size of values.readme ? [ofReadme.size] : values.size.split(',')) {
      await page.setViewportSize(readSize(size));
      await settle(page);
      await shoot(page, values.readme ? ofReadme.file : `${name}-${size}`);
      if (!values.questions) continue;
      for (const question of await listQuestions(page)) {
        await turnTo(page, question);
        await shoot(page, `${name}-${question}-${size}`);
      }
    }
    await close();
  }
}

try {
  if (values.scenario === undefined) await shootScenes(browser);
  else await playScenario(browser, values.scenario);
} finally {
  await browser.close();
  server.close();
  await rm(folder, { recursive: true, force: true });
}
