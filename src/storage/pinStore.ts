import { del, get, set } from 'idb-keyval';
import { makeStrictStore } from './strictStore';

/** A database of its own, which no backup, no export and no other station reads. Its name is for ever. */
const DATABASE = 'strandproof-pin';
const KEY = 'pin';
/** The copy beside it: a kill in the midst of a write can take every database of this address along. */
const COPY = 'strandproof.pin';

/** Where the PIN of this tablet is kept. */
export interface PinStore {
  /** As it was written, not yet read by any schema; null where there is none. */
  readonly read: () => Promise<unknown>;
  /** Answers once the disk has it; null takes it away. */
  readonly write: (record: unknown) => Promise<void>;
}

/** The browser's own local store, which page and worker do not both have. */
interface PinCopy {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, value: string) => void;
  readonly removeItem: (key: string) => void;
}

/** Both places of this tablet, the database first. Checked in tests/src/station/pin/createPin.test.tsx. */
export function makePinStore(factory: IDBFactory, copy: PinCopy): PinStore {
  const { use } = makeStrictStore(factory, DATABASE, KEY);
  const readCopy = (): unknown => {
    try {
      return JSON.parse(copy.getItem(COPY) ?? 'null');
    } catch {
      return null;
    }
  };
  const writeCopy = (record: unknown): void => {
    try {
      if (record === null) copy.removeItem(COPY);
      else copy.setItem(COPY, JSON.stringify(record));
    } catch {
      // Full or forbidden: the database has it.
    }
  };
  return {
    read: async () => {
      const kept: unknown = await get(KEY, use).catch(() => undefined);
      return kept ?? readCopy();
    },
    write: async (record) => {
      writeCopy(record);
      await (record === null ? del(KEY, use) : set(KEY, record, use));
    },
  };
}
