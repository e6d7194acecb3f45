import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { judgeSkinTest } from '../../../shared/judgement/skinTest';
import { listDocuments } from '../../../shared/records/documents/listDocuments';
import { listHeld } from '../../../src/station/merging';
import { makeTablet, type Tablet } from '../storage/tablet';
import { play, type StationUnderTest, startAtMs, startStation } from './stationUnderTest';

const by = 'Opal';
const minute = 60_000;
const hour = 60 * minute;
/** So far is the other tablet's clock behind. */
const behindMs = 20 * hour;

async function start(idBegins: string, tablet: Tablet = makeTablet()) {
  const under = await startStation(tablet, undefined, undefined, undefined, idBegins);
  await under.station.saveSettings(by, salon);
  return under;
}

const putOn = async ({ station, clock }: StationUnderTest): Promise<string> => {
  const put = await station.putOnSkinTest(by, {
    ...{ ticket: 'Q.F.', method: 'makersMethod', site: 'behindEar', line: '', seen: 'notReadYet' },
    putOnAtMs: clock.atMs,
  });
  if (!put.ok) throw new Error(JSON.stringify(put.error));
  return put.value;
};
const read = ({ station }: StationUnderTest, id: string, seen = 'nothing') =>
  station.changeSkinTest(id, by, { type: 'SKIN_TEST_READ', answers: { seen } });
const share = ({ station }: StationUnderTest) => [
  ...listDocuments(listHeld(station.readLogs()), station.readSettings()),
];
const take = (to: StationUnderTest, from: StationUnderTest) => to.station.takeDocuments(share(from));
const name = (under: StationUnderTest) => share(under).map(({ id }) => id);
const seenAt = ({ station }: StationUnderTest) => station.readState().skinTests.map(({ seen }) => seen);

/** A test put on there, at a tablet that is behind, which comes in here ten minutes later. */
async function arrive(tablet: Tablet = makeTablet()) {
  const there = await start('there');
  const here = await start('here', tablet);
  here.clock.atMs = startAtMs + 30 * hour;
  there.clock.atMs = here.clock.atMs - behindMs;
  const id = await putOn(there);
  here.clock.atMs += 10 * minute;
  there.clock.atMs += 10 * minute;
  await take(here, there);
  return { there, here, id, cameAtMs: here.clock.atMs };
}

describe('a skin test that came in from another station', () => {
  it('is read here only after its whole wait since it came in, whatever the clock there said', async () => {
    const { here, id, cameAtMs } = await arrive();
    here.clock.atMs = cameAtMs + 48 * hour - minute;
    const readableAtMs = cameAtMs + 48 * hour;
    expect(await read(here, id)).toEqual({ ok: false, error: { kind: 'skinTestTooEarly', readableAtMs } });
    here.clock.atMs = readableAtMs;
    expect(await read(here, id)).toMatchObject({ ok: true });
    expect(seenAt(here)).toEqual(['nothing']);
  });

  it('is read there after its wait as ever, and what was read there counts here as it comes in', async () => {
    const { there, here, id, cameAtMs } = await arrive();
    there.clock.atMs = cameAtMs - behindMs - 10 * minute + 48 * hour;
    here.clock.atMs = there.clock.atMs + behindMs;
    expect(await read(there, id)).toMatchObject({ ok: true });
    await take(here, there);
    expect(seenAt(here)).toEqual(['nothing']);
    const client = await play(here, [
      { afterMs: 0, by, raw: { type: 'OPENED', answers: { ticket: 'Q.F.', chair: '3' } } },
    ]);
    const record = here.station.readState().open.get(client)?.record;
    if (record === undefined) throw new Error('not open');
    expect(judgeSkinTest(record, salon.profile, here.clock.atMs)).toBe('clear');
  });

  it('waits since it first came in, after a restart and however often it comes in again', async () => {
    const tablet = makeTablet();
    const { there, here, id, cameAtMs } = await arrive(tablet);
    here.clock.atMs += 5 * hour;
    there.clock.atMs += 5 * hour;
    await take(here, there);
    await read(there, id, 'reaction');
    const takenBack = { what: 'reading', code: 'wrongTap', words: 'another client' };
    await there.station.changeSkinTest(id, by, { type: 'SKIN_TEST_TAKEN_BACK', answers: takenBack });
    await take(here, there);
    const again = await startStation(tablet);
    again.clock.atMs = cameAtMs + 48 * hour - 1;
    expect(await read(again, id)).toMatchObject({ error: { readableAtMs: cameAtMs + 48 * hour } });
    again.clock.atMs += 1;
    expect(await read(again, id)).toMatchObject({ ok: true });
    expect((await startStation(tablet)).station.readState()).toMatchObject({
      skinTests: [{ seen: 'nothing' }],
      notices: [],
    });
  });

  it('is told on as it was told here, under the same name', async () => {
    const { there, here } = await arrive();
    expect(name(here)).toEqual(name(there));
    await take(there, here);
    expect(name(there)).toEqual(name(here));
    expect(there.station.readState().skinTests[0]?.cameAtMs).toBeUndefined();
  });

  it('that came back to where it was put on waits there as ever', async () => {
    const { there, here, id, cameAtMs } = await arrive();
    await read(here, id, 'reaction');
    const takenBack = { what: 'reading', code: 'wrongTap', words: 'another client' };
    await here.station.changeSkinTest(id, by, { type: 'SKIN_TEST_TAKEN_BACK', answers: takenBack });
    await take(there, here);
    expect(seenAt(there)).toEqual(['notReadYet']);
    there.clock.atMs = cameAtMs + 48 * hour - 10 * minute;
    expect(await read(there, id)).toMatchObject({ ok: true });
  });

  it('tells whoever is open for its ticket since when it is here, and is not read through her either', async () => {
    const { here, cameAtMs } = await arrive();
    const client = await play(here, [
      { afterMs: minute, by, raw: { type: 'OPENED', answers: { ticket: 'Q.F.', chair: '3' } } },
    ]);
    const noted = () => here.station.readState().open.get(client)?.record.skinTest;
    expect(noted()).toMatchObject({ seen: 'notReadYet', cameAtMs });
    const { method, site, putOnAtMs } = noted() ?? {};
    const reading = {
      type: 'SKIN_TEST_NOTED',
      answers: { method, site, putOnAtMs, seen: 'nothing' },
    } as const;
    here.clock.atMs = cameAtMs + 48 * hour - 1;
    expect(await here.station.submit(client, by, reading)).toMatchObject({
      error: { kind: 'skinTestTooEarly', readableAtMs: cameAtMs + 48 * hour },
    });
    here.clock.atMs += 1;
    expect(await here.station.submit(client, by, reading)).toMatchObject({ ok: true });
    const record = here.station.readState().open.get(client)?.record;
    if (record === undefined) throw new Error('not open');
    expect(judgeSkinTest(record, salon.profile, here.clock.atMs)).toBe('clear');
    // Under a longer wait it was read too early here, though the clock there says otherwise.
    const longer = { ...salon.profile, skinTestWaitH: 60 };
    expect(judgeSkinTest(record, longer, here.clock.atMs)).toBe('waiting');
  });

  it('has come in no earlier where the clock here is said to have been put ahead since', async () => {
    const { here, id, cameAtMs } = await arrive();
    here.clock.atMs += 6 * hour;
    await here.station.sayPutAhead(by, { atMs: here.clock.atMs, aheadMs: 5 * hour });
    here.clock.atMs = cameAtMs + 53 * hour - 1;
    expect(await read(here, id)).toMatchObject({ error: { readableAtMs: cameAtMs + 53 * hour } });
    here.clock.atMs += 1;
    expect(await read(here, id)).toMatchObject({ ok: true });
  });
});
