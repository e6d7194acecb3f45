import type { Page } from 'playwright-core';
import type { Chance } from '../chance';
import { cutNewestJournal, deleteIndexedDb, readJournals } from './disk';
import type { Harm, Kill } from './judge';
import { leave, type ReadBack, visit } from './readBack';
import { nameConsultation, type Place } from './salonDay';
import { type ComingTap, lastingPlaces, scenes, steps } from './scenes';
import type { Tally } from './tally';
import type { StationWindow } from './window';

/** Kills fall at most so long after the tap has landed in the page, ms. */
const LONGEST_MS = 30;
/** The greater, the more of the delays are short: most of what is to be broken off is over within a few ms. */
const EARLY = 2;

interface Killing {
  readonly profile: string;
  readonly harm: Harm;
  readonly chance: Chance;
  readonly tally: Tally;
}

/** Taps on the client at this place, kills the browser meanwhile, and does the harm that is to be done. */
export async function tapAndKill(
  { profile, harm, chance, tally }: Killing,
  window: StationWindow,
  before: ReadBack,
  wanted: Place,
): Promise<Kill> {
  const { page } = window;
  const place = await visitReady(page, wanted);
  const id = nameConsultation(place);
  const base = before.told.get(id)?.log.length ?? 0;
  const readShown = () => window.shown.get(id) ?? 0;
  // Half of the kills follow upon something that has just been acknowledged: files and connections are open then.
  const first = chance.draw() < 0.5 && isLasting(place) ? await scenes[place](page, chance) : [];
  if (first.length > 0 && !(await tapAndWait(window, place, first, base + first.length))) {
    tally.faults.push(`${place}: not taken: ${first.map(({ makes }) => makes)}`);
  }
  const last = await scenes[place](page, chance);
  const delayMs = Math.floor((LONGEST_MS + 1) * chance.draw() ** EARLY);
  const acknowledged = await killAfter(window, last, delayMs, readShown);
  const taps = [...first, ...last];

  if (harm === 'indexDeleted' || harm === 'both') await deleteIndexedDb(profile);
  const cut =
    harm === 'journalCut' || harm === 'both' ? await cutNewestJournal(profile, chance.drawBelow) : null;
  tally.kills += 1;
  tally.delaysMs.push(delayMs);
  if (acknowledged < base + taps.length) tally.beforeAcknowledgement += 1;
  return { place, before, taps, acknowledged, harm, cut, disk: await readJournals(profile) };
}

/** Opens the client at this place; or the first one, who only ever answers, when this one stands further back. */
async function visitReady(page: Page, wanted: Place): Promise<Place> {
  const { step } = await visit(page, wanted);
  if (step === steps[wanted]) return wanted;
  await leave(page);
  await visit(page, 'client');
  return 'client';
}

/**
 * Taps, and so long after the last tap has landed kills the browser, whatever it is doing; answers what had been
 * acknowledged by then. (Counted from the sending of the tap, many kills would come before there was a tap at all.)
 */
function killAfter(
  window: StationWindow,
  taps: readonly ComingTap[],
  delayMs: number,
  readAcknowledged: () => number,
): Promise<number> {
  return new Promise((resolve, reject) => {
    const lost = setTimeout(
      () => reject(new Error(`no tap landed: ${taps.map(({ makes }) => makes)}`)),
      5_000,
    );
    const kill = (): void => {
      clearTimeout(lost);
      const acknowledged = readAcknowledged();
      window.kill().then(() => resolve(acknowledged), reject);
    };
    window.onLanded(taps.length, () => {
      if (delayMs === 0) kill();
      else setTimeout(kill, delayMs);
    });
    window.tap(taps.map(({ at }) => at));
  });
}

/** Taps, and waits until all of it is acknowledged. Was it? */
export async function tapAndWait(
  window: StationWindow,
  place: Place,
  taps: readonly ComingTap[],
  length: number,
): Promise<boolean> {
  window.tap(taps.map(({ at }) => at));
  for (let tries = 0; tries < 500; tries += 1) {
    if (window.shown.get(nameConsultation(place)) === length) return true;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  return false;
}

const isLasting = (place: Place): boolean => (lastingPlaces as readonly Place[]).includes(place);
