import { entries, promisifyRequest } from 'idb-keyval';
import { type Result, refuse } from '../../shared/result';
import type { AsideNote, AsideReason } from './asideNote';
import type { Answer, IndexCopy } from './copies';
import { attempt, type CopyFailure } from './copyFailure';
import { ASSUMED_PATIENCE_MS, waitAtMost } from './patience';
import {
  type IndexPair,
  readAsideKey,
  readIndexAll,
  readIndexLog,
  readKeyEnds,
  writeAsideKey,
  writeKey,
} from './readIndex';
import { finish, type StrictStore } from './strictStore';

/**
 * The index: every line of every log under its own key, and what was set aside under `aside:` keys.
 * Each call is one transaction: all of it or none. A connection that is silent beyond the patience is let go, so that
 * the next call opens another. Checked in tests/src/storage/indexCopy.test.ts.
 */
export const makeIndexCopy = (store: StrictStore, patienceMs: number = ASSUMED_PATIENCE_MS): IndexCopy => {
  const ask = <T>(work: () => Promise<T>): Answer<T> =>
    waitAtMost<Result<T, CopyFailure>>(attempt('index', work), patienceMs, () => {
      store.close();
      return refuse({ copy: 'index', kind: 'timedOut', detail: `no answer within ${patienceMs} ms` });
    });

  const replace = (name: string, reason: AsideReason, lines: readonly string[]): Promise<AsideNote | null> =>
    store.use('readwrite', async (place) => {
      const done = finish(place.transaction);
      done.catch(() => undefined);
      const held = await readPairs(place, name);
      const earlier = await promisifyRequest(
        place.getAllKeys(range([`aside:${name}:`, `aside:${name}:\uffff`])),
      );
      const kept = writeAsideKey(name, reason, earlier.length + 1);
      if (held.length > 0) {
        place.add(held, kept);
        place.delete(range(readKeyEnds(name)));
      }
      addLines(place, name, 0, lines);
      await done;
      return held.length === 0 ? null : { name, copy: 'index', reason, kept };
    });

  return {
    readAll: () => ask(async () => readIndexAll(await entries<IDBValidKey, unknown>(store.use))),

    read: (name) =>
      ask(() => store.use('readonly', async (place) => readIndexLog(await readPairs(place, name)))),

    append: (name, from, lines) =>
      ask(() =>
        store.use('readwrite', (place) => {
          const done = finish(place.transaction);
          addLines(place, name, from, lines);
          return done;
        }),
      ),

    setAside: (name, reason) => ask(() => replace(name, reason, [])),

    replace: (name, reason, lines) => ask(() => replace(name, reason, lines)),

    remove: (name) =>
      ask(() =>
        store.use('readwrite', (place) => {
          const done = finish(place.transaction);
          place.delete(range(readKeyEnds(name)));
          return done;
        }),
      ),

    exchange: (name, lines) =>
      ask(() =>
        store.use('readwrite', (place) => {
          const done = finish(place.transaction);
          place.delete(range(readKeyEnds(name)));
          addLines(place, name, 0, lines);
          return done;
        }),
      ),

    listAside: () =>
      ask(() =>
        store.use('readonly', async (place) => {
          const keys = await promisifyRequest(place.getAllKeys(range(['aside:', 'aside:\uffff'])));
          return keys.map(readAsideKey).filter((note) => note !== null);
        }),
      ),

    close: () => ask(async () => store.close()),
  };
};

const range = ([low, high]: readonly [string, string]): IDBKeyRange => IDBKeyRange.bound(low, high);

const readPairs = async (place: IDBObjectStore, name: string): Promise<readonly IndexPair[]> => {
  const ends = range(readKeyEnds(name));
  const keys = promisifyRequest(place.getAllKeys(ends));
  const values = promisifyRequest<unknown[]>(place.getAll(ends));
  const held = await values;
  return (await keys).map((key, at) => [key, held[at]] as const);
};

const addLines = (place: IDBObjectStore, name: string, from: number, lines: readonly string[]): void => {
  for (const [at, line] of lines.entries()) place.add(line, writeKey(name, from + at));
};
