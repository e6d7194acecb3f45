import { describe, expect, it } from 'vitest';
import { findNewestAtMs } from '../../../src/station/stationState';
import { makePower } from '../storage/power';
import { makeTablet, switchOn } from '../storage/tablet';
import {
  play,
  type StationUnderTest,
  startAtMs,
  startSalon,
  startStation,
  storyUpTo,
} from './stationUnderTest';

const hour = 3_600_000;
const day = 24 * hour;

const how = { method: 'makersMethod', site: 'behindEar', line: 'Sandbar cream' };

async function putOn(
  { station, clock }: StationUnderTest,
  ticket: string,
  more: object = {},
): Promise<string> {
  const put = await station.putOnSkinTest('Juno', {
    ...how,
    ticket,
    putOnAtMs: clock.atMs,
    seen: 'notReadYet',
    ...more,
  });
  if (!put.ok) throw new Error(JSON.stringify(put.error));
  return put.value;
}

const open = async ({ station }: StationUnderTest, ticket: string, chair: string): Promise<string> => {
  const opened = await station.open('Opal', { ticket, chair });
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  return opened.value;
};

const recordOf = ({ station }: StationUnderTest, id: string) => {
  const consultation = station.readState().open.get(id);
  if (consultation === undefined) throw new Error(`${id} is not open`);
  return consultation.record;
};
const wayOf = ({ station }: StationUnderTest, id: string): string =>
  JSON.stringify(station.readState().open.get(id)?.state.value);
const factOf = ({ station }: StationUnderTest, id: string) =>
  station.readState().open.get(id)?.state.context.facts.skinTest;
const read = ({ station }: StationUnderTest, id: string, seen: string) =>
  station.changeSkinTest(id, 'Wren', { type: 'SKIN_TEST_READ', answers: { seen } });
const takeBack = ({ station }: StationUnderTest, id: string, what: string, code = 'wrongTap') =>
  station.changeSkinTest(id, 'Wren', {
    type: 'SKIN_TEST_TAKEN_BACK',
    answers: { what, code, words: 'wrong row' },
  });

describe('a skin test put on without any consultation', () => {
  it('holds no chair, is cited by whoever is opened under the ticket, and not by another', async () => {
    const under = await startSalon(makeTablet());
    const test = await putOn(under, 'q f');
    expect(under.station.readState().open.size).toBe(0);
    const hers = await open(under, 'Q.F.', '1');
    const others = await open(under, 'K.L.', '2');
    expect(recordOf(under, hers).skinTest).toMatchObject({
      skinTestId: test,
      line: 'Sandbar cream',
      by: 'Juno',
    });
    expect(recordOf(under, others).skinTest).toBeNull();
    expect(factOf(under, hers)).toBe('waiting');
  });

  it('is told to every open consultation of the ticket when it is read, and unties nothing alone', async () => {
    const under = await startSalon(makeTablet());
    const test = await putOn(under, 'Q.F.');
    const id = await open(under, 'Q.F.', '1');
    under.clock.atMs += 49 * hour;
    expect(await read(under, test, 'nothing')).toEqual({ ok: true, value: undefined });
    expect(recordOf(under, id).skinTest).toMatchObject({ seen: 'nothing', by: 'Wren' });
    expect(factOf(under, id)).toBe('clear');
    const bowl = await under.station.submit(id, 'Opal', { type: 'BOWL_WEIGHED', answers: { zone: 'ends' } });
    expect(bowl.ok).toBe(false);
  });

  it('refuses to be read before its time, with the time', async () => {
    const under = await startSalon(makeTablet());
    const test = await putOn(under, 'Q.F.');
    under.clock.atMs += 48 * hour - 1;
    expect(await read(under, test, 'nothing')).toEqual({
      ok: false,
      error: { kind: 'skinTestTooEarly', readableAtMs: startAtMs + 48 * hour },
    });
  });

  it('counts no more in a consultation once it lapsed', async () => {
    const under = await startSalon(makeTablet());
    await putOn(under, 'Q.F.', { putOnAtMs: startAtMs - 3 * day, seen: 'nothing' });
    const id = await open(under, 'Q.F.', '1');
    expect(factOf(under, id)).toBe('clear');
    under.clock.atMs += 26 * day;
    await under.station.submit(id, 'Opal', { type: 'ALARM_ACKNOWLEDGED', answers: { clock: 'x' } });
    expect(factOf(under, id)).toBe('lapsed');
  });

  it('is one at a time for a ticket and line; another line may follow, and the one put on last counts', async () => {
    const under = await startSalon(makeTablet());
    const first = await putOn(under, 'Q.F.');
    const again = await under.station.putOnSkinTest('Juno', {
      ...how,
      ticket: 'QF',
      line: 'sandbar  cream',
      putOnAtMs: startAtMs,
      seen: 'notReadYet',
    });
    expect(again).toEqual({ ok: false, error: { kind: 'skinTestOn', putOnAtMs: startAtMs } });
    const id = await open(under, 'Q.F.', '1');
    under.clock.atMs += day;
    const second = await putOn(under, 'Q.F.', { line: 'Cove cream' });
    under.clock.atMs += day;
    await read(under, first, 'nothing');
    expect(recordOf(under, id).skinTest?.skinTestId).toBe(second);
    expect(factOf(under, id)).toBe('waiting');
  });

  it('judges a reading by today’s wait: one that was too short is to be done again', async () => {
    const under = await startSalon(makeTablet());
    const test = await putOn(under, 'Q.F.');
    under.clock.atMs += 50 * hour;
    await read(under, test, 'nothing');
    const { settings } = under.station.readState().settings;
    const profile = { ...settings.profile, skinTestWaitH: 72 };
    await under.station.saveSettings('Opal', { ...settings, profile });
    under.clock.atMs += 30 * hour;
    const id = await open(under, 'Q.F.', '1');
    expect(recordOf(under, id).skinTest?.seen).toBe('notReadYet');
    await read(under, test, 'nothing');
    expect(factOf(under, id)).toBe('clear');
  });
});

describe('a reaction', () => {
  it('read after opening stops every open consultation of the ticket, and the next one', async () => {
    const under = await startSalon(makeTablet());
    const test = await putOn(under, 'Q.F.');
    const first = await open(under, 'Q.F.', '1');
    const second = await open(under, 'q.f.', '2');
    under.clock.atMs += 20 * hour;
    await read(under, test, 'reaction');
    expect(wayOf(under, first)).toContain('stopped');
    expect(wayOf(under, second)).toContain('stopped');
    expect(wayOf(under, await open(under, 'QF', '3'))).toContain('stopped');
    const put = await under.station.putOnSkinTest('Juno', {
      ...how,
      ticket: 'Q.F.',
      line: 'Cove cream',
      putOnAtMs: under.clock.atMs,
      seen: 'notReadYet',
    });
    expect(put).toMatchObject({ ok: false, error: { kind: 'skinTestReacted' } });
  });

  it('taken back by name in its own record is taken back in the same name wherever it is cited', async () => {
    const under = await startSalon(makeTablet());
    const test = await putOn(under, 'Q.F.');
    const id = await open(under, 'Q.F.', '1');
    await read(under, test, 'reaction');
    under.clock.atMs += hour;
    await takeBack(under, test, 'reading');
    expect(wayOf(under, id)).toContain('client');
    expect(recordOf(under, id).corrections).toMatchObject([
      { answer: 'skinTest', by: 'Wren', code: 'wrongTap', words: 'wrong row' },
    ]);
    expect(recordOf(under, id).skinTest).toMatchObject({ skinTestId: test, seen: 'notReadYet' });
  });

  it('of a test taken back whole leaves nothing noted', async () => {
    const under = await startSalon(makeTablet());
    const test = await putOn(under, 'Q.F.');
    const id = await open(under, 'Q.F.', '1');
    await read(under, test, 'reaction');
    await takeBack(under, test, 'test', 'cameOff');
    expect(recordOf(under, id).skinTest).toBeNull();
    expect(wayOf(under, id)).toContain('client');
  });

  it('of another client with the same ticket is left to her: said by name, it is never cited here again', async () => {
    const under = await startSalon(makeTablet());
    const test = await putOn(under, 'Q.F.');
    const id = await open(under, 'Q.F.', '1');
    await read(under, test, 'reaction');
    const correction = { answer: 'skinTest', code: 'wrongClient', words: 'not her test' };
    const said = await under.station.submit(id, 'Opal', { type: 'CORRECTED', answers: correction });
    expect(said.ok).toBe(true);
    expect(recordOf(under, id)).toMatchObject({ skinTest: null, notHerSkinTests: [test] });
    expect(under.station.readState().skinTests[0]).toMatchObject({ seen: 'reaction', takenBack: null });
    under.clock.atMs += hour;
    const own = { ...how, putOnAtMs: under.clock.atMs, seen: 'notReadYet' };
    await under.station.submit(id, 'Opal', { type: 'SKIN_TEST_NOTED', answers: own });
    expect(under.station.readState().skinTests).toHaveLength(2);
    expect(factOf(under, id)).toBe('waiting');
  });

  it('told over the head waits there for the rinse, and then it stops', async () => {
    const under = await startSalon(makeTablet());
    const id = await play(under, storyUpTo('BOWL_APPLIED'));
    const test = recordOf(under, id).skinTest?.skinTestId ?? '';
    await read(under, test, 'reaction');
    expect(wayOf(under, id)).toContain('colourOn');
    under.clock.atMs += 60_000;
    await under.station.submit(id, 'Opal', { type: 'BOWL_RINSED', answers: { zone: 'lengths' } });
    expect(wayOf(under, id)).toContain('stopped');
  });
});

describe('what a screen says of a skin test within a consultation', () => {
  it('goes into a record by ticket, which the consultation cites', async () => {
    const under = await startSalon(makeTablet());
    const id = await play(under, storyUpTo('SKIN_TEST_NOTED'));
    const [test] = under.station.readState().skinTests;
    expect(test).toMatchObject({ ticket: 'Q.F.', seen: 'nothing' });
    expect(recordOf(under, id).skinTest?.skinTestId).toBe(test?.id);
  });

  it('never names a test of its own choice', async () => {
    const under = await startSalon(makeTablet());
    const foreign = await putOn(under, 'K.L.', { putOnAtMs: startAtMs - 3 * day, seen: 'nothing' });
    const id = await open(under, 'Q.F.', '1');
    const answers = { ...how, putOnAtMs: startAtMs, seen: 'notReadYet', skinTestId: foreign };
    await under.station.submit(id, 'Opal', { type: 'SKIN_TEST_NOTED', answers });
    expect(recordOf(under, id).skinTest?.skinTestId).not.toBe(foreign);
    expect(factOf(under, id)).toBe('waiting');
  });

  it('corrected there is corrected in the test’s own record', async () => {
    const under = await startSalon(makeTablet());
    const test = await putOn(under, 'Q.F.');
    const id = await open(under, 'Q.F.', '1');
    const correction = { answer: 'skinTest', code: 'misheard', words: 'it was her sister' };
    await under.station.submit(id, 'Opal', { type: 'CORRECTED', answers: correction });
    expect(under.station.readState().skinTests[0]).toMatchObject({
      id: test,
      takenBack: { code: 'misheard' },
    });
    expect(recordOf(under, id).skinTest).toBeNull();
  });

  it('corrected while another one is put on takes back neither', async () => {
    const under = await startSalon(makeTablet());
    await putOn(under, 'Q.F.');
    const id = await open(under, 'Q.F.', '1');
    const correction = { answer: 'skinTest', code: 'misheard', words: 'it was her sister' };
    under.clock.atMs += hour;
    const [other, said] = await Promise.all([
      putOn(under, 'Q.F.', { line: 'Sandbar powder' }),
      under.station.submit(id, 'Opal', { type: 'CORRECTED', answers: correction }),
    ]);
    expect(said).toEqual({ ok: false, error: { kind: 'notNow' } });
    expect(under.station.readState().skinTests.map(({ takenBack }) => takenBack)).toEqual([null, null]);
    expect(recordOf(under, id).skinTest?.skinTestId).toBe(other);
  });

  it('is not corrected without words', async () => {
    const under = await startSalon(makeTablet());
    await putOn(under, 'Q.F.');
    const id = await open(under, 'Q.F.', '1');
    const correction = { answer: 'skinTest', code: 'misheard', words: '' };
    const said = await under.station.submit(id, 'Opal', { type: 'CORRECTED', answers: correction });
    expect(said).toMatchObject({ ok: false, error: { kind: 'fields' } });
    expect(under.station.readState().skinTests[0]?.takenBack).toBeNull();
  });
});

describe('a window that watches', () => {
  it('shows the skin tests of the one that writes, and takes nothing', async () => {
    const writer = await startSalon(makeTablet());
    const test = await putOn(writer, 'Q.F.');
    const watcher = await startStation(makeTablet());
    await watcher.station.stopWriting();
    watcher.station.watch(writer.station.readLogs());
    expect(watcher.station.readState().skinTests).toEqual(writer.station.readState().skinTests);
    expect(await read(watcher, test, 'reaction')).toEqual({ ok: false, error: { kind: 'notWriting' } });
    expect(writer.told.at(-1)).toMatchObject({ name: `skintest-${test}`, seq: 0 });
  });
});

describe('what cannot be written of a skin test', () => {
  it('is said, changes nothing, and is taken by another try', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    const test = await putOn(under, 'Q.F.');
    const id = await open(under, 'Q.F.', '1');
    await under.station.stopWriting();
    const cut = await startStation(tablet, makePower(0));
    expect(await read(cut, test, 'reaction')).toMatchObject({ ok: false, error: { kind: 'notSaved' } });
    expect(cut.station.readState().skinTests[0]?.seen).toBe('notReadYet');
    expect(wayOf(cut, id)).toContain('client');
    await cut.station.stopWriting();
    const again = await startStation(tablet);
    expect(await read(again, test, 'reaction')).toEqual({ ok: true, value: undefined });
    expect(wayOf(again, id)).toContain('stopped');
  });
});

describe('the clock of a skin test', () => {
  it('is corrected with those of the consultations, and doubted by the newest entry of either', async () => {
    const under = await startSalon(makeTablet());
    under.clock.atMs += 10 * hour;
    await putOn(under, 'Q.F.');
    const id = await open(under, 'Q.F.', '1');
    expect(findNewestAtMs(under.station.readState())).toBe(under.clock.atMs);
    under.clock.atMs -= 8 * hour;
    expect((await under.station.correctClocks('Opal', 0)).ok).toBe(true);
    expect(under.station.readState().skinTests[0]).toMatchObject({ olderByMs: 8 * hour });
    expect(recordOf(under, id).skinTest).toMatchObject({ olderByMs: 8 * hour });
    expect(findNewestAtMs(under.station.readState())).toBe(under.clock.atMs);
    const other = await open(under, 'Q.F.', '2');
    expect(recordOf(under, other).skinTest).toMatchObject({ olderByMs: 8 * hour });
  });
});

describe('a power cut between the test’s own log and the consultations', () => {
  const countNotes = ({ station }: StationUnderTest, id: string) =>
    station
      .readState()
      .open.get(id)
      ?.log.filter(({ type }) => type === 'SKIN_TEST_NOTED').length;

  it.each([
    ['nothing', 49 * hour],
    ['reaction', 20 * hour],
  ])('at any step of reading %s is finished by the next start, once', async (seen, afterMs) => {
    const outcomes = new Set<string>();
    for (let failsAt = 0; failsAt < 10; failsAt += 1) {
      const tablet = makeTablet();
      const before = await startSalon(tablet);
      const test = await putOn(before, 'Q.F.');
      const id = await open(before, 'Q.F.', '1');
      await before.station.stopWriting();
      const cut = await startStation(tablet, makePower(failsAt));
      cut.clock.atMs += afterMs;
      await read(cut, test, seen);
      await cut.station.stopWriting();
      const after = await startStation(tablet, undefined, undefined, cut.clock.atMs);
      const isRead = after.station.readState().skinTests[0]?.seen === seen;
      const about = `step ${failsAt}`;
      expect(recordOf(after, id).skinTest?.seen, about).toBe(isRead ? seen : 'notReadYet');
      expect(countNotes(after, id), about).toBe(isRead ? 2 : 1);
      outcomes.add(`${isRead}`);
      await after.station.stopWriting();
      const again = await startStation(tablet, undefined, undefined, cut.clock.atMs);
      expect(countNotes(again, id), `${about}, started again`).toBe(isRead ? 2 : 1);
    }
    expect([...outcomes].sort()).toEqual(['false', 'true']);
  });

  it('keeps a log that is not what it claims to be aside, named', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    const test = await putOn(under, 'Q.F.');
    const read = [...under.station.readLogs()].find(
      ([name]) => name === `skintest-${test}`,
    )?.[1][0] as object;
    await under.station.stopWriting();
    const { store } = switchOn(tablet);
    await store.restore();
    await store.append(`skintest-${test}`, 1, {
      ...read,
      type: 'SKIN_TEST_READ',
      payload: { seen: 'nothing' },
    });
    await store.release();
    const { station } = await startStation(tablet);
    expect(station.readState().skinTests).toEqual([]);
    expect(station.readState().notices).toMatchObject([
      {
        kind: 'refusedLog',
        name: `skintest-${test}`,
        ticket: 'Q.F.',
        fault: { seq: 1, code: 'saysOtherwise' },
      },
    ]);
    expect(station.readLogs().has(`skintest-${test}`)).toBe(false);
  });
});
