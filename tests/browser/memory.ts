import type { Page } from 'playwright-core';
import { places } from '../../src/storage/edition';
import { encodeLine, readEntry } from '../../src/storage/line';
import { writeKey } from '../../src/storage/readIndex';

/** Every log in the index of this page, by name: what the station has acknowledged. */
export async function readLogs(page: Page): Promise<ReadonlyMap<string, readonly unknown[]>> {
  const rows = await page.evaluate(readRows);
  const logs = new Map<string, unknown[]>();
  for (const [key, line] of rows) {
    const [, name = ''] = /^log:([^:]+):/.exec(key) ?? [];
    if (name !== '') logs.set(name, [...(logs.get(name) ?? []), readEntry(line)]);
  }
  return logs;
}

/** The one log of an open consultation, and whose it is. */
export async function readOpenLog(page: Page): Promise<{ id: string; log: readonly unknown[] }> {
  const open = [...(await readLogs(page))].filter(([name]) => name.startsWith('open-'));
  const [only] = open;
  if (only === undefined || open.length > 1) throw new Error(`${open.length} logs are open`);
  return { id: only[0].slice('open-'.length), log: only[1] };
}

export type Logs = Readonly<Record<string, readonly unknown[]>>;

/**
 * Writes these logs over what this page's origin holds, each line with a checksum that is right, as somebody with the
 * tools of the browser can. The station must not be open in that page: it holds its journals.
 */
export async function writeLogs(
  page: Page,
  logs: Logs,
  copies = ['journal', 'index'],
  { folder, database }: { readonly folder: string | null; readonly database: string } = places.salon,
): Promise<void> {
  const written = Object.entries(logs).map(
    ([name, entries]): Written => ({
      name,
      lines: entries.map((entry, seq) => encodeLine(seq, JSON.stringify(entry))),
    }),
  );
  if (copies.includes('journal')) await page.evaluate(writeFiles, { folder, written });
  if (copies.includes('index')) {
    const rows = written.map(({ name, lines }) => ({
      name,
      rows: lines.map((line, seq): [string, string] => [writeKey(name, seq), line]),
    }));
    await page.evaluate(writeRows, { database, written: rows });
  }
}

interface Written {
  readonly name: string;
  readonly lines: readonly string[];
}

async function writeFiles({
  folder,
  written,
}: {
  folder: string | null;
  written: readonly Written[];
}): Promise<void> {
  const top = await navigator.storage.getDirectory();
  const within = folder === null ? top : await top.getDirectoryHandle(folder, { create: true });
  const journals = await within.getDirectoryHandle('journals', { create: true });
  for (const { name, lines } of written) {
    const file = await (await journals.getFileHandle(name, { create: true })).createWritable();
    await file.write(`${lines.join('\n')}\n`);
    await file.close();
  }
}

function writeRows({
  database,
  written,
}: {
  database: string;
  written: readonly { name: string; rows: [string, string][] }[];
}): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(database);
    opening.onupgradeneeded = () => opening.result.createObjectStore('lines');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const change = opening.result.transaction('lines', 'readwrite');
      const lines = change.objectStore('lines');
      for (const { name, rows } of written) {
        lines.delete(IDBKeyRange.bound(`log:${name}:`, `log:${name}:\uffff`));
        for (const [key, line] of rows) lines.add(line, key);
      }
      change.oncomplete = () => {
        opening.result.close();
        resolve();
      };
      change.onabort = () => reject(change.error);
    };
  });
}

/** What was set aside in either copy: names, and the text of each. */
export const readAside = (page: Page): Promise<readonly { kept: string; text: string }[]> =>
  page.evaluate(async () => {
    const found: { kept: string; text: string }[] = [];
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('aside', {
      create: true,
    });
    for await (const [kept, file] of folder.entries()) {
      if (file instanceof FileSystemFileHandle)
        found.push({ kept, text: await (await file.getFile()).text() });
    }
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('strandproof');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const range = IDBKeyRange.bound('aside:', 'aside:\uffff');
    const lines = database.transaction('lines').objectStore('lines');
    await new Promise<void>((resolve, reject) => {
      const walk = lines.openCursor(range);
      walk.onerror = () => reject(walk.error);
      walk.onsuccess = () => {
        if (walk.result === null) return resolve();
        const pairs: [string, string][] = walk.result.value;
        found.push({ kept: String(walk.result.key), text: pairs.map(([, line]) => `${line}\n`).join('') });
        walk.result.continue();
      };
    });
    database.close();
    return found;
  });

function readRows(): Promise<[string, string][]> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('strandproof');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const rows: [string, string][] = [];
      const walk = opening.result.transaction('lines').objectStore('lines').openCursor();
      walk.onerror = () => reject(walk.error);
      walk.onsuccess = () => {
        if (walk.result === null) {
          opening.result.close();
          return resolve(rows);
        }
        rows.push([String(walk.result.key), String(walk.result.value)]);
        walk.result.continue();
      };
    };
  });
}
