import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { ERASED_LOG } from '../../src/station/logNames';
import { launchKillableBrowser } from './browser';
import { makeChance } from './chance';
import { tap } from './kills/readBack';
import { readLogs, writeLogs } from './memory';
import { listFiles, readFile } from './originStore';
import { emptyHouse, withClosed } from './scenes/houses';
import { startStation } from './server';

/** `SEED=` and `ERASE_KILLS=` for others. */
const seed = Number(process.env.SEED ?? 20_261_127);
const kills = Number(process.env.ERASE_KILLS ?? 6);
/** A kill falls at most so long after the hold, ms: both copies of a month are written anew by then. */
const LONGEST_MS = 60;

const others = Array.from({ length: 8 }, (_, index) => `B${index}`);
const month = withClosed(
  emptyHouse,
  [...others.slice(0, 4), 'L.M.', ...others.slice(4), 'lm'],
  undefined,
  40,
)();

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

const start = async (page: Page) => {
  await page.locator('main.bar').waitFor();
  await page.locator('[data-mode="starting"]').waitFor({ state: 'detached' });
};

async function holdToErase(page: Page): Promise<void> {
  await start(page);
  const ways = ['day', 'kept', 'erase-by-ticket', 'who-Opal'].map((act) => `[data-act="${act}"]`);
  const toHers = ['[data-key="L"]', '[data-key="M"]', '[data-act="look-at-hers"]', '[data-act="kept-go-on"]'];
  const why = [
    '[data-option="sheAsked"]',
    '[data-act="erase-for-good"]',
    '[data-act="erase-for-good-confirm"]',
  ];
  for (const selector of [...ways, ...toHers, ...why]) await tap(page, selector);
}

/** Both copies as they lie there while no station is open, and what is left of a rewriting. */
async function readCopies(page: Page) {
  const logs = await readLogs(page);
  const names = await listFiles(page, 'journals');
  const texts = await Promise.all(names.map((name) => readFile(page, 'journals', name)));
  const journals = texts.filter((_, index) => names[index] !== ERASED_LOG);
  const records = [...logs].filter(([name]) => name.startsWith('closed-')).flatMap(([, entries]) => entries);
  return {
    // A file without a whole line is an erasing that nobody was told of: it never was.
    isErased:
      (logs.get(ERASED_LOG) ?? []).length > 0 || texts[names.indexOf(ERASED_LOG)]?.includes('\n') === true,
    records: records.map((record) => (record as { readonly ticketKey: string }).ticketKey),
    text: [JSON.stringify([...logs]), ...journals].join('\n'),
    journalLines: journals
      .join('')
      .split('\n')
      .filter((line) => line.includes('"ticketKey"')).length,
    rewrites: await listFiles(page, 'rewrites'),
  };
}

it(
  'a kill in the midst of an erasing leaves all of it or nothing, and what goes never comes back',
  async () => {
    const chance = makeChance(seed);
    const seen = { stayed: 0, gone: 0, half: 0 };
    for (let each = 0; each < kills; each += 1) {
      const profile = await mkdtemp(join(tmpdir(), 'strandproof-erase-'));
      try {
        await inBrowser(profile, '/icon.svg', (page) => writeLogs(page, month));
        const delayMs = chance.drawBelow(LONGEST_MS);
        await inBrowser(profile, '/', async (page) => {
          await holdToErase(page);
          await new Promise((resolve) => setTimeout(resolve, delayMs));
        });
        const left = await inBrowser(profile, '/icon.svg', readCopies);
        await inBrowser(profile, '/', async (page) => {
          await start(page);
          // What a kill left half done is finished once the months are read, while the bar is in use.
          await page.waitForTimeout(3_000);
        });
        const after = await inBrowser(profile, '/icon.svg', readCopies);
        const about = `kill ${each} after ${delayMs} ms, seed ${seed}`;
        const isHalf = left.isErased && /L\.M\.|"LM"|"lm"/.test(left.text);
        expect(after.isErased, about).toBe(left.isErased);
        expect(
          after.records.filter((key) => key !== 'LM'),
          about,
        ).toEqual(others);
        expect(after.records.includes('LM'), about).toBe(!after.isErased);
        if (after.isErased) expect(after.text, about).not.toMatch(/L\.M\.|"LM"|"lm"/);
        expect(after.journalLines, about).toBe(after.records.length);
        expect(after.rewrites, about).toEqual([]);
        seen[isHalf ? 'half' : after.isErased ? 'gone' : 'stayed'] += 1;
      } finally {
        await rm(profile, { recursive: true, force: true });
      }
    }
    console.info(`erasing: seed ${seed}, ${kills} kills: ${JSON.stringify(seen)}`);
    expect(seen.half + seen.gone).toBeGreaterThan(0);
  },
  60_000 + kills * 30_000,
);
