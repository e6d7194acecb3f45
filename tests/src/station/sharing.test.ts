import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { RawEvent } from '../../../shared/records/classify';
import { documentConsultation, documentErased } from '../../../shared/records/documents/document';
import { makeHeldDocuments } from '../../../src/station/heldDocuments';
import { inheritsStop } from '../../../src/station/inheritsStop';
import { type Database, openDatabase } from '../storage/replica/database';
import { inventRecords } from '../storage/replica/shelf';
import { startSharing } from './sharingStation';
import { play, type StationUnderTest, startStation } from './stationUnderTest';

const by = 'Opal';
const minute = 60_000;
const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };

let database: Database;
beforeEach(async () => {
  database = await openDatabase();
});
afterEach(() => database.close());

const start = (idBegins: string) => startSharing(database, idBegins);

/** One visit of this ticket, told so; over, unless it is left open. */
const visit = (under: StationUnderTest, ticket: string, ...raws: readonly RawEvent[]): Promise<string> =>
  play(under, [
    { afterMs: minute, by, raw: { type: 'OPENED', answers: { ticket, chair: '3' } } },
    ...raws.map((raw) => ({ afterMs: minute, by, raw })),
  ]);

describe('stations that share', () => {
  it('end with the same records, whose stop is met at either of them', async () => {
    const one = await start('one');
    const other = await start('other');
    await visit(one, 'Q.F.', hives, callOff);
    await visit(other, 'A.K.', callOff);
    for (const station of [one, other, one]) await station.exchange();
    expect(await one.listIds()).toEqual(await other.listIds());
    for (const { station } of [one, other]) {
      expect(
        station
          .readState()
          .closed.map(({ ticketKey }) => ticketKey)
          .sort(),
      ).toEqual(['AK', 'QF']);
      expect([inheritsStop(station.readState(), 'QF'), inheritsStop(station.readState(), 'AK')]).toEqual([
        true,
        false,
      ]);
    }
    const again = await startStation(other.tablet);
    expect(again.station.readState().closed).toHaveLength(2);
    expect(again.station.readState().notices).toEqual([]);
  });

  it('leave whoever is open at her station, until she is closed', async () => {
    const one = await start('one');
    const other = await start('other');
    const id = await visit(one, 'Q.F.', hives);
    for (const station of [one, other]) await station.exchange();
    expect(other.station.readState().closed).toEqual([]);
    await one.station.submit(id, by, callOff);
    for (const station of [one, other]) await station.exchange();
    expect(other.station.readState().closed.map((each) => each.id)).toEqual([id]);
    expect(other.station.readState().open.size).toBe(0);
  });

  it('erase at all of them what is erased at one, which waits where somebody of the ticket is open', async () => {
    const one = await start('one');
    const other = await start('other');
    const id = await visit(one, 'Q.F.', callOff);
    await visit(one, 'A.K.', callOff);
    for (const station of [one, other]) await station.exchange();
    const open = await visit(other, 'q f');
    expect(await one.station.erase(by, { ids: [id], code: 'sheAsked' })).toMatchObject({ ok: true });
    expect(await one.exchange()).toMatchObject({ gone: 1 });
    expect(await other.exchange()).toMatchObject({ came: 0, went: 0, later: [{ why: 'openHere' }] });
    expect(other.station.readState().closed).toHaveLength(2);
    await other.station.submit(open, by, callOff);
    expect(await other.exchange()).toMatchObject({ came: 1, went: 1 });
    expect(other.station.readState().closed.map((each) => each.id)).not.toContain(id);
    await one.exchange();
    expect(await one.listIds()).toEqual(await other.listIds());
  });

  it('keep what another house erased for its age for as long as this one keeps it, and send it no more', async () => {
    const one = await start('one');
    const other = await start('other');
    const id = await visit(one, 'Q.F.', callOff);
    for (const station of [one, other]) await station.exchange();
    await one.station.erase(by, { ids: [id], code: 'keptLongEnough' });
    expect(await one.exchange()).toMatchObject({ gone: 1 });
    expect(await other.exchange()).toMatchObject({ came: 1, went: 0, later: [], refused: [] });
    expect(other.station.readState().closed.map((each) => each.id)).toEqual([id]);
    for (const _again of [1, 2]) {
      expect(await one.exchange()).toMatchObject({ came: 0, gone: 0 });
      expect(await other.exchange()).toMatchObject({ came: 0, went: 0 });
    }
    expect(one.station.readState().closed).toEqual([]);
    expect((await one.listIds()).some((name) => name.includes(id))).toBe(false);
    expect((await other.listIds()).some((name) => name.includes(id))).toBe(true);
  });

  it('judge anew what comes in, and leave out by name what could not have been tapped', async () => {
    const one = await start('one');
    const [good] = [...inventRecords(1, 'good')];
    if (good === undefined) throw new Error('no record');
    const [opened, ...rest] = good.body.log;
    const forged = documentConsultation({ ...good.body, id: 'evil0001', log: [opened, ...rest.slice(2)] });
    const cut = documentConsultation({ ...good.body, id: 'evil0002', log: good.body.log.slice(0, -1) });
    await database.write(...[forged, cut, good].map(({ id, kind, body }) => ({ _id: id, kind, body })));
    one.clock.atMs += 365 * 24 * 60 * minute;
    const { came, refused } = await one.exchange();
    expect(came).toBe(1);
    expect([...refused].sort((a, b) => (a.id < b.id ? -1 : 1))).toEqual(
      [forged, cut].map(({ id }) => ({ id, why: 'notJudged' })),
    );
    expect(one.station.readState().closed.map(({ id }) => id)).toEqual([good.body.id]);
  });

  it('stop whose record lies there in a form of a newer edition, and look at it once', async () => {
    const one = await start('one');
    const [good] = [...inventRecords(1, 'good')];
    if (good === undefined) throw new Error('no record');
    const newer = documentConsultation(Object.assign({ addedLater: 1 }, good.body));
    await database.write({ _id: newer.id, kind: newer.kind, body: newer.body });
    one.clock.atMs += 365 * 24 * 60 * minute;
    for (const _again of [1, 2])
      expect(await one.exchange()).toMatchObject({ came: 0, refused: [{ id: newer.id, why: 'newer' }] });
    const { unjudged = [] } = one.station.readState();
    expect(unjudged.map(({ id, why }) => [id, why])).toEqual([[good.body.id, 'newer']]);
    expect(inheritsStop(one.station.readState(), unjudged[0]?.ticket ?? '')).toBe(true);
  });

  it('name what lies more than a day after this clock, until it does no longer', async () => {
    const one = await start('one');
    const other = await start('other');
    other.clock.atMs += 3 * 24 * 60 * minute;
    const id = await visit(other, 'Q.F.', callOff);
    await other.exchange();
    for (const _again of [1, 2]) {
      const { came, refused, later } = await one.exchange();
      expect([came, refused, later.map(({ why }) => why)]).toEqual([0, [], ['fromLater']]);
      expect(later[0]?.id).toContain(id);
    }
    one.clock.atMs = other.clock.atMs;
    expect(await one.exchange()).toMatchObject({ came: 1, later: [] });
  });

  it('take nothing while another window writes', async () => {
    const one = await start('one');
    await one.station.stopWriting();
    const erasing = documentErased({ v: 1, ids: ['abcd'], atMs: 1, by, code: 'sheAsked' });
    expect(await one.station.takeDocuments([erasing])).toEqual({ ok: false, error: 'notTaken' });
  });

  it('share a skin test as it goes on, and none that counts for one visit', async () => {
    const one = await start('one');
    const other = await start('other');
    const put = await one.station.putOnSkinTest(by, {
      ...{ ticket: 'Q.F.', method: 'makersMethod', site: 'behindEar', line: '', seen: 'notReadYet' },
      putOnAtMs: one.clock.atMs,
    });
    if (!put.ok) throw new Error(JSON.stringify(put.error));
    for (const station of [one, other]) await station.exchange();
    expect(other.station.readState().skinTests.map(({ id, seen }) => [id, seen])).toEqual([
      [put.value, 'notReadYet'],
    ]);
    one.clock.atMs += 49 * 60 * minute;
    other.clock.atMs = one.clock.atMs;
    const reading = { type: 'SKIN_TEST_READ', answers: { seen: 'reaction' } } as const;
    expect(await one.station.changeSkinTest(put.value, by, reading)).toMatchObject({ ok: true });
    for (const station of [one, other, one]) await station.exchange();
    expect(other.station.readState().skinTests.map(({ seen }) => seen)).toEqual(['reaction']);
    expect(await one.listIds()).toEqual(await other.listIds());
  });
});

describe('the documents of a station', () => {
  it('are read by the names they were given, and each is named once', async () => {
    const one = await start('one');
    await visit(one, 'Q.F.', callOff);
    let read = 0;
    const { held, find } = one.station.readHeld();
    const documents = makeHeldDocuments(() => ({
      held,
      find: (id) => {
        read += 1;
        return find(id);
      },
    }));
    const ids = [...(await documents.readIds())];
    expect(documents.read(ids).map(({ id }) => id)).toEqual(ids);
    expect(documents.read(['consultation:none'])).toEqual([]);
    read = 0;
    await documents.readIds();
    expect(read).toBe(0);
  });

  it('are passed over in turns with whatever else is to be done, where nothing is new', async () => {
    const erased = Array.from({ length: 5000 }, (_none, index) => ({ index }));
    const documents = makeHeldDocuments(() => ({
      held: { closed: [], skinTests: [], erased },
      find: () => salon,
    }));
    expect((await documents.readIds()).size).toBe(5000);
    // Each piece seems to take 20 ms, so that after each the others have their turn.
    let atMs = 0;
    const clock = vi.spyOn(performance, 'now').mockImplementation(() => {
      atMs += 20;
      return atMs;
    });
    const turn = vi.spyOn(globalThis, 'setTimeout');
    expect((await documents.readIds()).size).toBe(5000);
    expect(turn.mock.calls.length).toBe(5);
    clock.mockRestore();
    turn.mockRestore();
  });
});
