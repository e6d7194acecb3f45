import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../shared/records/classify';
import { refuse } from '../../../shared/result';
import { makeBoard } from '../../../src/station/board';
import { ERASED_LOG } from '../../../src/station/logNames';
import { makeMemory } from '../../../src/station/memory';
import { makePast } from '../../../src/station/past';
import { readLogs } from '../../../src/station/readLogs';
import { isPastRead } from '../../../src/station/stationState';
import { makeTablet, readEverything, switchOn, type Tablet } from '../storage/tablet';
import { keepMonths, leaveOpen, months, oldest, openAnd, type SlowStart, startSlowly } from './months';
import { startStation } from './stationUnderTest';

const weigh = endsIronedWet.steps.find(({ raw }) => raw.type === 'BOWL_WEIGHED')?.raw as RawEvent;
const turn = () => new Promise((resolve) => setTimeout(resolve, 5));
const tickets = ({ station }: Pick<SlowStart, 'station'>) =>
  station.readState().closed.map(({ ticketKey }) => ticketKey);
const everybody = ['ST', 'B3', 'A2', 'B2', 'A1', 'B1', 'A0', 'B0'];

const keptMonths = async (): Promise<Tablet> => {
  const tablet = makeTablet();
  await keepMonths(tablet);
  return tablet;
};

describe('a station that still looks through its months', () => {
  it('is in use, says how far it is, and shows nothing of before until it knows all of it', async () => {
    const tablet = await keptMonths();
    const { id, atMs } = await leaveOpen(tablet);
    const slow = await startSlowly(tablet, atMs);
    expect(slow.station.readState()).toMatchObject({
      mode: 'writing',
      months: { read: 0, all: 4 },
      closed: [],
    });
    expect([...slow.station.readState().open.keys()]).toEqual([id]);
    slow.letRead(months[3] ?? '', months[2] ?? '');
    await expect.poll(() => slow.station.readState().months).toEqual({ read: 2, all: 4 });
    expect(slow.station.readState().closed).toEqual([]);
    slow.letRead();
    await slow.started;
    expect(slow.station.readState().months).toEqual({ read: 4, all: 4 });
    expect(tickets(slow)).toEqual(everybody);
    const states = slow.published.filter(({ mode }) => mode === 'writing');
    expect(states.every(({ months: { read, all }, closed }) => read < all === (closed.length === 0))).toBe(
      true,
    );
  });

  it('starts nobody before it knows whom a stop in the oldest month keeps from colour', async () => {
    const slow = await startSlowly(await keptMonths());
    const opened = slow.station.open('Opal', { ticket: 's.t', chair: '2' });
    slow.letRead(...months.slice(1));
    await expect.poll(() => slow.station.readState().months.read).toBe(3);
    expect(slow.station.readState().open.size).toBe(0);
    slow.letRead(oldest);
    const done = await opened;
    expect(done.ok && slow.station.readState().open.get(done.value)?.record.inheritedStop).toBe(true);
  });

  it('starts nobody while no copy answers for the oldest month, and tries it again', async () => {
    const tablet = await keptMonths();
    const { store } = switchOn(tablet);
    let isSilent = true;
    const silent = { name: oldest, kind: 'timedOut', copy: 'journal', mayBeHeld: true, detail: '' } as const;
    const memory = makeMemory(
      {
        ...store,
        readPast: (name) =>
          isSilent && name === oldest ? Promise.resolve(refuse(silent)) : store.readPast(name),
        reload: (name) =>
          isSilent && name === oldest ? Promise.resolve(refuse(silent)) : store.reload(name),
      },
      {
        onAcknowledged: () => {},
        onDropped: () => {},
        onRewritten: () => {},
        onFailed: () => {},
        onMonth: () => {},
      },
    );
    await memory.restore();
    const board = makeBoard(() => undefined);
    board.show({ months: { read: 0, all: memory.later().length } });
    const past = makePast(board, memory);
    const reading = past.read(async () => undefined, true);
    await expect.poll(() => memory.later()).toEqual([oldest]);
    expect(past.isRead()).toBe(false);
    expect(isPastRead(board.read())).toBe(false);
    isSilent = false;
    await reading;
    expect(past.isRead()).toBe(true);
    expect(memory.later()).toEqual([]);
  });

  it('takes what is tapped for somebody who sat there, but nothing that reaches a head', async () => {
    const tablet = await keptMonths();
    const { id, atMs } = await leaveOpen(tablet);
    const slow = await startSlowly(tablet, atMs);
    const park: RawEvent = { type: 'PARKED', answers: { untilAtMs: atMs + 3_600_000 } };
    expect(await slow.station.submit(id, 'Opal', weigh)).toEqual(
      refuse({ kind: 'stillReading', read: 0, all: 4 }),
    );
    expect(await slow.station.submit(id, 'Opal', park)).toMatchObject({ ok: true });
    expect(await slow.station.submit(id, 'Opal', { type: 'RESUMED' })).toMatchObject({ ok: true });
    slow.letRead();
    await slow.started;
    expect(await slow.station.submit(id, 'Opal', weigh)).toMatchObject({ ok: true });
  });

  it('closes somebody into her month, which is read first', async () => {
    const tablet = await keptMonths();
    const under = await startStation(tablet);
    const id = await openAnd(under, 'C.C.');
    await under.station.stopWriting();
    const slow = await startSlowly(tablet, under.clock.atMs + 60_000);
    const [month = ''] = months.slice(-1);
    const closing = slow.station.submit(id, 'Opal', { type: 'CALLED_OFF', answers: { reason: 'noTime' } });
    await turn();
    expect(slow.station.readState().open.size).toBe(1);
    slow.letRead(month);
    expect((await closing).ok).toBe(true);
    expect(tickets(slow)).toEqual(['CC']);
    slow.letRead();
    await slow.started;
    expect(tickets(slow)).toEqual([...everybody, 'CC']);
    expect(slow.station.readState().notices).toEqual([]);
  });

  it('closes once whoever was written to her month before the power failed', async () => {
    const tablet = await keptMonths();
    const under = await startStation(tablet);
    const id = await openAnd(under, 'C.C.');
    const { log } = under.station.readState().open.get(id) ?? { log: [] };
    await under.station.submit(id, 'Opal', { type: 'CALLED_OFF', answers: { reason: 'noTime' } });
    const ended = under.station.readState().closed.at(-1)?.log ?? [];
    await under.station.stopWriting();
    const { store } = switchOn(tablet);
    await store.restore();
    for (const [seq, entry] of ended.entries()) await store.append(`open-${id}`, seq, entry as never);
    await store.release();
    expect(ended.length).toBe(log.length + 1);
    const slow = await startSlowly(tablet, under.clock.atMs + 60_000);
    expect(slow.station.readState().open.size).toBe(1);
    slow.letRead();
    await slow.started;
    expect(slow.station.readState().open.size).toBe(0);
    expect(tickets(slow)).toEqual([...everybody, 'CC']);
  });

  it('never shows what was erased in a month that comes late, and finishes taking it away', async () => {
    const tablet = await keptMonths();
    const under = await startStation(tablet);
    const ids = under.station
      .readState()
      .closed.slice(0, 1)
      .map(({ id }) => id);
    await under.station.stopWriting();
    const { store } = switchOn(tablet);
    await store.restore();
    await store.append(ERASED_LOG, 0, { v: 1, ids, atMs: under.clock.atMs, by: 'Opal', code: 'sheAsked' });
    await store.release();
    expect(await readEverything(tablet)).toContain('"ST"');
    const slow = await startSlowly(tablet);
    slow.letRead();
    await slow.started;
    expect(slow.published.flatMap(({ closed }) => closed).some(({ id }) => ids.includes(id))).toBe(false);
    expect(tickets(slow)).toEqual(everybody.slice(1));
    expect(await readEverything(tablet)).not.toContain('"ST"');
    const opened = await slow.station.open('Opal', { ticket: 'S.T.', chair: '2' });
    expect(opened.ok && slow.station.readState().open.get(opened.value)?.record.inheritedStop).toBe(false);
  });

  it('names a month that is damaged, and says so before anybody is started', async () => {
    const tablet = await keptMonths();
    const bytes = tablet.disk.journals.get(oldest) as Uint8Array;
    tablet.disk.journals.set(
      oldest,
      bytes.map((byte, at) => (at === 40 ? byte ^ 1 : byte)),
    );
    tablet.factory = makeTablet().factory;
    const slow = await startSlowly(tablet);
    slow.letRead();
    const opened = await slow.station.open('Opal', { ticket: 'Z.Z.', chair: '2' });
    expect(opened.ok).toBe(true);
    expect(slow.station.readState().notices).toContainEqual(
      expect.objectContaining({ kind: 'setAside', note: expect.objectContaining({ name: oldest }) }),
    );
  });

  it('answers whoever waits when the place is given up, and reads on for whoever takes it', async () => {
    const tablet = await keptMonths();
    const slow = await startSlowly(tablet);
    const opened = slow.station.open('Opal', { ticket: 'Z.Z.', chair: '2' });
    await turn();
    const stopped = slow.station.stopWriting();
    slow.letRead();
    expect(await opened).toEqual(refuse({ kind: 'notWriting' }));
    await stopped;
    await slow.started;
    expect(tickets(await startStation(tablet))).toEqual(everybody);
  });
});

describe('closed months', () => {
  it('come to the same records in the same order, in whatever order they are read', async () => {
    const tablet = await keptMonths();
    await fc.assert(
      fc.asyncProperty(fc.shuffledSubarray([...months], { minLength: months.length }), async (order) => {
        const quiet = () => undefined;
        const memory = makeMemory(switchOn(tablet).store, {
          onAcknowledged: quiet,
          onDropped: quiet,
          onRewritten: quiet,
          onFailed: quiet,
          onMonth: quiet,
        });
        await memory.restore();
        for (const name of order) await memory.readLater(name);
        const { closed } = readLogs(memory.logs());
        expect(closed.map(({ ticketKey }) => ticketKey)).toEqual(everybody);
        expect(memory.later()).toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  it('are only ever appended to, however often clients come, go and the station is started', async () => {
    const tablet = await keptMonths();
    const before = new Map(tablet.disk.journals);
    for (let cycle = 0; cycle < 3; cycle += 1) {
      const under = await startStation(tablet, undefined, refuseRewriting, undefined, `cycle${cycle}`);
      await openAnd(under, `D${cycle}`, { type: 'CALLED_OFF', answers: { reason: 'noTime' } });
      await openAnd(under, 'B0', { type: 'CALLED_OFF', answers: { reason: 'noTime' } });
      await under.station.stopWriting();
      for (const name of months) {
        const now = tablet.disk.journals.get(name) ?? new Uint8Array();
        const then = before.get(name) ?? new Uint8Array();
        expect(now.subarray(0, then.length)).toStrictEqual(then);
        expect(now.length > then.length).toBe(name === months.at(-1));
        before.set(name, now);
      }
    }
  });
});

/** Whatever would change what stands in a month fails the test. */
const refuseRewriting: Parameters<typeof startStation>[2] = ({ journal, index }) => {
  const guard =
    <Args extends readonly [string, ...(readonly never[])], T>(work: (...args: Args) => T) =>
    (...args: Args): T => {
      if (args[0].startsWith('closed-')) throw new Error(`${args[0]} was not appended to`);
      return work(...args);
    };
  const guardAll = <C extends typeof journal | typeof index>(copy: C): C => ({
    ...copy,
    remove: guard(copy.remove),
    exchange: guard(copy.exchange as never),
    setAside: guard(copy.setAside as never),
  });
  return {
    journal: {
      ...guardAll(journal),
      prepare: guard(journal.prepare as never),
      cutTail: guard(journal.cutTail),
    },
    index: { ...guardAll(index), replace: guard(index.replace as never) },
  };
};
