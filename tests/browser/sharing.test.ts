import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Database, openDatabase } from '../src/storage/replica/database';
import { launchBrowser, tabletLandscape } from './browser';
import { type Logs, readLogs, writeLogs } from './memory';
import { nowMs } from './scenes/clients';
import { emptyHouse, withClosed } from './scenes/houses';
import { startStation } from './server';

let browser: Browser;
let database: Database;
const served: Awaited<ReturnType<typeof startStation>>[] = [];

beforeAll(async () => {
  browser = await launchBrowser();
  database = await openDatabase();
  for (let each = 0; each < 2; each += 1) {
    served.push(await startStation(0, undefined, database.forward));
  }
});
afterAll(async () => {
  await browser.close();
  for (const { close } of served) await close();
  await database.close();
});

interface Tablet {
  readonly page: Page;
  /** Every address it asked. */
  readonly asked: readonly string[];
  readonly complaints: readonly string[];
  readonly origin: string;
}

/** A tablet with a server of its own, which holds this. */
async function openTablet(which: number, logs: Logs): Promise<Tablet> {
  const origin = served[which]?.address ?? '';
  const context = await browser.newContext(tabletLandscape);
  context.setDefaultTimeout(30_000);
  const page = await context.newPage();
  const asked: string[] = [];
  const complaints: string[] = [];
  context.on('request', (request) => asked.push(request.url()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  await page.clock.setFixedTime(nowMs);
  await page.goto(`${origin}/icon.svg`);
  await writeLogs(page, logs);
  await page.goto(origin);
  await page.locator('main.bar').waitFor();
  return { page, asked, complaints, origin };
}

const readClosed = async ({ page }: Tablet): Promise<readonly string[]> =>
  [...(await readLogs(page))]
    .filter(([name]) => name.startsWith('closed-'))
    .flatMap(([, records]) => records.map((record) => (record as { id: string }).id))
    .sort();

const readOthers = async ({ page }: Tablet): Promise<string | null> => {
  await page.locator('[data-act="settings"]').tap();
  await page.locator('[data-act="who-Opal"]').tap();
  await page.locator('[data-act="section-others"]').tap();
  return page.locator('[data-panel="others"] h2').textContent();
};

it('what closed at one tablet is at the other, and no page leaves its origin', async () => {
  const one = await openTablet(0, withClosed(emptyHouse, ['Q.F.', 'A.K.'])());
  const ids = await readClosed(one);
  expect(ids.length).toBeGreaterThan(0);
  const other = await openTablet(1, emptyHouse());
  await expect.poll(() => readClosed(other), { timeout: 60_000 }).toEqual(ids);
  expect(await readOthers(other)).toMatch(/^In step/);
  await database.kill();
  await other.page.locator('[data-act="share-now"]').tap();
  await other.page.locator('[data-others="apart"]').waitFor();
  expect(await other.page.locator('[data-panel="others"] h2').textContent()).toMatch(/^Not reached since/);
  await database.rise();
  await other.page.locator('[data-act="share-now"]').tap();
  await other.page.locator('[data-others="inStep"]').waitFor();
  for (const { asked, origin } of [one, other]) {
    expect(asked.filter((url) => url.includes('/replica/')).length).toBeGreaterThan(2);
    expect(asked.filter((url) => !url.startsWith(`${origin}/`))).toEqual([]);
  }
  expect(one.complaints).toEqual([]);
  // While the database was gone the browser itself names the answer.
  expect(other.complaints.filter((text) => !text.includes('502'))).toEqual([]);
});
