import { promisifyRequest } from 'idb-keyval';
import { type Result, refuse } from '../../shared/result';
import type { AsideNote, AsideReason } from './asideNote';
import type { Answer, CopyContents, IndexCopy } from './copies';
import { attempt, type CopyFailure } from './copyFailure';
import { ASSUMED_PATIENCE_MS, waitAtMost } from './patience';
import {
  type IndexPair,
  readAsideKey,
  readIndexAll,
  readIndexLog,
  readKeyEnds,
  readKeyName,
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
    readAll: (begin) =>
      ask(() =>
        begin === null
          ? store.use('readonly', async (place) => ({
              ...readIndexAll(await readRange(place, undefined)),
              later: [],
            }))
          : store.use('readonly', (place) => readAllBut(place, begin)),
      ),

    read: (name, known) => ask(async () => readIndexLog(await readInPieces(store, name), known)),

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

const readRange = async (
  place: IDBObjectStore,
  ends: IDBKeyRange | undefined,
  atMost?: number,
): Promise<readonly IndexPair[]> => {
  const keys = promisifyRequest(place.getAllKeys(ends, atMost));
  const values = promisifyRequest<unknown[]>(place.getAll(ends, atMost));
  const held = await values;
  return (await keys).map((key, at) => [key, held[at]] as const);
};

/** So many lines are read at one go. Assumed because whoever writes in between waits for a piece, and is not to feel it. */
const ASSUMED_PIECE = 200;

const readInPieces = async (store: StrictStore, name: string): Promise<readonly IndexPair[]> => {
  const [low, high] = readKeyEnds(name);
  const held: IndexPair[] = [];
  for (let from: IDBValidKey = low; ; ) {
    const ends = IDBKeyRange.bound(from, high, held.length > 0);
    const piece = await store.use('readonly', (place) => readRange(place, ends, ASSUMED_PIECE));
    held.push(...piece);
    const last = piece[ASSUMED_PIECE - 1];
    if (last === undefined) return held;
    from = last[0] as IDBValidKey;
  }
};

const readPairs = (place: IDBObjectStore, name: string): Promise<readonly IndexPair[]> =>
  readRange(place, range(readKeyEnds(name)));

/** Everything but the logs whose names begin so; of those the names, from one to the next without reading any. */
const readAllBut = async (place: IDBObjectStore, begin: string): Promise<CopyContents> => {
  const [low, high] = [`log:${begin}`, `log:${begin}\uffff`];
  const before = readRange(place, IDBKeyRange.upperBound(low, true));
  const after = readRange(place, IDBKeyRange.lowerBound(high, true));
  const { later, strangers } = await readNames(place, range([low, high]));
  const rest = readIndexAll([...(await before), ...(await after)]);
  return { ...rest, later, strangers: [...rest.strangers, ...strangers] };
};

const readNames = (
  place: IDBObjectStore,
  ends: IDBKeyRange,
): Promise<Pick<CopyContents, 'later' | 'strangers'>> =>
  new Promise((resolve, reject) => {
    const later: string[] = [];
    const strangers: string[] = [];
    const walk = place.openKeyCursor(ends);
    walk.onerror = () => reject(walk.error);
    walk.onsuccess = () => {
      const cursor = walk.result;
      if (cursor === null) return resolve({ later, strangers });
      const name = readKeyName(cursor.key);
      (name === null ? strangers : later).push(name ?? String(cursor.key));
      cursor.continue(name === null ? undefined : readKeyEnds(name)[1]);
    };
  });

const addLines = (place: IDBObjectStore, name: string, from: number, lines: readonly string[]): void => {
  for (const [at, line] of lines.entries()) place.add(line, writeKey(name, from + at));
};
