import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { launchKillableBrowser } from '../browser';
import { type Chance, makeChance } from '../chance';
import { examine } from './examine';
import type { Harm, Kill } from './judge';
import { plantLogs } from './plant';
import { leave, readBack, visit } from './readBack';
import { makeSalonDay, type Place, places } from './salonDay';
import { lastingPlaces, passingPlaces, scenes, steps } from './scenes';
import { makeTally, type Tally } from './tally';
import { tapAndKill, tapAndWait } from './tapAndKill';
import { openWindow, type StationWindow } from './window';

/** So many kills see the same eight clients; then a day begins anew. */
const KILLS_A_DAY = 12;

/** One day without a kill: which of the taps that the kills break off would not have been taken anyhow? */
export async function runCalmDay(address: string, seed: number): Promise<readonly string[]> {
  const tally = makeTally();
  await withProfile(async (profile) => {
    await beginDay(profile, address);
    const day: Day = { profile, address, harm: 'none', chance: makeChance(seed), tally, order: [] };
    await endDay(day, places);
  });
  return tally.faults;
}

/** Kills the browser so often in the middle of a tap, does this harm each time, and judges what comes back. */
export async function runKills(address: string, harm: Harm, kills: number, seed: number): Promise<Tally> {
  const chance = makeChance(seed);
  const tally = makeTally();
  while (tally.kills < kills) {
    await withProfile(async (profile) => {
      await beginDay(profile, address);
      const today = Math.min(KILLS_A_DAY, kills - tally.kills);
      await runDay({ profile, address, harm, chance, tally, order: drawPlaces(harm, today, chance) });
    });
  }
  return tally;
}

async function withProfile(work: (profile: string) => Promise<void>): Promise<void> {
  const profile = await mkdtemp(join(tmpdir(), 'strandproof-kills-'));
  try {
    await work(profile);
  } finally {
    await rm(profile, { recursive: true, force: true });
  }
}

/** Where a journal is to be cut, closing is left out: a cut month is another story than a cut consultation. */
function drawPlaces(harm: Harm, count: number, chance: Chance): readonly Place[] {
  const isCutting = harm === 'journalCut' || harm === 'both';
  const passing = passingPlaces.filter((place) => !isCutting || place !== 'plan');
  const once = chance.shuffle(passing).slice(0, Math.ceil(count / 2));
  const lasting = Array.from({ length: count - once.length }, () => chance.pick(lastingPlaces));
  return chance.shuffle([...once, ...lasting]);
}

/** Plants the day's logs, and makes sure that the station finds them as they were planted. */
async function beginDay(profile: string, address: string): Promise<void> {
  const day = makeSalonDay(Date.now());
  const { context, kill } = await launchKillableBrowser(profile);
  const { notices, told } = await (async () => {
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(`${address}/icon.svg`);
    await plantLogs(page, day);
    await page.goto(address);
    return readBack(page);
  })().finally(kill);
  const found = [...told.values()].map(({ record, log }) => `open-${record.id} ${log.length}`).sort();
  const planted = day.flatMap(({ name, lines }) => (name === 'settings' ? [] : [`${name} ${lines.length}`]));
  if (notices.length > 0 || found.join() !== planted.sort().join()) {
    throw new Error(`The day did not begin as planned: ${[...notices, ...found].join('\n')}`);
  }
}

interface Day {
  readonly profile: string;
  readonly address: string;
  readonly harm: Harm;
  readonly chance: Chance;
  readonly tally: Tally;
  readonly order: readonly Place[];
}

/** One day: each start reads back what the kill before it left, then taps and is killed in its turn. */
async function runDay(day: Day): Promise<void> {
  let last: Kill | null = null;
  for (const place of day.order) {
    last = await withStation(day, async (window) => {
      const before = await readBack(window.page);
      if (last !== null) await examine(last, before, window, day.tally);
      return tapAndKill(day, window, before, place);
    });
  }
  await endDay(day, lastingPlaces, last);
}

/** After all that the station still takes what is tapped. */
const endDay = (day: Day, taken: readonly Place[], last: Kill | null = null): Promise<void> =>
  withStation(day, async (window) => {
    const after = await readBack(window.page);
    if (last !== null) await examine(last, after, window, day.tally);
    for (const place of taken) await takesMore(window, place, day);
  });

/** Does this in the station of the day, and leaves no browser behind, however it ends. */
async function withStation<T>(day: Day, work: (window: StationWindow) => Promise<T>): Promise<T> {
  const window = await openWindow(day.profile, day.address);
  try {
    return await work(window);
  } finally {
    await window.kill();
  }
}

/** What is tapped on this client is taken, when nobody pulls the plug. */
async function takesMore(window: StationWindow, place: Place, { chance, tally }: Day): Promise<void> {
  const { page } = window;
  const { length, step } = await visit(page, place);
  if (step === steps[place]) {
    const taps = await scenes[place](page, chance);
    if (!(await tapAndWait(window, place, taps, length + taps.length))) {
      tally.faults.push(`${place}: not taken: ${taps.map(({ makes }) => makes)}`);
    }
  } else if (tally.lost === 0) tally.faults.push(`${place} stands at ${step}`);
  if (place !== 'plan') await leave(page);
}
