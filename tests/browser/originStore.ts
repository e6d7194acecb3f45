import type { Page } from 'playwright-core';

/** The store of an origin, seen and harmed from a page that is not the station. */

/** The names in a folder of the origin private file system; none when there is no such folder. */
export const listFiles = (page: Page, folder: string): Promise<readonly string[]> =>
  page.evaluate(async (wanted) => {
    const names: string[] = [];
    const root = await navigator.storage.getDirectory();
    for await (const name of (await root.getDirectoryHandle(wanted, { create: true })).keys())
      names.push(name);
    return names.sort();
  }, folder);

export const readFile = (page: Page, folder: string, name: string): Promise<string> =>
  page.evaluate(
    async ([inFolder, wanted]) => {
      const root = await navigator.storage.getDirectory();
      const file = await (await root.getDirectoryHandle(inFolder)).getFileHandle(wanted);
      return (await file.getFile()).text();
    },
    [folder, name] as const,
  );

/** Writes a journal anew, whatever it held; waits until a station that was closed has let go of it. */
export const writeFile = (page: Page, name: string, text: string): Promise<void> =>
  page.evaluate(
    async ([wanted, contents]) => {
      const root = await navigator.storage.getDirectory();
      const file = await (await root.getDirectoryHandle('journals')).getFileHandle(wanted, { create: true });
      let stream: FileSystemWritableFileStream | null = null;
      for (let tries = 0; stream === null; tries += 1) {
        try {
          stream = await file.createWritable();
        } catch (error) {
          if (tries === 100) throw error;
          await new Promise((resolve) => setTimeout(resolve, 20));
        }
      }
      await stream.write(contents);
      await stream.close();
    },
    [name, text] as const,
  );

/** Waits, as writing does, until the closed page's worker has let go of its files. */
export const removeJournals = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    for (let tries = 0; ; tries += 1) {
      try {
        return await root.removeEntry('journals', { recursive: true });
      } catch (error) {
        const isHeld = error instanceof DOMException && error.name === 'NoModificationAllowedError';
        if (!isHeld || tries === 100) throw error;
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
    }
  });

export const deleteIndex = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const deleting = indexedDB.deleteDatabase('strandproof');
        deleting.onsuccess = () => resolve();
        deleting.onerror = () => reject(deleting.error);
        deleting.onblocked = () => reject(new Error('the station still has it open'));
      }),
  );

/** What the index holds under the keys of this log, in their order. */
export const readIndexed = (page: Page, log: string): Promise<readonly unknown[]> =>
  page.evaluate(
    (name) =>
      new Promise<unknown[]>((resolve, reject) => {
        const opening = indexedDB.open('strandproof');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const store = opening.result.transaction('lines').objectStore('lines');
          const reading = store.getAll(IDBKeyRange.bound(`log:${name}:`, `log:${name}:\uffff`));
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            opening.result.close();
            resolve(reading.result);
          };
        };
      }),
    log,
  );
