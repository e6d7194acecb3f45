// npm run pictures -- [--size 1280x800,800x1280] [--scenario FILE.mjs] [--name start]
//
// Builds and serves the station, opens it in each size and writes PNG files to node_modules/.cache/pictures.
// A scenario goes on from the opened page, and takes as many pictures as it likes:
//   export default async ({ page, shoot, address, size }) => {
//     await page.getByRole('button').first().tap();
//     await shoot('after-the-first-tap');
//   };
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { buildStation } from './build.mjs';
import { chromiumFlags, readyChromium } from './chromium.mjs';
import { listen, makeServer } from './server.mjs';

const { values } = parseArgs({
  options: {
    size: { type: 'string', default: '1280x800,800x1280' },
    scenario: { type: 'string' },
    name: { type: 'string', default: 'start' },
  },
});

const cache = join(import.meta.dirname, '..', 'node_modules', '.cache');
const pictures = join(cache, 'pictures');
await mkdir(pictures, { recursive: true });

/** @param {string} size such as 1280x800 */
function readSize(size) {
  const [, width, height] = /^(\d+)x(\d+)$/.exec(size) ?? [];
  if (!width || !height) throw new Error(`--size takes 1280x800, or several with commas, not "${size}"`);
  return { width: Number(width), height: Number(height) };
}

/** @type {(context: object) => Promise<void>} */
const play = values.scenario
  ? (await import(pathToFileURL(resolve(values.scenario)).href)).default
  : async () => undefined;

const folder = await mkdtemp(join(cache, 'station-'));
await buildStation(folder);
const server = makeServer(folder);
const address = `http://127.0.0.1:${await listen(server, { host: '127.0.0.1', port: 0 })}`;
const { executablePath, env } = await readyChromium();
const browser = await chromium.launch({ executablePath, env, args: chromiumFlags });

try {
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
    const shoot = async (name) => {
      await page.evaluate('document.fonts.ready.then(() => undefined)');
      const path = join(pictures, `${name}-${size}.png`);
      await page.screenshot({ path });
      console.log(path);
    };
    await page.goto(address, { waitUntil: 'networkidle' });
    await shoot(values.name);
    await play({ page, shoot, address, size });
    await context.close();
  }
} finally {
  await browser.close();
  server.close();
  await rm(folder, { recursive: true, force: true });
}
