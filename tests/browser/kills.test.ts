import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Harm } from './kills/judge';
import { runCalmDay, runKills } from './kills/runKills';
import type { Tally } from './kills/tally';
import { startStation } from './server';

/** `SEED=… npm run prove:kills` repeats or varies a run; the number of kills is another one there. */
const seed = Number(process.env.SEED ?? 20_261_125);
const kills = Number(process.env.KILLS ?? 24);

const shares: Readonly<Record<Harm, number>> = { none: 9, indexDeleted: 5, journalCut: 5, both: 5 };
const harms = Object.keys(shares) as Harm[];
const whole = harms.reduce((sum, harm) => sum + shares[harm], 0);
const countKills = (harm: Harm): number => Math.ceil((kills * shares[harm]) / whole);

const titles: Readonly<Record<Harm, string>> = {
  none: 'lose nothing that was acknowledged',
  indexDeleted: 'lose nothing either when the IndexedDB folder is gone',
  journalCut: 'lose nothing either when the newest journal was cut in mid line',
  both: 'lose only what neither copy has, and say so',
};

let station: Awaited<ReturnType<typeof startStation>>;
const tallies = new Map<Harm, Tally>();
beforeAll(async () => {
  station = await startStation();
  console.info(`kills: seed ${seed}, ${kills} kills`);
});
afterAll(() => station.close());

const sayTally = (harm: Harm, tally: Tally): string => {
  const delays = [...tally.delaysMs].sort((one, other) => one - other);
  return [
    `kills, ${harm}: ${tally.kills} kills, ${tally.beforeAcknowledgement} before acknowledgement`,
    `delay ${delays[0]}–${delays.at(-1)} ms, median ${delays[Math.floor(delays.length / 2)]}`,
    `entries: ${tally.standing} standing, then ${tally.acknowledged} acknowledged, ${tally.found} found, ${tally.inFlight} in flight`,
    `${tally.lost} lost with both copies, each said`,
    ...(harm === 'none' ? [`${tally.between} fell between the two copies of an entry`] : []),
    `IndexedDB thrown away by the browser itself: ${tally.indexLostByBrowser}`,
  ].join('; ');
};

describe('power cuts in the middle of a tap', () => {
  it('break off taps that are taken when nothing breaks them off', async () => {
    expect(await runCalmDay(station.address, seed)).toEqual([]);
  });

  for (const harm of harms) {
    it(titles[harm], { timeout: 60_000 + countKills(harm) * 10_000 }, async () => {
      const tally = await runKills(station.address, harm, countKills(harm), seed + harms.indexOf(harm));
      tallies.set(harm, tally);
      console.info(sayTally(harm, tally));
      expect(tally.faults).toEqual([]);
      expect(tally.kills).toBe(countKills(harm));
      if (harm !== 'both') expect(tally.lost).toBeLessThanOrEqual(tally.indexLostByBrowser);
    });
  }

  it('fall before the acknowledgement at least half of the time', () => {
    const all = [...tallies.values()];
    const sum = (read: (tally: Tally) => number): number =>
      all.reduce((total, tally) => total + read(tally), 0);
    const [killed, before] = [sum((tally) => tally.kills), sum((tally) => tally.beforeAcknowledgement)];
    console.info(`kills, all: ${killed} kills, ${before} before acknowledgement`);
    expect(killed).toBeGreaterThanOrEqual(20);
    expect(before).toBeGreaterThanOrEqual(killed / 2);
  });
});
