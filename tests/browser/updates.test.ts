import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, it } from 'vitest';
import { readBuildName } from '../../scripts/buildName.mjs';
import { launchBrowser, tabletLandscape } from './browser';
import { isKept, isNextHere, makeNextBuild, readEdition } from './keptPage';
import { plantLogs } from './kills/plant';
import { leave, visit } from './kills/readBack';
import { makeSalonDay } from './kills/salonDay';
import { patience } from './person';
import { startStation } from './server';

const built = inject('stationFolder');
const nextMain = '/assets/index-nextnext.js';
let browser: Browser;
let served: Awaited<ReturnType<typeof startStation>>;
let context: BrowserContext;
let own: string;
/** What the page of the first build says of itself. */
let now: string;

beforeAll(async () => {
  browser = await launchBrowser();
  now = readBuildName(await readFile(join(built, 'index.html'), 'utf8'));
});
afterAll(() => browser.close());
beforeEach(async () => {
  own = await mkdtemp(join(tmpdir(), 'strandproof-updates-'));
  served = await startStation();
  context = await browser.newContext(tabletLandscape);
  context.setDefaultTimeout(20_000);
});
afterEach(async () => {
  await context.close();
  await served.close();
  await rm(own, { recursive: true, force: true });
});

const line = (page: Page) => page.locator('.update-line');
const sayName = (build: string) => build.replace(/^(\S+) (\S+)$/, '$1 ($2)');

async function openStation(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(served.address);
  await page.locator('main.bar').waitFor();
  await isKept(page);
  return page;
}

/** The server is given another build, under the same address. */
async function serve(folder: string): Promise<void> {
  await served.close();
  served = await startStation(served.port, folder);
}

async function serveNext(name = '0.2.0 0123abcd'): Promise<void> {
  await makeNextBuild(built, join(own, 'next'), name);
  await serve(join(own, 'next'));
}

/** As the browser does once an hour. */
const look = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    return registration.update().then(
      () => 'looked',
      (error) => String(error),
    );
  });

/** Waits until a build that was being laid down is gone: it waits, or it was given up. */
const isLaidOrGone = (page: Page) =>
  page.waitForFunction(async () => (await navigator.serviceWorker.ready).installing === null);

describe('a newer build', () => {
  it('is offered at an idle bar with both versions, and one tap puts it in place and opens it', async () => {
    const page = await openStation();
    expect(now).toMatch(/^\d+\.\d+\.\d+ [0-9a-f]{8}$/);
    await serveNext();
    await look(page);
    await line(page).waitFor();
    const said = await line(page).locator('p').textContent();
    expect([said?.includes('0.2.0 (0123abcd)'), said?.includes(sayName(now))]).toEqual([true, true]);
    await page.locator('[data-act="take-update"]').tap();
    await expect.poll(() => readEdition(page).catch(() => ''), patience).toBe(nextMain);
    await page.locator('main.bar').waitFor();
    expect(await line(page).count()).toBe(0);
    // The old build is gone, and the new one opens without its server.
    await served.close();
    await page.reload();
    await page.locator('main.bar').waitFor();
    expect(await readEdition(page)).toBe(nextMain);
  });

  it('is not offered while clocks run, and the page that is open goes on from its own build', async () => {
    const page = await context.newPage();
    await page.goto(`${served.address}/icon.svg`);
    await plantLogs(page, makeSalonDay(Date.now()));
    await page.goto(served.address);
    await isKept(page);
    const old = await readEdition(page);
    await serveNext();
    await look(page);
    await isNextHere(page);
    await page.locator('.place[data-consultation]').first().waitFor();
    expect([await line(page).count(), await readEdition(page)]).toEqual([0, old]);
    await visit(page, 'head');
    await leave(page);
    // A late part of the old page is still there, though the server has it no more.
    const names = await page.evaluate(async () => {
      const all: string[] = [];
      for (const name of await caches.keys())
        for (const { url } of await (await caches.open(name)).keys()) all.push(new URL(url).pathname);
      return all;
    });
    expect(names).toContain(old);
    expect(names).toContain(nextMain);
    expect(await page.evaluate((path) => fetch(path).then(({ ok }) => ok), old)).toBe(true);
  });

  it('is put off until the next start', async () => {
    const page = await openStation();
    await serveNext();
    await look(page);
    await page.locator('[data-act="put-off-update"]').tap();
    await line(page).waitFor({ state: 'detached' });
    await page.locator('[data-act="day"]').tap();
    await page.locator('[data-act="bar"]').tap();
    await page.locator('main.bar').waitFor();
    expect(await line(page).count()).toBe(0);
    await page.reload();
    await line(page).waitFor();
  });

  it('is not taken while another window is in use, and every window is opened anew when it is', async () => {
    const page = await openStation();
    const other = await openStation();
    await serveNext();
    await look(page);
    await line(page).waitFor();
    await other.locator('[data-act="day"]').tap();
    await other.locator('[data-act="bar"]').waitFor();
    await page.locator('[data-act="take-update"]').tap();
    await page.locator('.update-line[data-update="inUse"]').waitFor();
    expect([await readEdition(page), await readEdition(other)]).not.toContain(nextMain);
    await other.locator('[data-act="bar"]').tap();
    await other.locator('main.bar').waitFor();
    await expect
      .poll(async () => {
        await page
          .locator('[data-act="take-update"]')
          .tap({ timeout: 1_000 })
          .catch(() => undefined);
        return readEdition(page).catch(() => '');
      }, patience)
      .toBe(nextMain);
    await expect.poll(() => readEdition(other).catch(() => ''), patience).toBe(nextMain);
  });

  it('that comes in part is never offered and never used, and comes whole the next time', async () => {
    const page = await openStation();
    const old = await readEdition(page);
    const half = join(own, 'half');
    await makeNextBuild(built, join(own, 'next'), '0.2.0 0123abcd');
    await cp(join(own, 'next'), half, { recursive: true });
    await rm(join(half, 'icon-512.png'));
    await serve(half);
    await look(page);
    await isLaidOrGone(page);
    expect(await line(page).count()).toBe(0);
    // A file of another build under the right name is no better than none.
    await writeFile(join(half, 'icon-512.png'), 'not what it was');
    await look(page);
    await isLaidOrGone(page);
    expect(await line(page).count()).toBe(0);
    await page.reload();
    await page.locator('main.bar').waitFor();
    expect(await readEdition(page)).toBe(old);
    await serve(join(own, 'next'));
    await look(page);
    await line(page).waitFor();
    expect(await readEdition(page)).toBe(old);
  });
});
