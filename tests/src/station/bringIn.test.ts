import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { readBackup, writeBackup } from '../../../shared/records/backupFile';
import type { Station } from '../../../src/station/station';
import { makePower } from '../storage/power';
import { makeTablet } from '../storage/tablet';
import { play, startAtMs, startSalon, startStation, storyUpTo } from './stationUnderTest';

const made = { madeAtMs: 7, isDemo: false };
const backUp = (station: Station): string => [...station.backUp()].join('');

/** The same story of another client, in another chair. */
const asAnother = (step: StoryStep): StoryStep =>
  step.raw.type === 'OPENED'
    ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, ticket: 'Z.Z.', chair: '5' } } }
    : step;

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
    expect(await bring(station, backUp(old.station))).toMatchObject({ closed: 1, isBesideClients: false });
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
    expect(await bring(station, backUp(old.station))).toMatchObject({ closed: 1, isBesideClients: false });
    expect(held(station)).toBe(held(old.station));
  });

  it('is the same when the same file comes in once more', async () => {
    const old = await makeSalon();
    const { station } = await startStation(makeTablet());
    const file = backUp(old.station);
    await bring(station, file);
    expect(await bring(station, file)).toMatchObject({ closed: 1, isBesideClients: false });
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
        isBesideClients: false,
      });
      expect(new Map(station.readLogs()), `cut at ${after}`).toEqual(whole.value.logs);
    }
    expect(cut).toBeGreaterThan(4);
  });
});

describe('a backup beside clients', () => {
  it('changes nothing, and says why', async () => {
    const one = await makeSalon();
    const other = await makeSalon('other');
    const before = held(other.station);
    expect(await other.station.bringIn(backUp(one.station))).toEqual({
      ok: false,
      error: { kind: 'backup', why: 'notEmpty' },
    });
    expect(held(other.station)).toBe(before);
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
    expect(await bring(station, file(day))).toMatchObject({ closed: 1, isBesideClients: false });
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
