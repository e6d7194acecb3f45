import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { digest } from '../../../../shared/records/documents/canonical';
import { accept } from '../../../../shared/result';
import { makeCouch } from '../../../../src/storage/replica/couch';
import { type Database, openDatabase } from './database';
import { inventRecords, makeShelf, makeStationShelf } from './shelf';

let database: Database;
beforeEach(async () => {
  database = await openDatabase();
});
afterEach(() => database.close());

const [good, second] = [...inventRecords(2, 'good')];
if (good === undefined || second === undefined) throw new Error('no record');
const row = { _id: good.id, kind: good.kind, body: good.body };
const otherName = second.id;

/** A row whose name is really that of its content, whatever that is. */
const named = (kind: string, recordId: string, body: unknown) => ({
  _id: `${kind}:${recordId}:${digest(body)}`,
  kind,
  body,
});

describe('what lies poisoned in a database', () => {
  it.each([
    ['another content than its name says', { ...row, body: { ...good.body, settings: [] } }, 'damaged'],
    ['the content of another record', { ...row, _id: otherName }, 'damaged'],
    ['another kind', { ...row, kind: 'skinTest' }, 'damaged'],
    ['no content', { _id: good.id }, 'damaged'],
    ['a list', { ...row, body: [] }, 'damaged'],
    ['a text', { ...row, body: 'x' }, 'damaged'],
    ['a name that is none', { ...row, _id: 'consultation:../../x:0' }, 'foreign'],
    ['a name with capitals', { ...row, _id: good.id.toUpperCase() }, 'foreign'],
    ['somebody’s own document', { _id: 'notes', text: 'hello' }, 'foreign'],
    ['a true name of no record', named('consultation', 'evil0001', { id: 'evil0001', log: [] }), 'newer'],
    ['a true name of half a skin test', named('skinTest', 'evil0001', { id: 'evil0001', log: [1] }), 'newer'],
    ['a record of another id', named('consultation', 'evil0001', { ...good.body }), 'damaged'],
  ] as const)('is refused by name, and never taken: %s', async (_, doc, why) => {
    const one = makeStationShelf(database);
    await database.write(doc, { _id: second.id, kind: second.kind, body: second.body });
    const done = await one.exchange();
    const refused = done.ok ? done.value.refused : [];
    expect(refused).toContainEqual({ id: doc._id, why });
    expect(one.ids()).toEqual(doc._id === otherName ? [] : [second.id]);
    // Named as long as it lies there, asked for once.
    const asked: string[] = [];
    database.onAsked = (method) => void asked.push(method);
    expect(await one.exchange()).toEqual(accept({ came: 0, went: 0, gone: 0, refused, later: [] }));
    expect(asked.filter((method) => method === 'POST')).toEqual([]);
  });

  it('is refused where its content would reach for what all objects share', async () => {
    await database.write(row);
    const shelf = makeShelf();
    const poisoning: typeof fetch = async (address, how) => {
      const answer = await fetch(address, how);
      const text = await answer.text();
      return new Response(text.replaceAll('"settings":', '"__proto__":{"isPoisoned":true},"settings":'));
    };
    const replica = makeCouch({ base: database.base, fetch: poisoning });
    const done = await replica.exchange(shelf.here, new AbortController().signal);
    const refused = [{ id: good.id, why: 'damaged' }];
    expect(done).toEqual(accept({ came: 0, went: 0, gone: 0, refused, later: [] }));
    expect(({} as { isPoisoned?: boolean }).isPoisoned).toBeUndefined();
  });

  it('is passed over where it is too large alone, and holds up nothing else', async () => {
    const records = [...inventRecords(6, 'usual')];
    const other = makeStationShelf(database, records);
    await other.exchange();
    const huge = { ...row, body: { ...good.body, more: 'x'.repeat(400_000) } };
    await database.write(huge);
    const shelf = makeShelf();
    const replica = makeCouch({ base: database.base, fetch, maxBytes: 390_000 });
    const done = await replica.exchange(shelf.here, new AbortController().signal);
    expect(done).toEqual(
      accept({ came: 6, went: 0, gone: 0, refused: [{ id: good.id, why: 'tooLarge' }], later: [] }),
    );
    expect(shelf.ids()).toEqual(other.ids());
  });

  it('is no database where something else answers', async () => {
    const shelf = makeShelf(records());
    const answers = (text: string, status = 200) =>
      makeCouch({ base: 'http://127.0.0.1/replica/', fetch: async () => new Response(text, { status }) });
    const never = new AbortController().signal;
    for (const text of ['<!doctype html>', '', '[]', '{"db_name":1}', '{"db_name":"a","doc_count":-1}']) {
      expect(await answers(text).exchange(shelf.here, never)).toEqual({ ok: false, error: 'off' });
    }
    for (const status of [500, 502, 503]) {
      expect(await answers('{}', status).exchange(shelf.here, never)).toEqual({ ok: false, error: 'gone' });
    }
  });

  it('is said where a database that was one answers nonsense', async () => {
    let isMad = false;
    const replica = makeCouch({
      base: database.base,
      fetch: (address, how) => (isMad ? Promise.resolve(new Response('{"rows":7}')) : fetch(address, how)),
    });
    const shelf = makeShelf(records());
    const never = new AbortController().signal;
    expect((await replica.exchange(shelf.here, never)).ok).toBe(true);
    isMad = true;
    expect(await replica.exchange(shelf.here, never)).toEqual({ ok: false, error: 'strange' });
  });

  it('is not waited for', async () => {
    const shelf = makeShelf(records());
    const silent: typeof fetch = (_, how) =>
      new Promise((_resolve, reject) => {
        how?.signal?.addEventListener('abort', () => reject(how.signal?.reason));
      });
    const replica = makeCouch({ base: 'http://127.0.0.1/replica/', fetch: silent, waitMs: 20 });
    expect(await replica.exchange(shelf.here, new AbortController().signal)).toEqual({
      ok: false,
      error: 'gone',
    });
  });
});

const records = () => inventRecords(2, 'mine');
