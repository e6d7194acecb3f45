import { describe, expect, it } from 'vitest';
import { makePower } from '../storage/power';
import { makeTablet } from '../storage/tablet';
import { type StationUnderTest, startSalon, startStation } from './stationUnderTest';

const hour = 3_600_000;

const open = async ({ station }: StationUnderTest, chair: string): Promise<string> => {
  const opened = await station.open('Opal', { ticket: 'Q.F.', chair });
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  return opened.value;
};

/** Put on within her visit; she does not agree that it is kept. */
async function putOnForVisit(under: StationUnderTest): Promise<string> {
  const id = await open(under, '1');
  const put = await under.station.submit(id, 'Opal', {
    type: 'SKIN_TEST_NOTED',
    answers: {
      method: 'makersMethod',
      site: 'behindEar',
      line: 'Sandbar cream',
      putOnAtMs: under.clock.atMs,
      seen: 'notReadYet',
      consent: 'thisVisit',
    },
  });
  if (!put.ok) throw new Error(JSON.stringify(put.error));
  return id;
}

const close = ({ station }: StationUnderTest, id: string) =>
  station.submit(id, 'Opal', { type: 'CLIENT_SAID_NO', answers: { reason: 'noTime' } });
const notedIn = ({ station }: StationUnderTest, id: string) =>
  station.readState().open.get(id)?.record.skinTest;
const factOf = ({ station }: StationUnderTest, id: string) =>
  station.readState().open.get(id)?.state.context.facts.skinTest;
const park = ({ station, clock }: StationUnderTest, id: string) =>
  station.submit(id, 'Opal', { type: 'PARKED', answers: { untilAtMs: clock.atMs + 48 * hour } });

describe('a skin test for this visit only', () => {
  it('stays where the visit goes on, though another tablet tells that it is over, and never goes there', async () => {
    const here = await startSalon(makeTablet());
    const id = await putOnForVisit(here);
    const moved = await startStation(makeTablet());
    await moved.station.bringIn([...here.station.backUp()].join(''));
    expect((await close(moved, id)).ok).toBe(true);
    await expect.poll(() => moved.station.readState().skinTests).toEqual([]);
    const told = await here.station.bringIn([...moved.station.backUp()].join(''));
    expect(told).toMatchObject({ value: { closed: 1, beside: { tests: 0, toldTwice: ['Q.F.'] } } });
    expect(here.station.readState().skinTests).toHaveLength(1);
    await moved.station.bringIn([...here.station.backUp()].join(''));
    expect(moved.station.readState().skinTests).toEqual([]);
    expect((await close(here, id)).ok).toBe(true);
    await expect.poll(() => here.station.readState().skinTests).toEqual([]);
  });

  it('counts while she is away, over a restart, and is read after its whole wait', async () => {
    const tablet = makeTablet();
    const before = await startSalon(tablet);
    const id = await putOnForVisit(before);
    expect((await park(before, id)).ok).toBe(true);
    await before.station.stopWriting();
    const under = await startStation(tablet, undefined, undefined, before.clock.atMs + 47 * hour);
    const { skinTest } = { skinTest: notedIn(under, id) };
    const readNow = () =>
      under.station.submit(id, 'Wren', {
        type: 'SKIN_TEST_NOTED',
        answers: { putOnAtMs: skinTest?.putOnAtMs, seen: 'nothing' },
      });
    expect(await readNow()).toMatchObject({ ok: false, error: { kind: 'skinTestTooEarly' } });
    under.clock.atMs += hour;
    expect((await readNow()).ok).toBe(true);
    expect(factOf(under, id)).toBe('clear');
  });

  it('is not found by her ticket while she is here, nor once she is done; then its log is gone', async () => {
    const tablet = makeTablet();
    const under = await startSalon(tablet);
    const id = await putOnForVisit(under);
    expect(notedIn(under, await open(under, '2'))).toBeNull();
    expect((await close(under, id)).ok).toBe(true);
    await under.station.stopWriting();
    expect(under.station.readState().skinTests).toEqual([]);
    expect([...under.station.readLogs().keys()].filter((name) => name.startsWith('skintest-'))).toEqual([]);
    const after = await startStation(tablet, undefined, undefined, under.clock.atMs);
    const next = await open(after, '3');
    expect(notedIn(after, next)).toBeNull();
  });

  it('is forgotten by the next start where the power went while she was closed, and not before she is', async () => {
    const seen = new Set<string>();
    for (let failsAt = 0; failsAt < 12; failsAt += 1) {
      const tablet = makeTablet();
      const before = await startSalon(tablet);
      const id = await putOnForVisit(before);
      await before.station.stopWriting();
      const cut = await startStation(tablet, makePower(failsAt), undefined, before.clock.atMs);
      await close(cut, id);
      await cut.station.stopWriting();
      const { station } = await startStation(tablet, undefined, undefined, before.clock.atMs);
      const { open: stillOpen, skinTests } = station.readState();
      expect(skinTests, `step ${failsAt}`).toHaveLength(stillOpen.has(id) ? 1 : 0);
      seen.add(stillOpen.has(id) ? 'open' : 'closed');
    }
    expect([...seen].sort()).toEqual(['closed', 'open']);
  });

  it('that reacts stops her, and her next visit too', async () => {
    const under = await startSalon(makeTablet());
    const id = await putOnForVisit(under);
    const [test] = under.station.readState().skinTests;
    const read = await under.station.changeSkinTest(test?.id ?? '', 'Wren', {
      type: 'SKIN_TEST_READ',
      answers: { seen: 'reaction' },
    });
    expect(read.ok).toBe(true);
    expect(notedIn(under, id)).toMatchObject({ seen: 'reaction' });
    expect((await close(under, id)).ok).toBe(true);
    await under.station.stopWriting();
    expect(under.station.readState().skinTests).toEqual([]);
    expect(under.station.readState().closed.at(-1)).toMatchObject({ hasStandingStop: true });
  });

  it('is refused where there is no visit it could count for', async () => {
    const under = await startSalon(makeTablet());
    const put = await under.station.putOnSkinTest('Opal', {
      ticket: 'Q.F.',
      method: 'makersMethod',
      site: 'behindEar',
      putOnAtMs: under.clock.atMs,
      seen: 'notReadYet',
      consent: 'thisVisit',
    });
    expect(put).toEqual({ ok: false, error: { kind: 'notNow' } });
  });
});
