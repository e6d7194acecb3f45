import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { nameBenchLog } from '../../src/station/logNames';
import { launchKillableBrowser } from './browser';
import { makeChance } from './chance';
import { tap } from './kills/readBack';
import { writeLogs } from './memory';
import { deleteIndex, removeJournals } from './originStore';
import { emptyHouse } from './scenes/houses';
import { startStation } from './server';

/** `SEED=` and `BENCH_KILLS=` for others. */
const seed = Number(process.env.SEED ?? 20_261_128);
const kills = Number(process.env.BENCH_KILLS ?? 6);
/** A kill falls at most so long after the tap, ms: before and after it is in both copies. */
const LONGEST_MS = 60;
const minuteMs = 60_000;

/** What is harmed after the kill: nothing, or one of the two copies is gone. */
const harms = { none: async () => undefined, index: deleteIndex, journals: removeJournals } as const;
const harmNames = Object.keys(harms) as readonly (keyof typeof harms)[];

let station: Awaited<ReturnType<typeof startStation>>;
beforeAll(async () => {
  station = await startStation();
});
afterAll(() => station.close());

/** Does this in a browser that is killed in the end, whatever comes. */
async function inBrowser<T>(profile: string, path: string, work: (page: Page) => Promise<T>): Promise<T> {
  const { context, kill } = await launchKillableBrowser(profile);
  try {
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(`${station.address}${path}`);
    return await work(page);
  } finally {
    await kill();
  }
}

async function openBench(page: Page): Promise<void> {
  await page.locator('main.bar').waitFor();
  await page.locator('[data-mode="starting"]').waitFor({ state: 'detached' });
  await tap(page, '[data-act="day"]');
  await tap(page, '[data-act="bench"]');
  await page.locator('[data-trial]').first().waitFor();
}

/** How far each trial of the list is, sorted. */
async function readStages(page: Page) {
  await openBench(page);
  const stages = await page
    .locator('[data-trial]')
    .evaluateAll((rows) => rows.map((row) => row.getAttribute('data-stage') ?? ''));
  return stages.sort();
}

/** Out of the water half an hour after it went in: one tap is waited for, the next one is cut off by the kill. */
async function startAndTakeOut(page: Page, delayMs: number): Promise<boolean> {
  await openBench(page);
  for (const selector of [
    '[data-act="start-trial"]',
    '[data-option="dryWet"]',
    '[data-option="bleached"]',
    '[data-act="begin-trial"]',
    '[data-act="who-Opal"]',
  ])
    await tap(page, selector);
  await page.locator('.bench-clock[data-stage="cooling"]').waitFor();
  await tap(page, '[data-act="back-to-list"]');
  await tap(page, '[data-trial="boiled"]');
  await page.locator('.bench-clock[data-stage="boiled"]').waitFor();
  await tap(page, '[data-act="taken-out"]');
  await new Promise((resolve) => setTimeout(resolve, delayMs));
  return (await page.locator('.bench-clock[data-stage="drying"]').count()) === 1;
}

it(
  'a kill at the bench loses no tap that was acknowledged, with both copies or either of them',
  async () => {
    const chance = makeChance(seed);
    const seen = { acknowledged: 0, cutOff: 0, kept: 0 };
    for (let each = 0; each < kills; each += 1) {
      const profile = await mkdtemp(join(tmpdir(), 'strandproof-bench-'));
      const harm = harmNames[each % harmNames.length] ?? 'none';
      try {
        const boiled = {
          v: 1,
          type: 'BENCH_STARTED',
          payload: { kind: 'boilSet', hair: 'untouched' },
          atMs: Date.now() - 31 * minuteMs,
          by: 'Opal',
        };
        await inBrowser(profile, '/icon.svg', (page) =>
          writeLogs(page, { ...emptyHouse(), [nameBenchLog('boiled')]: [boiled] }),
        );
        const delayMs = chance.drawBelow(LONGEST_MS);
        const isAcknowledged = await inBrowser(profile, '/', (page) => startAndTakeOut(page, delayMs));
        if (harm !== 'none') await inBrowser(profile, '/icon.svg', harms[harm]);
        const stages = await inBrowser(profile, '/', readStages);
        const about = `kill ${each} after ${delayMs} ms, ${harm} harmed, seed ${seed}`;
        const isKept = stages.includes('drying');
        expect(stages, about).toEqual(isKept ? ['cooling', 'drying'] : ['boiled', 'cooling']);
        if (isAcknowledged) expect(isKept, about).toBe(true);
        seen[isAcknowledged ? 'acknowledged' : 'cutOff'] += 1;
        if (isKept) seen.kept += 1;
      } finally {
        await rm(profile, { recursive: true, force: true });
      }
    }
    console.info(`bench: seed ${seed}, ${kills} kills: ${JSON.stringify(seen)}`);
  },
  60_000 + kills * 30_000,
);
