import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import type { Json } from '../../../src/storage/json';
import { makeTablet, switchOn, type Tablet } from '../storage/tablet';
import { play, startSalon, startStation } from './stationUnderTest';

type Entry = { readonly [key: string]: Json };

/** A tablet whose one open log was written whole and well, but says what a person with tools made it say. */
async function tamper(change: (log: readonly Entry[]) => readonly Json[]): Promise<Tablet> {
  const honest = await startSalon(makeTablet());
  const id = await play(honest, endsIronedWet.steps.slice(0, -1));
  const log = (honest.station.readLogs().get(`open-${id}`) ?? []) as readonly Entry[];
  const tablet = makeTablet();
  const { store } = switchOn(tablet);
  await store.restore();
  const settings = honest.station.readLogs().get('settings') ?? [];
  for (const [seq, entry] of settings.entries()) await store.append('settings', seq, entry);
  for (const [seq, entry] of change(log).entries()) await store.append(`open-${id}`, seq, entry);
  await store.release();
  return tablet;
}

const without = (type: string) => (log: readonly Entry[]) => log.filter((entry) => entry.type !== type);
const changed =
  (type: string, change: (entry: Entry) => Entry) =>
  (log: readonly Entry[]): readonly Entry[] =>
    log.map((entry) => (entry.type === type ? change(entry) : entry));

describe('a log edited by hand', () => {
  it('and left as it was is taken up', async () => {
    const { station } = await startStation(await tamper((log) => log));
    expect(station.readState().open.size).toBe(1);
    expect(station.readState().notices).toStrictEqual([]);
  });

  it.each([
    ['claims a mix without an outcome', without('OUTCOME_RECORDED'), 'notNow'],
    ['claims a mix without a decision', without('DECIDED'), 'notNow'],
    ['claims a mix without any strand', without('STRAND_STARTED'), 'notNow'],
    [
      'says "never a reaction" in its tokens and not in its answers',
      changed('ANSWERED', (entry) => ({
        ...entry,
        payload: {
          step: 'client',
          answers: { ...((entry.payload as Entry).answers as Entry), reactions: ['hives'] },
        },
      })),
      'saysOtherwise',
    ],
    [
      'has a level that no hair has',
      changed('OUTCOME_RECORDED', (entry) => ({
        ...entry,
        payload: { ...(entry.payload as Entry), level: 11 },
      })),
      'badPayload',
    ],
    [
      'calls the gummy ends sound in its tokens',
      changed('OUTCOME_RECORDED', (entry) => ({
        ...entry,
        tokens: { ...(entry.tokens as Entry), fibre: 'sound' },
      })),
      'saysOtherwise',
    ],
    [
      'weighs a stronger bowl than was tested',
      changed('BOWL_WEIGHED', (entry) => ({
        ...entry,
        payload: { ...(entry.payload as Entry), developerPercent: 12 },
      })),
      'bowlTooStrong',
    ],
    [
      'is of a version from later',
      changed('DECIDED', (entry) => ({ ...entry, v: 2, extra: true })),
      'newerVersion',
    ],
    ['is of an unknown type', changed('DECIDED', (entry) => ({ ...entry, type: 'BLESSED' })), 'unknownType'],
    ['goes back in time', changed('DECIDED', (entry) => ({ ...entry, atMs: 1000 })), 'wentBackInTime'],
  ] as const)('that %s is set aside, named, and not deleted', async (_, change, code) => {
    const tablet = await tamper(change);
    const { station } = await startStation(tablet);
    const state = station.readState();
    expect(state.mode).toBe('writing');
    expect(state.open.size).toBe(0);
    expect(state.notices).toMatchObject([{ kind: 'refusedLog', ticket: 'Q.F.', fault: { code } }]);
    const kept = await switchOnAgain(tablet);
    expect(kept).toMatchObject([
      { reason: code === 'newerVersion' ? 'unknownVersion' : 'refused', copy: 'journal' },
      { reason: code === 'newerVersion' ? 'unknownVersion' : 'refused', copy: 'index' },
    ]);
  });
});

const switchOnAgain = async (tablet: Tablet) => {
  const { store } = switchOn(tablet);
  await store.restore();
  return store.listAside();
};
