import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { refuse } from '../../../shared/result';
import type { IndexCopy, JournalCopy } from '../../../src/storage/copies';
import { nameFailure } from '../../../src/storage/copyFailure';
import { makeIndexCopy } from '../../../src/storage/indexCopy';
import { makeJournalCopy } from '../../../src/storage/journalCopy';
import type { Json } from '../../../src/storage/json';
import { encodeLine } from '../../../src/storage/line';
import { makeStore } from '../../../src/storage/makeStore';
import type { Store } from '../../../src/storage/store';
import { makeStrictStore, type StrictStore } from '../../../src/storage/strictStore';
import { type MemoryDisk, makeMemoryDisk, makeMemoryFiles } from './memoryFiles';
import { makePower, type Power } from './power';

/** A tablet that can be switched off and on: what both copies hold outlives every store opened over them. */
export interface Tablet {
  disk: MemoryDisk;
  factory: IDBFactory;
}

export interface OpenTablet {
  readonly store: Store;
  readonly journal: JournalCopy;
  readonly index: IndexCopy;
  readonly strict: StrictStore;
}

export const makeTablet = (): Tablet => ({ disk: makeMemoryDisk(), factory: new IDBFactory() });

/** Switches the tablet on; `change` lets a test put something faulty in place of a copy. */
export const switchOn = (
  tablet: Tablet,
  power: Power = makePower(),
  change: (copies: { journal: JournalCopy; index: IndexCopy }) => Partial<{
    journal: JournalCopy;
    index: IndexCopy;
  }> = () => ({}),
): OpenTablet => {
  const strict = makeStrictStore(tablet.factory, 'tablet', 'lines');
  const plain = {
    journal: makeJournalCopy(makeMemoryFiles(tablet.disk, power)),
    index: endWithPower(makeIndexCopy(strict), power),
  };
  const copies = { ...plain, ...change(plain) };
  return { store: makeStore(copies), ...copies, strict };
};

/** A transaction is on the disk or it is not: the step the power fails at leaves nothing. */
const endWithPower = (index: IndexCopy, power: Power): IndexCopy => {
  const writes: readonly (keyof IndexCopy)[] = ['append', 'replace', 'setAside', 'remove', 'exchange'];
  const cut = Object.fromEntries(
    writes.map((method) => [
      method,
      async (...args: readonly unknown[]) => {
        try {
          if (power.step()) throw new Error('the power failed before the transaction was done');
        } catch (error) {
          return refuse(nameFailure('index', error));
        }
        return (index[method] as (...given: readonly unknown[]) => unknown)(...args);
      },
    ]),
  );
  return { ...index, ...cut };
};

/** The entries the tests write: each says its own place, in text that is not all ASCII. */
export const entryAt = (seq: number): Json => ({ type: 'LOOKED', place: seq, note: `Nº ${seq} – “gold” 🟡` });

export const lineAt = (seq: number): string => encodeLine(seq, JSON.stringify(entryAt(seq)));

export const linesUpTo = (count: number): readonly string[] =>
  Array.from({ length: count }, (_, seq) => lineAt(seq));

export const entriesUpTo = (count: number): readonly Json[] =>
  Array.from({ length: count }, (_, seq) => entryAt(seq));

export const toBytes = (lines: readonly string[]): Uint8Array =>
  new TextEncoder().encode(lines.map((line) => `${line}\n`).join(''));

/** A tablet on which both copies hold the first entries of one log. */
export const makeFilledTablet = async (name: string, count: number): Promise<Tablet> => {
  const tablet = makeTablet();
  const { store } = switchOn(tablet);
  await store.restore();
  for (const [seq, entry] of entriesUpTo(count).entries()) {
    const written = await store.append(name, seq, entry);
    if (!written.ok) throw new Error(`not written: ${written.error.detail}`);
  }
  await store.release();
  return tablet;
};

/** Writes, deletes or changes raw pairs of the index, as a person with the browser's tools could. */
export const editIndex = async (tablet: Tablet, work: (place: IDBObjectStore) => void): Promise<void> => {
  const strict = makeStrictStore(tablet.factory, 'tablet', 'lines');
  await strict.use('readwrite', (place) => {
    work(place);
    return new Promise<void>((resolve, reject) => {
      place.transaction.oncomplete = () => resolve();
      place.transaction.onabort = () => reject(place.transaction.error);
    });
  });
  strict.close();
};

/** Everything that lies on this tablet, whatever it is called, in both copies, as one text. */
export const readEverything = async (tablet: Tablet): Promise<string> => {
  const { strict } = switchOn(tablet);
  const values = await strict.use('readonly', (place) => {
    const asked = place.getAll();
    return new Promise<unknown[]>((resolve) => {
      asked.onsuccess = () => resolve(asked.result);
    });
  });
  const files = Object.values(tablet.disk).flatMap((folder) => [...folder.values()]);
  return [...files.map((bytes) => new TextDecoder().decode(bytes)), JSON.stringify(values)].join('\n');
};
