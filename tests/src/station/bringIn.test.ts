import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { readBackup, writeBackup } from '../../../shared/records/backupFile';
import { ERASED_LOG } from '../../../src/station/logNames';
import type { Station } from '../../../src/station/station';
import type { Json } from '../../../src/storage/json';
import { makePower } from '../storage/power';
import { makeTablet } from '../storage/tablet';
import { play, startAtMs, startSalon, startStation, storyUpTo } from './stationUnderTest';

const made = { madeAtMs: 7, isDemo: false };
const backUp = (station: Station): string => [...station.backUp()].join('');

/** The same story of another client, in another chair. */
const asAnotherAt =
  (chair: string) =>
  (step: StoryStep): StoryStep =>
    step.raw.type === 'OPENED'
      ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, ticket: `Z.Z.${chair}`, chair } } }
      : step;
const asAnother = asAnotherAt('5');

/** A salon in the midst of a day: one client done, one before the bowl. */
async function makeSalon(idBegins = 'client') {
  const under = await startStation(makeTablet(), undefined, undefined, undefined, idBegins);
  await under.station.saveSettings('Opal', salon);
  await play(under, endsIronedWet.steps);
  await play(under, storyUpTo('DECIDED').map(asAnother));
  return under;
}

/** The same logs in a file made otherwise. */
function write(file: string, change: object): string {
  const read = readBackup(file);
  if (!read.ok) throw new Error(read.error);
  return [...writeBackup(read.value.logs, { ...made, ...change })].join('');
}

const bring = async (station: Station, file: string) => {
  const brought = await station.bringIn(file);
  if (!brought.ok) throw new Error(JSON.stringify(brought.error));
  return brought.value;
};
const held = (station: Station) => JSON.stringify([...station.readLogs()].sort());

describe('a station moved to another tablet', () => {
  it('is there whole: settings, who is open, what closed, and again after a restart', async () => {
    const old = await makeSalon();
    const tablet = makeTablet();
    const { station } = await startStation(tablet);
    expect(await bring(station, backUp(old.station))).toMatchObject({ closed: 1, beside: null });
    expect(held(station)).toBe(held(old.station));
    const state = station.readState();
    expect(state.settings).toEqual(old.station.readState().settings);
    expect([...state.open.values()]).toEqual([...old.station.readState().open.values()]);
    expect(state.notices).toEqual([]);
    const again = await startStation(tablet);
    expect(held(again.station)).toBe(held(old.station));
    expect(again.station.readState().notices).toEqual([]);
  });

  it('takes the place of settings that were saved before any client came', async () => {
    const old = await makeSalon();
    const { station } = await startSalon(makeTablet());
    await station.saveSettings('Juno', { ...salon, chairs: 3 });
    expect(await bring(station, backUp(old.station))).toMatchObject({ closed: 1, beside: null });
    expect(held(station)).toBe(held(old.station));
  });

  it('is the same when the same file comes in once more', async () => {
    const old = await makeSalon();
    const { station } = await startStation(makeTablet());
    const file = backUp(old.station);
    await bring(station, file);
    expect(await bring(station, file)).toMatchObject({ closed: 1, beside: null });
    expect(held(station)).toBe(held(old.station));
  });

  it('goes on where the power went, at whatever write', async () => {
    const file = backUp((await makeSalon()).station);
    const whole = readBackup(file);
    if (!whole.ok) throw new Error(whole.error);
    let cut = 0;
    for (const after of [1, 2, 5, 9, 20, 41, 80]) {
      const counting = makePower();
      await startStation(makeTablet(), counting);
      const tablet = makeTablet();
      const first = await startStation(tablet, makePower(counting.count() + after));
      const tried = await first.station.bringIn(file);
      if (!tried.ok) cut += 1;
      const { station } = await startStation(tablet);
      expect(await bring(station, file), `cut at ${after}`).toMatchObject({
        closed: 1,
        beside: null,
      });
      expect(new Map(station.readLogs()), `cut at ${after}`).toEqual(whole.value.logs);
    }
    expect(cut).toBeGreaterThan(4);
  });
});

/** A station's years as it was backed up: each time a few more closed records, and some of those before erased. */
const history = fc.array(
  fc.record({ closes: fc.nat({ max: 3 }), erases: fc.array(fc.nat({ max: 12 }), { maxLength: 2 }) }),
  { minLength: 2, maxLength: 6 },
);

const recordOf = (id: string): Json => ({
  v: 1,
  id,
  ticketKey: id.toUpperCase(),
  endedAtMs: startAtMs,
  how: 'done',
  hasStandingStop: false,
  hasClearedStop: false,
  log: [],
});

/** All backups of such a station, oldest first, and what it held at last. */
function writeHistory(steps: readonly { readonly closes: number; readonly erases: readonly number[] }[]) {
  const files: string[] = [];
  const ids: string[] = [];
  const gone = new Set<string>();
  for (const { closes, erases } of steps) {
    for (let one = 0; one < closes; one += 1) ids.push(`record${String(ids.length).padStart(4, '0')}`);
    for (const at of erases) gone.add(ids[at] ?? ids[0] ?? 'nobody');
    const closed = ids.filter((id) => !gone.has(id)).map(recordOf);
    const erased = [...gone].map((id) => ({ v: 1, ids: [id], atMs: 1, by: 'Opal', code: 'sheAsked' }));
    const logs = new Map<string, readonly Json[]>([
      ['settings', [{ settings: salon }]],
      ['closed-2026-03', closed],
      [ERASED_LOG, erased],
    ]);
    files.push([...writeBackup(logs, made)].join(''));
  }
  return { files, records: ids.filter((id) => !gone.has(id)), gone };
}

describe('what was erased', () => {
  it('stays erased and is erased everywhere, in whatever order and however often the backups come', async () => {
    const seen = { gone: 0, runs: 0 };
    await fc.assert(
      fc.asyncProperty(history, fc.infiniteStream(fc.nat()), async (steps, chance) => {
        const { files, records, gone } = writeHistory(steps);
        const next = () => chance.next().value as number;
        const often = [...files, ...files.filter(() => next() % 2 === 0)];
        const order = often.map((file) => ({ file, at: next() })).sort((one, other) => one.at - other.at);
        const tablet = makeTablet();
        const { station } = await startStation(tablet);
        for (const { file } of order) await station.bringIn(file);
        const held = station.readState();
        expect(held.closed.map(({ id }) => id)).toEqual(records);
        expect(new Set(held.erasings.tombstones.flatMap(({ ids }) => ids))).toEqual(gone);
        expect(held.erasings.unfinished).toBe(0);
        const again = (await startStation(tablet)).station.readState();
        expect(again.closed.map(({ id }) => id)).toEqual(records);
        expect(again.notices).toEqual([]);
        seen.runs += 1;
        seen.gone += gone.size;
      }),
      { numRuns: 100 },
    );
    expect(seen.gone).toBeGreaterThan(seen.runs / 2);
  });

  it('is not brought back by a backup from before', async () => {
    const under = await makeSalon();
    const file = backUp(under.station);
    const [done] = under.station.readState().closed;
    const { station } = await startStation(makeTablet());
    await bring(station, file);
    expect(await station.erase('Opal', { ids: [done?.id ?? ''], code: 'sheAsked' })).toMatchObject({
      ok: true,
    });
    expect(await station.bringIn(file)).toMatchObject({ value: { closed: 0, gone: 0 } });
    expect(station.readState().closed).toEqual([]);
    const erased = backUp(station);
    const fresh = (await startStation(makeTablet())).station;
    await bring(fresh, erased);
    await fresh.bringIn(file);
    expect(fresh.readState().closed).toEqual([]);
    expect(held(fresh)).not.toContain(JSON.stringify(done?.ticketKey));
  });

  it('is erased here too beside clients', async () => {
    const there = await makeSalon();
    const [done] = there.station.readState().closed;
    const here = (await startStation(makeTablet())).station;
    await bring(here, backUp(there.station));
    await there.station.erase('Opal', { ids: [done?.id ?? ''], code: 'sheAsked' });
    await play(there, storyUpTo('OPENED').map(asAnotherAt('7')));
    const other = await startStation(makeTablet(), undefined, undefined, undefined, 'other');
    await other.station.saveSettings('Opal', salon);
    await play(other, storyUpTo('OPENED').map(asAnotherAt('6')));
    expect(await bring(other.station, backUp(there.station))).toEqual({
      closed: 0,
      gone: 0,
      beside: { here: 0, tests: 2, toldTwice: [], open: ['Z.Z.5', 'Z.Z.7'] },
    });
    expect(other.station.readState().erasings.tombstones).toHaveLength(1);
    expect(await bring(here, backUp(there.station))).toMatchObject({ closed: 0, gone: 1 });
    expect(here.readState().closed).toEqual([]);
  });

  it('is not taken from a client who is open here', async () => {
    const { station } = await makeSalon();
    const [openId] = station.readState().open.keys();
    const before = held(station);
    const tombstone = { v: 1, ids: [openId ?? ''], atMs: 1, by: 'Opal', code: 'sheAsked' };
    const file = [...writeBackup(new Map([[ERASED_LOG, [tombstone]]]), made)].join('');
    expect(await station.bringIn(file)).toMatchObject({ error: { kind: 'backup', why: 'erasesOpen' } });
    expect(held(station)).toBe(before);
  });
});

describe('a backup made later than this tablet’s clock says', () => {
  const day = 24 * 60 * 60_000;

  it('comes in up to a day, and changes nothing past it', async () => {
    const one = await makeSalon();
    const file = (aheadMs: number) => write(backUp(one.station), { madeAtMs: startAtMs + aheadMs });
    const { station } = await startSalon(makeTablet());
    const before = held(station);
    expect(await station.bringIn(file(day + 1))).toEqual({
      ok: false,
      error: { kind: 'backup', why: 'fromLater' },
    });
    expect(held(station)).toBe(before);
    expect(await bring(station, file(day))).toMatchObject({ closed: 1, beside: null });
  });
});

describe('a file that is no whole backup', () => {
  it.each([
    ['cut off', (file: string) => file.slice(0, -30), 'cutOff'],
    ['of another program', () => 'Date,Client\r\n', 'anotherProgram'],
    ['damaged', (file: string) => file.replace('Sandbar', 'Sandbag'), 'damaged'],
    ['of the invented salon', (file: string) => write(file, { isDemo: true }), 'invented'],
    ['newer', (file: string) => file.replace(/"modelVersion":\d+/, '"modelVersion":99'), 'newer'],
  ] as const)('%s, changes nothing', async (_, spoil, why) => {
    const one = await makeSalon();
    const other = await startSalon(makeTablet());
    const before = held(other.station);
    expect(await other.station.bringIn(spoil(backUp(one.station)))).toEqual({
      ok: false,
      error: { kind: 'backup', why },
    });
    expect(held(other.station)).toBe(before);
  });

  it('with a log of a name that is none, or a closed record that is none, changes nothing', async () => {
    const { station } = await startSalon(makeTablet());
    const before = held(station);
    for (const logs of [
      new Map([['../settings', [{}]]]),
      new Map([['closed-2026-03', [{ no: 'record' }]]]),
    ]) {
      expect(await station.bringIn([...writeBackup(logs, made)].join(''))).toMatchObject({
        error: { kind: 'backup', why: 'damaged' },
      });
    }
    expect(held(station)).toBe(before);
  });

  it('is not asked where this window does not write', async () => {
    const { station } = await startSalon(makeTablet());
    const file = backUp(station);
    await station.stopWriting();
    expect(await station.bringIn(file)).toEqual({ ok: false, error: { kind: 'notWriting' } });
  });
});
