import { promisifyRequest, type UseStore } from 'idb-keyval';

/** A place for idb-keyval to keep things that answers only when the disk has them. */
export interface StrictStore {
  readonly use: UseStore;
  close(): void;
}

/**
 * Is what was written still there after the power failed?
 * IndexedDB writes `relaxed` unless asked (published: Indexed Database API 3.0, durability hint), so every
 * transaction that writes asks for `strict`. Opens when first used, and again when the browser has closed it.
 * Checked in tests/src/storage/strictStore.test.ts.
 */
export const makeStrictStore = (factory: IDBFactory, database: string, place: string): StrictStore => {
  let opened: Promise<IDBDatabase> | null = null;

  const open = (): Promise<IDBDatabase> => {
    const request = factory.open(database);
    request.onupgradeneeded = () => request.result.createObjectStore(place);
    return promisifyRequest(request);
  };

  const connect = async (): Promise<IDBDatabase> => {
    const opening = opened ?? open();
    opened = opening;
    try {
      const connection = await opening;
      connection.onclose = () => {
        if (opened === opening) opened = null;
      };
      return connection;
    } catch (error) {
      if (opened === opening) opened = null;
      throw error;
    }
  };

  const begin = async (mode: IDBTransactionMode): Promise<IDBObjectStore> => {
    const connection = await connect();
    try {
      return connection.transaction(place, mode, { durability: 'strict' }).objectStore(place);
    } catch (error) {
      opened = null;
      throw error;
    }
  };

  return {
    use: async (mode, work) => work(await begin(mode)),
    close: () => {
      opened?.then(
        (connection) => connection.close(),
        () => undefined,
      );
      opened = null;
    },
  };
};

/** Waits until a transaction is on the disk; throws what broke it off, the browser's own reason first. */
export const finish = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new DOMException('broken off', 'AbortError'));
  });
