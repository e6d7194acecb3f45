import { describe, expect, it } from 'vitest';
import type { Json } from '../../../src/storage/json';
import { makeTablet, switchOn } from '../storage/tablet';
import { type StationUnderTest, startSalon, startStation } from './stationUnderTest';

const minute = 60_000;
const hour = 60 * minute;

const start = async ({ station }: StationUnderTest, kind = 'boilSet'): Promise<string> => {
  const started = await station.startBenchTrial('Opal', { kind, hair: 'bleached' });
  if (!started.ok) throw new Error(JSON.stringify(started.error));
  return started.value;
};
const listBench = ({ station }: StationUnderTest) => station.readState().bench;

describe('a trial at the bench', () => {
  it('goes from the water to its rod to what was seen, over days and a restart', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    const id = await start(under);
    expect(listBench(under)).toMatchObject([{ id, kind: 'boilSet', startedBy: 'Opal', isRead: false }]);
    under.clock.atMs += 10 * minute;
    const out = { type: 'BENCH_TAKEN_OUT', answers: {} } as const;
    expect(await under.station.changeBenchTrial(id, 'Wren', out)).toEqual({
      ok: false,
      error: { kind: 'notNow' },
    });
    under.clock.atMs += 20 * minute;
    expect((await under.station.changeBenchTrial(id, 'Wren', out)).ok).toBe(true);

    const next = await startStation(tablet, undefined, undefined, under.clock.atMs + 25 * hour);
    expect(listBench(next)).toMatchObject([{ id, outBy: 'Wren' }]);
    const read = { type: 'BENCH_CURL_READ', answers: { curl: 'fellOut' } } as const;
    expect((await next.station.changeBenchTrial(id, 'Juno', read)).ok).toBe(true);
    expect(listBench(next)).toMatchObject([{ isRead: true, reading: { curl: 'fellOut', by: 'Juno' } }]);
  });

  it('lies whole in both copies, each in a log of its own', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    const ids = [await start(under), await start(under, 'dryWet')];
    const restored = await switchOn(tablet).store.restore();
    expect(restored.troubles).toEqual([]);
    expect(restored.mended).toEqual([]);
    for (const id of ids) expect(restored.logs.get(`bench-${id}`)).toHaveLength(1);
  });

  it('tells other windows, and is in a backup of the whole station', async () => {
    const under = await startSalon(makeTablet());
    const id = await start(under);
    expect(under.told.map(({ name }) => name)).toContain(`bench-${id}`);
    const file = [...under.station.backUp()].join('');
    const other = await startStation(makeTablet());
    expect((await other.station.bringIn(file)).ok).toBe(true);
    expect(listBench(other)).toEqual(listBench(under));
  });

  it('is taken back by name, and nothing is noted of it after that', async () => {
    const under = await startSalon(makeTablet());
    const id = await start(under, 'dryWet');
    const back = { what: 'trial', code: 'hasChanged', words: 'the iron was off' };
    const taken = await under.station.changeBenchTrial(id, 'Wren', {
      type: 'BENCH_TAKEN_BACK',
      answers: back,
    });
    expect(taken.ok).toBe(true);
    expect(listBench(under)).toMatchObject([{ takenBack: { by: 'Wren', words: 'the iron was off' } }]);
    under.clock.atMs += hour;
    const read = { dryPiece: 'slow', wetPiece: 'snaps' };
    const again = { type: 'BENCH_PIECES_READ', answers: read } as const;
    expect((await under.station.changeBenchTrial(id, 'Wren', again)).ok).toBe(false);
  });

  it('is refused by nobody, without its answers, where it is not known, and while another window writes', async () => {
    const under = await startSalon(makeTablet());
    const { station } = under;
    expect(await station.startBenchTrial('', { kind: 'dryWet', hair: 'unknown' })).toMatchObject({
      error: { kind: 'nobody' },
    });
    expect(await station.startBenchTrial('Opal', { kind: 'dryWet' })).toMatchObject({
      error: { kind: 'fields', fields: [{ path: 'hair', code: 'notAnswered' }] },
    });
    const out = { type: 'BENCH_TAKEN_OUT', answers: {} } as const;
    expect(await station.changeBenchTrial('nobody', 'Opal', out)).toMatchObject({
      error: { kind: 'notNow' },
    });
    await station.stopWriting();
    expect(await station.startBenchTrial('Opal', { kind: 'dryWet', hair: 'unknown' })).toMatchObject({
      error: { kind: 'notWriting' },
    });
    expect(listBench(under)).toEqual([]);
  });

  it('whose log is not what it claims to be is set aside and named, and the others stand', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    const id = await start(under);
    const { store } = switchOn(tablet);
    await store.restore();
    await store.append('bench-strange', 0, { v: 1, type: 'BENCH_READ_MINDS' } as Json);
    await store.release();
    const next = await startStation(tablet);
    expect(listBench(next).map((trial) => trial.id)).toEqual([id]);
    expect(next.station.readState().notices).toMatchObject([
      { kind: 'refusedLog', name: 'bench-strange', ticket: null, fault: { seq: 0, code: 'unknownType' } },
    ]);
    expect(next.station.readLogs().has('bench-strange')).toBe(false);
  });
});
