import { cp, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, it } from 'vitest';
import { launchBrowser, launchKillableBrowser, tabletLandscape } from './browser';
import { digestBuilt, digestCached, isKept, isNextHere, makeNextBuild, readEdition } from './keptPage';
import { plantLogs } from './kills/plant';
import { leave, readBack, tap, visit } from './kills/readBack';
import { makeSalonDay } from './kills/salonDay';
import { patience } from './person';
import { startStation } from './server';

const built = inject('stationFolder');
const notKept = 'Without the network this page would not open again.';
let browser: Browser;
let served: Awaited<ReturnType<typeof startStation>>;
let context: BrowserContext;
/** A folder of this test, for a profile or another build. */
let own: string;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  own = await mkdtemp(join(tmpdir(), 'strandproof-offline-'));
  served = await startStation();
  context = await browser.newContext(tabletLandscape);
  context.setDefaultTimeout(20_000);
});
afterEach(async () => {
  await context.close();
  await served.close();
  await rm(own, { recursive: true, force: true });
});

/** Eight clients with their clocks, in a station whose page is kept. */
async function openSalon(inContext: BrowserContext): Promise<Page> {
  const page = await inContext.newPage();
  await page.goto(`${served.address}/icon.svg`);
  await plantLogs(page, makeSalonDay(Date.now()));
  await page.goto(served.address);
  await isKept(page);
  return page;
}

async function openStation(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(served.address);
  await page.locator('main.bar').waitFor();
  return page;
}

/** One more answer of the second client, acknowledged. */
async function answerOne(page: Page, option: string): Promise<void> {
  const { length } = await visit(page, 'feelHair');
  await tap(page, '[data-ledger="porosity"]');
  await tap(page, `[data-question="porosity"] [data-option="${option}"]`);
  await page.locator(`main[data-log-length="${length + 1}"]`).waitFor();
  await leave(page);
}

/** Everything the station tells of its clients, and when the colour on a head is due. */
async function readSalon(page: Page) {
  const { told, notices } = await readBack(page);
  const { dueAtMs } = await visit(page, 'head');
  await leave(page);
  return { told, notices, dueAtMs };
}

async function goDark(page: Page): Promise<void> {
  await served.close();
  const answer = await page.evaluate(() => fetch('/nothing').then(String, () => 'no network'));
  expect(answer).toBe('no network');
}

describe('with its server gone', () => {
  it('the station opens again with its clients and clocks as they were, and takes what is tapped', async () => {
    const page = await openSalon(context);
    await answerOne(page, 'high');
    const before = await readSalon(page);
    expect([before.told.size, Object.keys(before.dueAtMs).length > 0]).toEqual([8, true]);
    await goDark(page);
    await page.reload();
    expect(await readSalon(page)).toEqual(before);
    await answerOne(page, 'low');
    expect((await visit(page, 'feelHair')).pressed).toMatchObject({ porosity: 'low' });
  });

  it('the invented salon can still be looked at, under its ribbon', async () => {
    const page = await openStation();
    await isKept(page);
    await goDark(page);
    await page.reload();
    await page.locator('[data-act="load-demo"]').tap();
    await page.locator('[data-demo]').waitFor();
    await page.locator('.place[data-consultation]').nth(6).waitFor();
  });

  it('the station opens after a power cut of the tablet, with every acknowledged answer', async () => {
    const profile = join(own, 'profile');
    const first = await launchKillableBrowser(profile);
    const before = await (async () => {
      const page = await openSalon(first.context);
      await goDark(page);
      for (const option of ['low', 'normal', 'high']) await answerOne(page, option);
      return readSalon(page);
    })().finally(first.kill);
    const second = await launchKillableBrowser(profile);
    try {
      const page = await second.context.newPage();
      await page.goto(served.address);
      const { told, dueAtMs } = await readSalon(page);
      expect({ told, dueAtMs }).toEqual({ told: before.told, dueAtMs: before.dueAtMs });
    } finally {
      await second.kill();
    }
  });

  it('a tablet that may keep no page said so before, and has none', async () => {
    await context.close();
    context = await browser.newContext({ ...tabletLandscape, serviceWorkers: 'block' });
    await context.grantPermissions(['screen-wake-lock'], { origin: served.address });
    const page = await openStation();
    await page.touchscreen.tap(640, 130);
    await expect.poll(() => page.locator('.tablet-note').allTextContents(), patience).toEqual([notKept]);
    await served.close();
    await expect(page.reload()).rejects.toThrow('ERR_CONNECTION_REFUSED');
  });
});

describe('what is kept', () => {
  it('is every file of the build as it was built, and nothing of the logs', async () => {
    const page = await openSalon(context);
    await answerOne(page, 'high');
    await page.reload();
    await answerOne(page, 'low');
    const cached = await digestCached(page);
    expect(cached).toEqual(await digestBuilt(built));
    expect(Object.keys(cached).length).toBeGreaterThan(6);
  });

  it('answers for those files alone: whatever else is asked for goes to the network', async () => {
    const page = await openStation();
    await isKept(page);
    const ask = async (path: string) => {
      const [answer] = await Promise.all([
        page.waitForResponse((response) => response.url() === `${served.address}${path}`),
        page.evaluate((address) => fetch(address).then(({ status }) => status), path),
      ]);
      return answer.fromServiceWorker();
    };
    expect([await ask('/'), await ask('/icon.svg')]).toEqual([true, true]);
    for (const path of ['/replica/open-a', '/replica/', '/nothing.js', '/?day=1', '/serviceWorker.js']) {
      expect([path, await ask(path)]).toEqual([path, false]);
    }
  });

  it('is the whole of one build or nothing, and that is said', async () => {
    const mixed = join(own, 'mixed');
    await cp(built, mixed, { recursive: true });
    await writeFile(join(mixed, 'icon.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
    await served.close();
    served = await startStation(0, mixed);
    await context.grantPermissions(['screen-wake-lock'], { origin: served.address });
    const page = await openStation();
    await page.touchscreen.tap(640, 130);
    await expect.poll(() => page.locator('.tablet-note').allTextContents(), patience).toEqual([notKept]);
    expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
  });

  it('keeps to the policy it came with', async () => {
    const page = await openStation();
    await isKept(page);
    await goDark(page);
    await page.reload();
    await page.locator('main.bar').waitFor();
    const broken = await page.evaluate(async () => {
      const heard: string[] = [];
      document.addEventListener('securitypolicyviolation', (event) => heard.push(event.violatedDirective));
      document.body.setAttribute('style', 'color: red');
      await fetch('http://127.0.0.1:9/').catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, 100));
      return heard;
    });
    expect(broken).toEqual(['style-src-attr', 'connect-src']);
  });
});

describe('a new build', () => {
  it('is not taken while a window is open, and is taken once the last was closed', async () => {
    const next = join(own, 'next');
    await makeNextBuild(built, next);
    const page = await openStation();
    await isKept(page);
    const old = await readEdition(page);
    await served.close();
    served = await startStation(served.port, next);
    await page.reload();
    await isNextHere(page);
    await page.reload();
    const other = await openStation();
    expect([await readEdition(page), await readEdition(other)]).toEqual([old, old]);
    await page.close();
    await other.reload();
    expect(await readEdition(other)).toBe(old);
    // The late part of the old page is still there; where it is offered the newer one is told first.
    await other.locator('[data-act="put-off-update"]').tap();
    await other.locator('[data-act="load-demo"]').tap();
    await other.locator('[data-demo]').waitFor();
    await other.close();

    const after = await openStation();
    expect(await readEdition(after)).toBe('/assets/index-nextnext.js');
    await expect.poll(() => digestCached(after), patience).toEqual(await digestBuilt(next));
  });
});
