import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { RawEvent } from '../../../shared/records/classify';
import { gatherDay } from '../../../shared/records/day/dayRecords';
import { findLastTime } from '../../../shared/records/findLastTime';
import type { LeavingConsultation } from '../../../shared/records/json/consultationFile';
import { writeDay } from '../../../src/screens/day/dayFile';
import { countBack } from '../../../src/screens/day/dayNames';
import type { Station } from '../../../src/station/station';
import { shipped, write } from '../../shared/records/json/leaving';
import { makePower } from '../storage/power';
import { makeTablet } from '../storage/tablet';
import {
  play,
  type StationUnderTest,
  startAtMs,
  startSalon,
  startStation,
  storyUpTo,
} from './stationUnderTest';

const minute = 60_000;
const day = 24 * 60 * minute;
const by = 'Opal';
const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };
const sayNo: RawEvent = { type: 'WE_SAID_NO', answers: { reason: 'notSafeToday' } };
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };
const correct: RawEvent = {
  type: 'CORRECTED',
  answers: { answer: 'inherited', code: 'wrongClient', words: 'another Q.F.' },
};

/** The day as this station saves it. */
const save = ({ station, clock }: StationUnderTest, isDemo = false): string => {
  const records = gatherDay(station.readState(), clock.atMs, countBack(clock.atMs, { days: 7 }));
  return [...writeDay(records, station.readSettings(), { madeAtMs: clock.atMs, isDemo })].join('');
};

/** Another salon, whose first settings are not ours: one client done, one before the bowl. */
async function makeOther(idBegins = 'other') {
  const under = await startStation(makeTablet(), undefined, undefined, undefined, idBegins);
  await under.station.saveSettings('Juno', { ...salon, staff: ['Juno'], contact: '555', chairs: 4 });
  await under.station.saveSettings('Juno', salon);
  await play(under, endsIronedWet.steps);
  await play(under, [
    {
      ...storyUpTo('DECIDED')[0],
      afterMs: 0,
      by,
      raw: { type: 'OPENED', answers: { ticket: 'Z.Z.', chair: '5' } },
    },
    ...storyUpTo('DECIDED').slice(1),
  ]);
  return under;
}

const openAnd = (under: StationUnderTest, ...raws: readonly RawEvent[]): Promise<string> => {
  const taken = [...under.station.readState().open.values()].map(({ record }) => record.chair);
  const chair = [8, 7, 6].find((each) => !taken.includes(each));
  return play(under, [
    { afterMs: minute, by, raw: { type: 'OPENED', answers: { ticket: 'Q.F.', chair: String(chair) } } },
    ...raws.map((raw) => ({ afterMs: minute, by, raw })),
  ]);
};
const inherits = async (under: StationUnderTest): Promise<boolean | undefined> => {
  const id = await openAnd(under);
  return under.station.readState().open.get(id)?.record.inheritedStop;
};
const held = (station: Station) => JSON.stringify([...station.readLogs()].sort());

const ended = shipped.filter(({ record }) => record.ended !== null);

describe('records of a file', () => {
  it('come in beside clients as closed records of their month, and are there after a restart', async () => {
    const other = await makeOther();
    const tablet = makeTablet();
    const here = await startSalon(tablet);
    await openAnd(here);
    here.clock.atMs = other.clock.atMs;
    expect(await here.station.bringInRecords(save(other))).toEqual({
      ok: true,
      value: { came: 1, here: 0, erased: 0, open: ['Z.Z.'] },
    });
    const [theirs] = other.station.readState().closed;
    const [ours] = here.station.readState().closed;
    expect(ours).toMatchObject({ ...theirs, broughtIn: { atMs: expect.any(Number) } });
    expect(ours?.broughtIn?.settings.map(({ id }) => id)).toEqual([2]);
    expect(JSON.stringify(ours?.broughtIn)).not.toContain('Juno');
    const again = await startStation(tablet);
    expect(again.station.readState().closed).toEqual(here.station.readState().closed);
    expect(again.station.readState().notices).toEqual([]);
  });

  it('are saved again with the settings they came with, and known again', async () => {
    const other = await makeOther();
    const here = await startSalon(makeTablet());
    here.clock.atMs = other.clock.atMs;
    await here.station.bringInRecords(save(other));
    const [first] = JSON.parse(save(other)).consultations;
    const [second] = JSON.parse(save(here)).consultations;
    expect(second.settings).toEqual(first.settings);
    const before = held(other.station);
    expect(await other.station.bringInRecords(save(here))).toEqual({
      ok: true,
      value: { came: 0, here: 1, erased: 0, open: [] },
    });
    expect(held(other.station)).toBe(before);
  });

  it('come once, however often their file does, and who is open at her own station is known there', async () => {
    const other = await makeOther();
    const file = save(other);
    const here = await startSalon(makeTablet());
    here.clock.atMs = other.clock.atMs;
    await here.station.bringInRecords(file);
    const before = held(here.station);
    expect(await here.station.bringInRecords(file)).toMatchObject({
      value: { came: 0, here: 1, erased: 0, open: ['Z.Z.'] },
    });
    expect(held(here.station)).toBe(before);
    expect(await other.station.bringInRecords(file)).toMatchObject({
      value: { came: 0, here: 2, erased: 0, open: [] },
    });
  });

  it('that were erased here never come back, and are counted', async () => {
    const other = await makeOther();
    const file = save(other);
    const here = await startSalon(makeTablet());
    here.clock.atMs = other.clock.atMs;
    await here.station.bringInRecords(file);
    const ids = here.station.readState().closed.map(({ id }) => id);
    expect(ids).toHaveLength(1);
    expect(await here.station.erase(by, { ids, code: 'sheAsked' })).toMatchObject({ ok: true });
    expect(await here.station.bringInRecords(file)).toEqual({
      ok: true,
      value: { came: 0, here: 0, erased: 1, open: ['Z.Z.'] },
    });
    expect(here.station.readState().closed).toEqual([]);
  });

  it('leave out one that was open then, also where she is closed by now', async () => {
    const other = await makeOther();
    const here = await startSalon(makeTablet());
    const [open] = [...other.station.readState().open.values()];
    if (open === undefined) throw new Error('nobody is open');
    const then = save(other);
    await other.station.submit(open.id, by, callOff);
    here.clock.atMs = other.clock.atMs;
    expect(await here.station.bringInRecords(save(other))).toMatchObject({ value: { came: 2 } });
    const before = held(here.station);
    expect(await here.station.bringInRecords(then)).toMatchObject({
      value: { here: 1, erased: 0, open: ['Z.Z.'] },
    });
    expect(held(here.station)).toBe(before);
  });

  it('may be of any model that this one reads, and of several months', async () => {
    const here = await startSalon(makeTablet());
    here.clock.atMs += 60 * day;
    expect(await here.station.bringInRecords(write(ended))).toMatchObject({ value: { came: ended.length } });
    const ends = here.station.readState().closed.map(({ endedAtMs }) => endedAtMs);
    expect(ends).toEqual([...ends].sort((one, next) => one - next));
  });
});

describe('last time, among records of a file', () => {
  it.each([
    ['here, where the file’s is older', 0, 2, 'client0002'],
    ['the file’s, where it is newer', 2, 0, 'other0001'],
  ])('is %s, after a restart too', async (_, daysThere, daysHere, lastId) => {
    const other = await startStation(makeTablet(), undefined, undefined, undefined, 'other');
    other.clock.atMs += daysThere * day;
    await play(other, endsIronedWet.steps);
    const tablet = makeTablet();
    const here = await startSalon(tablet);
    here.clock.atMs += daysHere * day;
    // An earlier visit, so that the file's does not stand beside nothing.
    await openAnd(here, callOff);
    await play(here, endsIronedWet.steps);
    here.clock.atMs = Math.max(here.clock.atMs, other.clock.atMs);
    await here.station.bringInRecords(save(other));
    expect(findLastTime(here.station.readState().closed, 'Q.F.')?.id).toBe(lastId);
    const again = await startStation(tablet);
    expect(findLastTime(again.station.readState().closed, 'Q.F.')?.id).toBe(lastId);
  });
});

describe('a stop in records of a file', () => {
  it('is handed on to her next opening here', async () => {
    const other = await startStation(makeTablet(), undefined, undefined, undefined, 'other');
    await openAnd(other, hives, sayNo);
    const here = await startSalon(makeTablet());
    here.clock.atMs = other.clock.atMs;
    expect(await inherits(here)).toBe(false);
    await here.station.bringInRecords(save(other));
    expect(await inherits(here)).toBe(true);
  });

  it('is cleared by no correction of before it came, also when that was later, and by one after it', async () => {
    const other = await startStation(makeTablet(), undefined, undefined, undefined, 'other');
    await openAnd(other, hives, sayNo);
    const here = await startSalon(makeTablet());
    here.clock.atMs = other.clock.atMs + day;
    await openAnd(here, hives, sayNo);
    await openAnd(here, correct, callOff);
    expect(await inherits(here)).toBe(false);
    const corrected = await openAnd(here, hives);
    await play(
      here,
      [{ afterMs: minute, by, raw: { type: 'CALLED_OFF', answers: { reason: 'noTime' } } }],
      corrected,
    );
    await openAnd(here, correct, callOff);
    await here.station.bringInRecords(save(other));
    expect(await inherits(here)).toBe(true);
    const { open } = here.station.readState();
    for (const id of open.keys()) await here.station.submit(id, by, callOff);
    await openAnd(here, correct, callOff);
    expect(await inherits(here)).toBe(false);
  });

  it('keeps off the head whoever was open when it came, until somebody speaks for it by name', async () => {
    const other = await startStation(makeTablet(), undefined, undefined, undefined, 'other');
    await openAnd(other, hives, sayNo);
    const here = await startSalon(makeTablet());
    here.clock.atMs = other.clock.atMs + day;
    const weighing = await play(here, storyUpTo('DECIDED'));
    await here.station.bringInRecords(save(other));
    const weigh = endsIronedWet.steps.find(({ raw }) => raw.type === 'BOWL_WEIGHED')?.raw as RawEvent;
    here.clock.atMs += minute;
    expect(await here.station.submit(weighing, by, weigh)).toMatchObject({
      error: { kind: 'stoppedElsewhere' },
    });
  });

  it('that stands here is cleared by nothing that was said elsewhere', async () => {
    const other = await startStation(makeTablet(), undefined, undefined, undefined, 'other');
    await openAnd(other, hives, sayNo);
    other.clock.atMs += day;
    await openAnd(other, correct, callOff);
    const here = await startSalon(makeTablet());
    await openAnd(here, hives, sayNo);
    here.clock.atMs = other.clock.atMs;
    expect(await here.station.bringInRecords(save(other))).toMatchObject({ value: { came: 2 } });
    expect(await inherits(here)).toBe(true);
  });
});

describe('a file of records that is refused changes nothing', () => {
  const asOf = (leaving: LeavingConsultation, change: Partial<LeavingConsultation>) => ({
    ...leaving,
    ...change,
  });
  const [whole, other] = ended;
  if (whole === undefined || other === undefined) throw new Error('no shipped log ended');

  it.each([
    ['cut off', write([whole]).slice(0, -40), { kind: 'records', why: 'cutOff' }],
    ['of the invented salon', write([whole], { isDemo: true }), { kind: 'records', why: 'invented' }],
    ['from later', write([whole], { madeAtMs: startAtMs + day + 1 }), { kind: 'records', why: 'fromLater' }],
    [
      'with one that was forged, after one that is good',
      write([other, asOf(whole, { log: whole.log.slice(1) })]),
      { kind: 'recordRefused', ticket: whole.record.id, entry: 1 },
    ],
    [
      'with two of one name',
      write([whole, asOf(other, { record: { ...other.record, id: whole.record.id } })]),
      { kind: 'recordDiffers', ticket: other.record.ticket },
    ],
  ])('%s', async (_, file, error) => {
    const here = await startSalon(makeTablet());
    const before = held(here.station);
    expect(await here.station.bringInRecords(file)).toEqual({ ok: false, error });
    expect(held(here.station)).toBe(before);
  });

  it('with a record that is not over until more than a day from now', async () => {
    const here = await startStation(makeTablet(), undefined, undefined, startAtMs - 60 * day);
    const file = write([whole], { madeAtMs: startAtMs - 60 * day });
    expect(await here.station.bringInRecords(file)).toMatchObject({ error: { why: 'fromLater' } });
  });

  it('with another of a name that is here', async () => {
    const here = await startStation(makeTablet(), undefined, undefined, startAtMs + 60 * day);
    await here.station.bringInRecords(write([whole]));
    const before = held(here.station);
    const same = asOf(other, { record: { ...other.record, id: whole.record.id } });
    expect(await here.station.bringInRecords(write([same]))).toEqual({
      ok: false,
      error: { kind: 'recordDiffers', ticket: other.record.ticket },
    });
    expect(held(here.station)).toBe(before);
  });

  it('where this window does not write', async () => {
    const { station } = await startSalon(makeTablet());
    await station.stopWriting();
    expect(await station.bringInRecords(write([whole]))).toEqual({
      ok: false,
      error: { kind: 'notWriting' },
    });
  });
});

describe('records of a file on a tablet that is full', () => {
  it('stay as far as they came, which is said, and the same file goes on from there', async () => {
    const file = write(ended);
    const laterMs = startAtMs + 60 * day;
    const start = (tablet = makeTablet(), power = makePower()) =>
      startStation(tablet, power, undefined, laterMs);
    const whole = await start();
    await whole.station.bringInRecords(file);
    let cut = 0;
    for (const after of [1, 2, 3, 5, 8]) {
      const counting = makePower();
      await start(makeTablet(), counting);
      const tablet = makeTablet();
      const first = await start(tablet, makePower(counting.count() + after));
      const tried = await first.station.bringInRecords(file);
      if (!tried.ok) cut += 1;
      const { station } = await start(tablet);
      const already = station.readState().closed.length;
      expect(await station.bringInRecords(file), `cut at ${after}`).toEqual({
        ok: true,
        value: { came: ended.length - already, here: already, erased: 0, open: [] },
      });
      const ids = (state: Station) => state.readState().closed.map(({ id }) => id);
      expect(ids(station)).toEqual(ids(whole.station));
    }
    expect(cut).toBeGreaterThan(2);
  });
});
