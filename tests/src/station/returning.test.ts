import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { findLastTime } from '../../../shared/records/findLastTime';
import { type AskedToday, tellNothingNew } from '../../../shared/records/nothingNew';
import { makeTablet } from '../storage/tablet';
import { play, startSalon, startStation } from './stationUnderTest';

const today: AskedToday = {
  reactions: ['none'],
  scalp: 'sound',
  ageBand: 'over',
  nape: 'dry',
  mid: 'dry',
  ends: 'dry',
  breakage: 'no',
  wetStretch: 'springsBack',
};
const fiveWeeksMs = 35 * 24 * 3_600_000;

/** The client of the story is back after five weeks. */
async function comeBack() {
  const tablet = makeTablet();
  const under = await startSalon(tablet);
  await play(under, endsIronedWet.steps);
  under.clock.atMs += fiveWeeksMs;
  const last = findLastTime(under.station.readState().closed, 'q.f.');
  if (last === null) throw new Error('nothing is known of last time');
  return { ...under, tablet, last };
}

describe('a client who is back', () => {
  it('is opened with last time as the station itself finds it, and is the same after a restart', async () => {
    const { station, tablet, last } = await comeBack();
    const named = { ticket: 'Q.F.', chair: '3', lastTimeId: last.id, lastTime: 'forged' };
    const opened = await station.open('Opal', named);
    if (!opened.ok) throw new Error(JSON.stringify(opened.error));
    expect(station.readState().open.get(opened.value)?.record.lastTime).toEqual(last);
    const again = await startStation(tablet);
    expect(again.station.readState().notices).toEqual([]);
    expect(again.station.readState().open.get(opened.value)?.record.lastTime).toEqual(last);
  });

  it('is not opened on the strength of a record of another ticket, nor of one that never was', async () => {
    const { station, last } = await comeBack();
    const other = await station.open('Opal', { ticket: 'Z.Z.', chair: '3', lastTimeId: last.id });
    expect(other).toEqual({ ok: false, error: { kind: 'notLastTime' } });
    const none = await station.open('Opal', { ticket: 'Q.F.', chair: '3', lastTimeId: 'nobody' });
    expect(none).toEqual({ ok: false, error: { kind: 'notLastTime' } });
    expect(station.readState().open.size).toBe(0);
  });

  it('with nothing new is at the strand test in one go', async () => {
    const { station, last } = await comeBack();
    const opened = await station.open('Opal', { ticket: 'Q.F.', chair: '3', lastTimeId: last.id });
    if (!opened.ok) throw new Error(JSON.stringify(opened.error));
    const said = await station.submitAll(
      opened.value,
      'Opal',
      tellNothingNew(last, today, salon.units, last.endedAtMs),
    );
    expect(said).toEqual({ ok: true, value: undefined });
    const { state, log = [] } = station.readState().open.get(opened.value) ?? {};
    expect(state?.value).toMatchObject({ open: { way: { strandTest: 'preparing' } } });
    // Her skin test of last time comes along by itself.
    expect(log.map(({ type }) => type).slice(0, 2)).toEqual(['OPENED', 'SKIN_TEST_NOTED']);
    expect(log).toHaveLength(10);
  });
});

describe('several taps in one go', () => {
  it('stop at the first that is refused, and what was taken before it stays', async () => {
    const { station, last } = await comeBack();
    const opened = await station.open('Opal', { ticket: 'Q.F.', chair: '3', lastTimeId: last.id });
    if (!opened.ok) throw new Error(JSON.stringify(opened.error));
    const hives = tellNothingNew(last, { ...today, reactions: ['hives'] }, salon.units, last.endedAtMs);
    expect(await station.submitAll(opened.value, 'Opal', hives)).toEqual({
      ok: false,
      error: { kind: 'notNow' },
    });
    const { state, log = [] } = station.readState().open.get(opened.value) ?? {};
    expect(state?.value).toMatchObject({ open: { way: 'stopped' } });
    expect(log.map(({ type }) => type)).toEqual(['OPENED', 'SKIN_TEST_NOTED', 'ANSWERED']);
  });

  it('let no other tap of the same client in between', async () => {
    const { station, last } = await comeBack();
    const opened = await station.open('Opal', { ticket: 'Q.F.', chair: '3', lastTimeId: last.id });
    if (!opened.ok) throw new Error(JSON.stringify(opened.error));
    const all = station.submitAll(
      opened.value,
      'Opal',
      tellNothingNew(last, today, salon.units, last.endedAtMs),
    );
    const late = station.submit(opened.value, 'Juno', {
      type: 'PARKED',
      answers: { untilAtMs: Date.UTC(2027, 0, 1) },
    });
    expect([await all, await late].map(({ ok }) => ok)).toEqual([true, true]);
    expect(station.readState().open.get(opened.value)?.log.at(-1)?.type).toBe('PARKED');
  });
});
