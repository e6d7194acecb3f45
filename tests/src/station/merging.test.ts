import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { readBackup, writeBackup } from '../../../shared/records/backupFile';
import type { RawEvent } from '../../../shared/records/classify';
import type { ClosedRecord } from '../../../shared/records/closedRecord';
import type { RecordDocument } from '../../../shared/records/documents/document';
import { listDocuments } from '../../../shared/records/documents/listDocuments';
import { gatherDocuments } from '../../../shared/records/documents/mergeDocuments';
import type { RawForm } from '../../../shared/records/readForm';
import { inheritsStop } from '../../../src/station/inheritsStop';
import { judgeDocuments, listHeld } from '../../../src/station/merging';
import type { Station } from '../../../src/station/station';
import { makePower } from '../storage/power';
import { inventRecords } from '../storage/replica/shelf';
import { makeTablet, type Tablet } from '../storage/tablet';
import { play, type StationUnderTest, startAtMs, startStation, storyUpTo } from './stationUnderTest';

const by = 'Opal';
const minute = 60_000;
const hour = 60 * minute;
const ticket = 'Q.F.';

const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };
const correct: RawEvent = {
  type: 'CORRECTED',
  answers: { answer: 'inherited', code: 'wrongClient', words: 'another Q.F.' },
};

const backUp = ({ station }: StationUnderTest): string => [...station.backUp()].join('');
const held = (station: Station) => JSON.stringify([...station.readLogs()].sort());

/** A station of the salon under its own settings, whose ids begin so. */
async function start(idBegins: string, tablet: Tablet = makeTablet(), power = makePower()) {
  const under = await startStation(tablet, power, undefined, undefined, idBegins);
  await under.station.saveSettings(by, { ...salon, chairs: idBegins.length });
  return under;
}

/** One visit of this ticket, told so and over. */
const visit = (under: StationUnderTest, ...raws: readonly RawEvent[]): Promise<string> =>
  play(under, [
    { afterMs: minute, by, raw: { type: 'OPENED', answers: { ticket, chair: '3' } } },
    ...[...raws, callOff].map((raw) => ({ afterMs: minute, by, raw })),
  ]);

const bring = async (to: StationUnderTest, file: string) => {
  to.clock.atMs = Math.max(to.clock.atMs, startAtMs + 10 * 24 * hour);
  const brought = await to.station.bringIn(file);
  if (!brought.ok) throw new Error(JSON.stringify(brought.error));
  return brought.value;
};

/** The other's backup as it is now, on a day that both clocks know. */
const bringFrom = async (to: StationUnderTest, from: StationUnderTest) => {
  to.clock.atMs = Math.max(to.clock.atMs, from.clock.atMs);
  return bring(to, backUp(from));
};

/** Everything that this station tells another, by name. */
const tells = ({ station }: StationUnderTest): readonly string[] => {
  const documents = listDocuments(listHeld(station.readLogs()), station.readSettings());
  return [...gatherDocuments(documents).keys()].sort();
};

const putOn = async ({ station, clock }: StationUnderTest, answers: RawForm = {}): Promise<string> => {
  const put = await station.putOnSkinTest(by, {
    ...{ ticket, method: 'makersMethod', site: 'behindEar', line: '', seen: 'notReadYet' },
    putOnAtMs: clock.atMs,
    ...answers,
  });
  if (!put.ok) throw new Error(JSON.stringify(put.error));
  return put.value;
};
const readTest = async ({ station, clock }: StationUnderTest, id: string, seen: string, afterMs = 0) => {
  clock.atMs += afterMs;
  const read = await station.changeSkinTest(id, by, { type: 'SKIN_TEST_READ', answers: { seen } });
  if (!read.ok) throw new Error(JSON.stringify(read.error));
};
const standing = ({ station }: StationUnderTest) =>
  station.readState().skinTests.map(({ seen, takenBack }) => (takenBack === null ? seen : 'takenBack'));

describe('a backup of another station, beside clients', () => {
  it('brings what closed and the skin tests, and leaves who is open and the settings where they are', async () => {
    const there = await start('there');
    await play(there, endsIronedWet.steps);
    await putOn(there);
    await play(there, storyUpTo('OPENED'));
    const tablet = makeTablet();
    const here = await start('here', tablet);
    await visit(here);
    const { settings } = here.station.readState();
    expect(await bring(here, backUp(there))).toEqual({
      closed: 1,
      gone: 0,
      beside: { here: 0, tests: 2, toldTwice: [], open: [ticket] },
    });
    const state = here.station.readState();
    expect(state.settings).toEqual(settings);
    expect(state.closed.map(({ id }) => id).sort()).toEqual(['here0001', 'there0001']);
    expect(state.open.size).toBe(0);
    expect(standing(here)).toEqual(standing(there));
    const again = await startStation(tablet);
    expect(again.station.readState()).toMatchObject({
      closed: state.closed,
      skinTests: state.skinTests,
      notices: [],
    });
  });

  it('brings nothing twice, and knows an older backup of this very station', async () => {
    const there = await start('there');
    await visit(there);
    const here = await start('here');
    await play(here, storyUpTo('OPENED'));
    await putOn(here);
    const older = backUp(here);
    const [id] = here.station.readState().open.keys();
    await here.station.submit(id ?? '', by, callOff);
    await bring(here, backUp(there));
    const before = held(here.station);
    expect(await bring(here, backUp(there))).toMatchObject({ closed: 0, beside: { here: 1, tests: 0 } });
    expect(await bring(here, older)).toEqual({
      closed: 0,
      gone: 0,
      beside: { here: 0, tests: 0, toldTwice: [], open: [] },
    });
    expect(held(here.station)).toBe(before);
  });

  it('keeps both accounts of a record that two tablets went on with', async () => {
    const old = await start('old0');
    await play(old, storyUpTo('OPENED'));
    const moved = await startStation(makeTablet());
    await bring(moved, backUp(old));
    const [id = ''] = old.station.readState().open.keys();
    moved.clock.atMs += minute;
    await moved.station.submit(id, by, hives);
    await moved.station.submit(id, by, callOff);
    // Still open at the old one: that its other account came in keeps its own from nowhere.
    expect(await bring(old, backUp(moved))).toMatchObject({ closed: 1, beside: { toldTwice: [ticket] } });
    expect(await old.station.submit(id, by, callOff)).toMatchObject({ ok: true });
    expect(
      old.station
        .readState()
        .closed.map((each) => [each.id, each.hasStandingStop])
        .sort(),
    ).toEqual([
      [id, false],
      [id, true],
    ]);
    expect(inheritsStop(old.station.readState(), ticket)).toBe(true);
    await bring(moved, backUp(old));
    expect(tells(moved)).toEqual(tells(old));
    expect(tells(old)).toHaveLength(2);
  });

  it('rewrites no journal, and only adds to the ends of logs', async () => {
    const there = await start('there');
    await visit(there);
    await putOn(there);
    const here = await start('here');
    await visit(here);
    const before = new Map(here.station.readLogs());
    const dropped = here.dropped.length;
    let rewritten = 0;
    const count =
      <A extends readonly unknown[], R>(exchange: (...args: A) => R) =>
      (...args: A): R => {
        rewritten += 1;
        return exchange(...args);
      };
    const tablet = makeTablet();
    const counting = await startStation(tablet, undefined, ({ journal, index }) => ({
      journal: { ...journal, exchange: count(journal.exchange) },
      index: { ...index, exchange: count(index.exchange) },
    }));
    await visit(counting);
    await bring(counting, backUp(there));
    expect(rewritten).toBe(0);
    await counting.station.erase(by, { ids: ['client0001'], code: 'sheAsked' });
    expect(rewritten).toBeGreaterThan(0);
    await bring(here, backUp(there));
    expect(here.dropped).toHaveLength(dropped);
    for (const [name, entries] of before) {
      expect(here.station.readLogs().get(name)?.slice(0, entries.length), name).toEqual(entries);
    }
  });

  it('goes on where the power went, at whatever write', async () => {
    const there = await start('there');
    for (let count = 0; count < 3; count += 1) await visit(there);
    await putOn(there);
    await readTest(there, there.station.readState().skinTests[0]?.id ?? '', 'nothing', 50 * hour);
    const file = backUp(there);
    const lived = async (tablet: Tablet, power = makePower()) => {
      const under = await start('here', tablet, power);
      await visit(under);
      return under;
    };
    const whole = await lived(makeTablet());
    await bring(whole, file);
    let cut = 0;
    for (const after of [1, 2, 3, 5, 7, 9]) {
      const counting = makePower();
      await lived(makeTablet(), counting);
      const tablet = makeTablet();
      const first = await lived(tablet, makePower(counting.count() + after));
      first.clock.atMs = startAtMs + 10 * 24 * hour;
      const tried = await first.station.bringIn(file);
      if (!tried.ok) cut += 1;
      if (!tried.ok) expect(tried.error.kind).toBe('recordsNotSaved');
      const again = await startStation(tablet, undefined, undefined, undefined, 'again');
      // A test is there whole or not at all: no beginning of it counts alone.
      expect(standing(again).filter((seen) => seen !== 'nothing')).toEqual([]);
      await bring(again, file);
      expect(tells(again), `cut at ${after}`).toEqual(tells(whole));
    }
    expect(cut).toBeGreaterThan(3);
  });
});

describe('a skin test that is read at another station than it was put on', () => {
  it('goes on there, and comes back longer', async () => {
    const there = await start('there');
    const id = await putOn(there);
    const here = await start('here');
    await visit(here);
    await bring(here, backUp(there));
    await readTest(here, id, 'reaction');
    expect(await bring(there, backUp(here))).toMatchObject({ beside: { tests: 1 } });
    expect(standing(there)).toEqual(['reaction']);
    expect(tells(there).filter((name) => name.startsWith('skinTest'))).toEqual(
      tells(here).filter((name) => name.startsWith('skinTest')),
    );
  });

  it('keeps both readings, and the reaction stands at both until somebody takes it back who saw it', async () => {
    const there = await start('there');
    const id = await putOn(there);
    const tablet = makeTablet();
    const here = await start('here', tablet);
    await visit(here);
    await bring(here, backUp(there));
    await readTest(there, id, 'reaction', 49 * hour);
    await readTest(here, id, 'nothing', 48 * hour);
    await bringFrom(here, there);
    await bringFrom(there, here);
    expect([standing(here), standing(there)]).toEqual([['reaction'], ['reaction']]);
    const takeBack = { what: 'reading', code: 'wrongTap', words: 'another client' };
    const taken = await here.station.changeSkinTest(id, by, {
      type: 'SKIN_TEST_TAKEN_BACK',
      answers: takeBack,
    });
    expect(taken).toMatchObject({ ok: true });
    expect(standing(here)).toEqual(['notReadYet']);
    expect(standing(await startStation(tablet))).toEqual(['notReadYet']);
    await readTest(here, id, 'nothing');
    expect(standing(here)).toEqual(['nothing']);
    await bringFrom(there, here);
    expect(standing(there)).toEqual(['nothing']);
    expect(tells(there)).toEqual(tells(here));
    await here.station.erase(by, { ids: [id], code: 'sheAsked' });
    expect([...here.station.readLogs().keys()].filter((name) => name.startsWith('skintest'))).toEqual([]);
  });

  it('is cited at once by whoever is open for that ticket', async () => {
    const there = await start('there');
    const id = await putOn(there);
    await readTest(there, id, 'reaction', hour);
    const here = await start('here');
    const open = await play(here, storyUpTo('OPENED'));
    await bring(here, backUp(there));
    expect(here.station.readState().open.get(open)?.record.skinTest?.seen).toBe('reaction');
  });
});

/** As any other station holds it. */
const asBrought = (record: ClosedRecord): ClosedRecord => ({
  ...record,
  broughtIn: { atMs: 1, settings: [] },
});
const isStopped = (closed: readonly ClosedRecord[]): boolean =>
  inheritsStop({ open: new Map(), closed }, ticket);

describe('three stations that bring in each other’s backups', () => {
  it('come to the same records, tests and stops, in whatever order and however often', async () => {
    const seen = { runs: 0, stopped: 0, lifted: 0 };
    const does = fc.constantFrom(
      'plain',
      'stops',
      'stops',
      'corrects',
      'corrects',
      'corrects',
      'putsOn',
      'reads',
      'reacts',
      'erases',
      'brings',
    );
    const acts = fc.array(fc.tuple(does, fc.nat(2), fc.nat(2)), { minLength: 4, maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(acts, fc.shuffledSubarray([0, 1, 2], { minLength: 3 }), async (told, order) => {
        const stations = [await start('one0'), await start('two0'), await start('six0')];
        const find = (at: number): StationUnderTest => stations[at] ?? (stations[0] as StationUnderTest);
        for (const under of stations) await visit(under);
        for (const [what, at, from] of told) {
          const under = find(at);
          const { skinTests, closed } = under.station.readState();
          const unread = skinTests.find((test) => test.seen === 'notReadYet')?.id;
          if (what === 'plain') await visit(under);
          if (what === 'stops') await visit(under, hives);
          if (what === 'corrects' && inheritsStop(under.station.readState(), ticket))
            await visit(under, correct);
          if (what === 'putsOn')
            await under.station.putOnSkinTest(by, {
              ...{ ticket, method: 'makersMethod', site: 'behindEar', line: `L${at}` },
              ...{ seen: 'notReadYet', putOnAtMs: under.clock.atMs },
            });
          under.clock.atMs += 49 * hour;
          if (what === 'reads' && unread !== undefined)
            await under.station.changeSkinTest(unread, by, {
              type: 'SKIN_TEST_READ',
              answers: { seen: 'nothing' },
            });
          if (what === 'reacts' && unread !== undefined) await readTest(under, unread, 'reaction');
          if (what === 'erases' && closed[0] !== undefined)
            await under.station.erase(by, { ids: [closed[0].id], code: 'sheAsked' });
          if (what === 'brings' && at !== from) await bringFrom(under, find(from));
        }
        // Everybody's file to everybody, in two orders; then no file holds anything that is new.
        for (const turn of [order, [...order].reverse()])
          for (const from of turn)
            for (const to of order) if (from !== to) await bringFrom(find(to), find(from));
        const [first, ...others] = stations.map(tells);
        for (const each of others) expect(each).toEqual(first);
        const stops = stations.map(({ station }) => inheritsStop(station.readState(), ticket));
        expect(new Set(stops).size).toBe(1);
        const tests = stations.map((under) => [...standing(under)].sort());
        for (const each of tests) expect(each).toEqual(tests[0]);
        for (const { station } of stations) expect(station.readState().notices).toEqual([]);
        // Record by record, in two orders: a stop goes by no record but one that names it, and the order changes nothing.
        const closed = stations
          .flatMap(({ station }) => station.readState().closed.slice(0, 20))
          .map(asBrought);
        for (const records of [closed, [...closed].reverse()]) {
          for (const [count, added] of records.entries()) {
            const before = isStopped(records.slice(0, count));
            if (before && !isStopped(records.slice(0, count + 1))) {
              expect(JSON.stringify(added.log)).toContain('"speaksFor":[{"record":');
              seen.lifted += 1;
            }
          }
          expect(isStopped(records)).toBe(stops[0]);
        }
        seen.runs += 1;
        seen.stopped += stops[0] === true ? 1 : 0;
      }),
      { numRuns: 25, seed: 20_261_127 },
    );
    console.info(`three stations: ${JSON.stringify(seen)}`);
    expect(seen.stopped).toBeGreaterThan(4);
    expect(seen.lifted).toBeGreaterThan(2);
  }, 240_000);
});

describe('a backup that is refused beside clients', () => {
  it.each([
    ['cut off', (file: string) => file.slice(0, -30), { kind: 'backup', why: 'cutOff' }],
    ['damaged', (file: string) => file.replace('Q.F.', 'Q.G.'), { kind: 'backup', why: 'damaged' }],
    ['of another program', () => 'Date,Client\r\n', { kind: 'backup', why: 'anotherProgram' }],
    [
      'of the invented salon',
      (file: string) => write(file, { isDemo: true }),
      { kind: 'backup', why: 'invented' },
    ],
    [
      'from later',
      (file: string) => write(file, { madeAtMs: startAtMs * 2 }),
      { kind: 'backup', why: 'fromLater' },
    ],
    [
      'newer',
      (file: string) => file.replace(/"modelVersion":\d+/, '"modelVersion":99'),
      { kind: 'backup', why: 'newer' },
    ],
    [
      'with a log that nobody could have tapped',
      (file: string) =>
        write(file, {}, (text) => text.replace('"isAnotherDay":false', '"isAnotherDay":true')),
      { kind: 'recordRefused', ticket, entry: 1 },
    ],
  ] as const)('%s, changes nothing', async (_, spoil, error) => {
    const there = await start('there');
    await visit(there);
    const here = await start('here');
    await visit(here);
    const before = held(here.station);
    expect(await here.station.bringIn(spoil(backUp(there)))).toEqual({ ok: false, error });
    expect(held(here.station)).toBe(before);
  });
});

/** The same logs in a file made otherwise, whole again. */
function write(file: string, change: object, spoil: (text: string) => string = (text) => text): string {
  const read = readBackup(file);
  if (!read.ok) throw new Error(read.error);
  const logs = new Map(
    [...read.value.logs].map(([name, entries]) => [name, JSON.parse(spoil(JSON.stringify(entries)))]),
  );
  return [...writeBackup(logs, { ...read.value.made, ...change })].join('');
}

describe('documents that come in a piece at a time', () => {
  it('are compared with what is held in one order, however many pieces, and are not held before they are written', () => {
    const documents = [...inventRecords(12, 'come')];
    let read = 0;
    const closed: readonly ClosedRecord[] = new Proxy<ClosedRecord[]>([], {
      get(held, name, own) {
        if (name === Symbol.iterator) read += 1;
        return Reflect.get(held, name, own);
      },
    });
    const nowMs = startAtMs + 365 * 24 * hour;
    const judge = (...pieces: readonly RecordDocument[]) => {
      const state = { open: new Map(), closed };
      const judging = judgeDocuments(state, pieces, new Set(), { nowMs, broughtAtMs: nowMs });
      for (let next = judging.next(); ; next = judging.next()) if (next.done === true) return next.value;
    };
    for (const each of [...documents, ...documents])
      expect(judge(each)).toMatchObject({ ok: true, value: { comes: [{ id: each.body.id }], here: 0 } });
    expect(read).toBe(1);
    const [first] = documents;
    if (first === undefined) throw new Error('no record');
    expect(judge(first, first)).toMatchObject({ ok: true, value: { comes: [{}], here: 1 } });
  });
});
