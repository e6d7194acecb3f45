import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { documentErased } from '../../../../shared/records/documents/document';
import { accept } from '../../../../shared/result';
import { makeCouch } from '../../../../src/storage/replica/couch';
import { noReplica } from '../../../../src/storage/replica/replica';
import { world } from '../../../shared/records/documents/world';
import { type Database, openDatabase } from './database';
import { inventRecords, makeShelf, makeStationShelf } from './shelf';

let database: Database;
beforeEach(async () => {
  database = await openDatabase();
});
afterEach(() => database.close());

const quiet = { came: 0, went: 0, gone: 0, refused: [], later: [] };
const never = new AbortController().signal;
const erase = (...ids: string[]) =>
  documentErased({ v: 1, ids, atMs: Date.UTC(2026, 2, 4), by: 'Opal', code: 'sheAsked' });

describe('a replica', () => {
  it('leaves two stations that wrote apart from each other with the same set', async () => {
    const one = makeStationShelf(database, world.slice(0, 9));
    const other = makeStationShelf(database, world.slice(5));
    const alone = makeShelf(world);
    for (const station of [one, other, one]) expect((await station.exchange()).ok).toBe(true);
    expect(one.ids()).toEqual(alone.ids());
    expect(other.ids()).toEqual(alone.ids());
    // What says no more than another is looked at once; then nothing moves.
    for (const station of [one, other]) await station.exchange();
    expect([one.ids(), other.ids()]).toEqual([alone.ids(), alone.ids()]);
    for (const station of [one, other]) expect(await station.exchange()).toEqual(accept(quiet));
  });

  it('goes on from where it was when new records are written on both sides', async () => {
    const one = makeStationShelf(database, inventRecords(3, 'one'));
    const other = makeStationShelf(database, inventRecords(3, 'other'));
    await one.exchange();
    await other.exchange();
    one.add(inventRecords(5, 'one'));
    other.add(inventRecords(7, 'other'));
    expect(one.replica.countMissing(new Set(one.ids()))).toBe(2);
    expect(await one.exchange()).toEqual(accept({ ...quiet, came: 3, went: 2 }));
    expect(await other.exchange()).toEqual(accept({ ...quiet, came: 2, went: 4 }));
    expect(await one.exchange()).toEqual(accept({ ...quiet, came: 4 }));
    expect(one.digest()).toBe(other.digest());
  });

  it('takes an answer of 409 for success where exactly its content stands there', async () => {
    const [record, second] = [...inventRecords(2, 'same')];
    if (record === undefined || second === undefined) throw new Error('no record');
    const one = makeStationShelf(database, [record, second]);
    database.onAsked = async (_, path) => {
      if (!path.includes('_bulk_docs')) return;
      database.onAsked = null;
      await database.write({ _id: record.id, kind: record.kind, body: record.body });
    };
    expect(await one.exchange()).toEqual(accept({ ...quiet, went: 1 }));
    expect(one.replica.countMissing(new Set(one.ids()))).toBe(0);
    expect(await one.exchange()).toEqual(accept(quiet));
  });

  it('names what stands there under the same name with other content', async () => {
    const [record] = [...inventRecords(1, 'same')];
    if (record === undefined) throw new Error('no record');
    const one = makeStationShelf(database, [record]);
    database.onAsked = async (_, path) => {
      if (!path.includes('_bulk_docs')) return;
      database.onAsked = null;
      await database.write({ _id: record.id, kind: record.kind, body: { id: 'other' } });
    };
    const refused = [{ id: record.id, why: 'otherContent' }];
    expect(await one.exchange()).toEqual(accept({ ...quiet, refused }));
  });

  it('finds what somebody changed there after it was sent', async () => {
    const one = makeStationShelf(database, inventRecords(2, 'one'));
    await one.exchange();
    const [id = ''] = one.ids();
    const { _rev } = await (await database.ask(`/${encodeURIComponent(id)}`)).json();
    await database.write({ _id: id, _rev, kind: 'consultation', body: {} });
    expect(await one.exchange()).toEqual(accept({ ...quiet, refused: [{ id, why: 'otherContent' }] }));
    expect(one.ids()).toContain(id);
  });

  it('takes away there what is erased, and what a late station still sends of it', async () => {
    const records = [...inventRecords(3, 'late')];
    const erasing = erase('late000001');
    const one = makeStationShelf(database, records);
    const other = makeStationShelf(database, records);
    await one.exchange();
    await other.exchange();
    one.add([erasing]);
    expect(await one.exchange()).toEqual(accept({ ...quiet, went: 1, gone: 1 }));
    // Somebody who never looks sends it once more.
    await database.write(...records.map(({ id, kind, body }) => ({ _id: id, kind, body })));
    expect(await one.exchange()).toEqual(accept({ ...quiet, gone: 1 }));
    expect(await other.exchange()).toEqual(accept({ ...quiet, came: 1 }));
    expect(other.ids()).toEqual(one.ids());
    const left = await (await database.ask('/_all_docs')).json();
    expect(left.rows.map(({ id }: { id: string }) => id).sort()).toEqual(one.ids());
    const gone = await database.ask(`/${encodeURIComponent(records[1]?.id ?? '')}`);
    expect(gone.status).toBe(404);
  });

  it('never takes what is erased here, even from a station that knows no erasing', async () => {
    const records = [...inventRecords(3, 'late')];
    const one = makeStationShelf(database, [erase('late000001')]);
    await makeStationShelf(database, records).exchange();
    expect(await one.exchange()).toEqual(accept({ ...quiet, came: 2, went: 1, gone: 1 }));
    expect(one.ids().some((id) => id.includes('late000001'))).toBe(false);
  });

  it.each(['whole', 'empty'] as const)(
    'goes on after the server was killed in mid replication: %s',
    async (how) => {
      const one = makeStationShelf(database, inventRecords(180, 'one'));
      const other = makeStationShelf(database, inventRecords(120, 'two'));
      await other.exchange();
      let pieces = 0;
      database.onAsked = async (_, path) => {
        if (path.includes('_bulk_docs')) pieces += 1;
        if (pieces === 3) await database.kill();
      };
      expect(await one.exchange()).toEqual({ ok: false, error: 'silent' });
      expect(one.ids()).toHaveLength(300);
      database.onAsked = null;
      expect(await one.exchange()).toEqual({ ok: false, error: 'silent' });
      await database.rise(how);
      for (const station of [one, other, one]) expect((await station.exchange()).ok).toBe(true);
      expect(one.digest()).toBe(other.digest());
      const { doc_count } = await (await database.ask('')).json();
      expect(doc_count).toBe(300);
    },
  );

  it('offers again what the station could not write', async () => {
    await makeStationShelf(database, inventRecords(4, 'one')).exchange();
    const full = makeStationShelf(database);
    const refusing = { ...full.here, take: async () => ({ ok: false, error: 'notTaken' }) as const };
    expect(await full.replica.exchange(refusing, never)).toEqual({ ok: false, error: 'notTaken' });
    expect(await full.exchange()).toEqual(accept({ ...quiet, came: 4 }));
  });

  it('offers an erasing again that cannot be now, and neither sends nor brings what it names', async () => {
    const records = [...inventRecords(2, 'open')];
    const erasing = erase('open000000');
    await makeStationShelf(database, [erasing]).exchange();
    const one = makeStationShelf(database, records);
    const waiting = {
      ...one.here,
      isErased: (id: string) => id === 'open000000',
      isHeldBack: () => false,
      take: async () => accept({ refused: [], later: [erasing.id] }),
    };
    const later = [{ id: erasing.id, why: 'openHere' }] as const;
    expect(await one.replica.exchange(waiting, never)).toEqual(accept({ ...quiet, went: 1, later }));
    expect(await one.exchange()).toEqual(accept({ ...quiet, came: 1 }));
    expect(one.ids()).toEqual([erasing.id, records[1]?.id].sort());
  });

  it('stops when it is told to', async () => {
    const one = makeStationShelf(database, inventRecords(4, 'one'));
    const stop = new AbortController();
    database.onAsked = (_, path) => {
      if (path.includes('_bulk_docs')) stop.abort();
    };
    expect(await one.replica.exchange(one.here, stop.signal)).toEqual({ ok: false, error: 'stopped' });
    database.onAsked = null;
    expect((await one.exchange()).ok).toBe(true);
  });

  it('is off where there is none, and says nothing of what is missing there', async () => {
    const shelf = makeShelf(inventRecords(1, 'one'));
    const notThere = makeCouch({ base: database.base.replace('/replica/', '/elsewhere/'), fetch });
    expect(await notThere.exchange(shelf.here, never)).toEqual({ ok: false, error: 'off' });
    expect(await noReplica.exchange(shelf.here, never)).toEqual({ ok: false, error: 'off' });
    expect(notThere.countMissing(new Set(shelf.ids()))).toBeNull();
  });
});
