import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { chromiumFlags, readyChromium } from '../../scripts/chromium.mjs';
import { tabletLandscape } from './browser';
import { measureStart, type Start } from './past/measureStart';
import { plantPast } from './past/plantPast';
import { startStation } from './server';

/** `npm run bench -- start` measures with 100,000; by itself this compares with 2,000. */
const size = Number(process.env.SIZE ?? 2_000);
/** So many of each side, by turns, so that a machine that is busy for a while is as busy for both. */
const starts = Number(process.env.STARTS ?? 5);
const FEW = 100;
/**
 * So many times as long as with a hundred records the bar may take. Assumed because it reads none of them: 1 but for the noise of
 * starts of half a second, which is less beside the minutes of a large store.
 */
const ASSUMED_RATIO_MAX = size >= 100_000 ? 1.2 : 1.5;
const MONTHS = 36;

let station: Awaited<ReturnType<typeof startStation>>;
let folder: string;
beforeAll(async () => {
  station = await startStation();
  folder = await mkdtemp(join(tmpdir(), 'past-'));
});
afterAll(async () => {
  await station.close();
  await rm(folder, { recursive: true, force: true });
});

async function openProfile(name: string): Promise<BrowserContext> {
  const { executablePath, env } = await readyChromium();
  return chromium.launchPersistentContext(join(folder, name), {
    ...tabletLandscape,
    executablePath,
    env,
    args: chromiumFlags,
  });
}

const median = (starts: readonly Start[]): number =>
  starts.map(({ usableMs }) => usableMs).sort((one, other) => one - other)[Math.floor(starts.length / 2)] ??
  0;
const say = (figure: number): string => Math.round(figure).toLocaleString('en-US');

it('shows the bar without waiting for the months before', async () => {
  const sides = [];
  for (const records of [FEW, size]) {
    const context = await openProfile(`of-${records}`);
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(`${station.address}/icon.svg`);
    const bytes = await plantPast(page, records, MONTHS);
    await page.goto('about:blank');
    sides.push({ records, bytes, context, measured: [] as Start[] });
  }
  for (let turn = 1; turn <= starts; turn += 1) {
    for (const { context, measured } of sides) {
      measured.push(await measureStart(context, station.address, turn === starts));
    }
  }
  for (const { context } of sides) await context.close();
  const [few, many] = sides.map(({ measured }) => measured);
  const said = sides.map(({ records, bytes, measured }) => {
    const last = measured.at(-1);
    return [
      `${say(records)} records of ${say(bytes)} bytes: bar after ${say(median(measured))} ms`,
      `(${measured.map(({ usableMs }) => say(usableMs)).join(', ')}), all read after ${say(last?.readMs ?? 0)} ms,`,
      `longest piece ${say(last?.longestMs ?? 0)} ms, with the bar in use ${say(last?.longestAfterMs ?? 0)} ms,`,
      `heap ${say((last?.heapBytes ?? 0) / 1e6)} MB`,
    ].join(' ');
  });
  const ratio = median(many ?? []) / median(few ?? []);
  const heap = (many?.at(-1)?.heapBytes ?? 0) - (few?.at(-1)?.heapBytes ?? 0);
  console.log(
    [
      ...said,
      `ratio of the bar ${ratio.toFixed(2)}, at most ${ASSUMED_RATIO_MAX}; ${say(heap / (size - FEW))} bytes of heap a record beside its text`,
    ].join('\n'),
  );
  expect(ratio).toBeLessThanOrEqual(ASSUMED_RATIO_MAX);
  for (const { measured } of sides) {
    expect(measured).toHaveLength(starts);
    for (const { usableMs } of measured) expect(usableMs).toBeGreaterThan(0);
    expect(measured.at(-1)?.readMs).toBeGreaterThanOrEqual(measured.at(-1)?.usableMs ?? 0);
  }
}, 3_600_000);
