import type { Page } from 'playwright-core';
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
export async function writeLogs(page: Page, logs: Logs, copies = ['journal', 'index']): Promise<void> {
  for (const [name, entries] of Object.entries(logs)) {
    const lines = entries.map((entry, seq) => encodeLine(seq, JSON.stringify(entry)));
    const rows = lines.map((line, seq): [string, string] => [writeKey(name, seq), line]);
    if (copies.includes('journal')) await page.evaluate(writeFile, { name, text: `${lines.join('\n')}\n` });
    if (copies.includes('index')) await page.evaluate(writeRows, { name, rows });
  }
}

async function writeFile({ name, text }: { name: string; text: string }): Promise<void> {
  const top = await navigator.storage.getDirectory();
  const folder = await top.getDirectoryHandle('journals', { create: true });
  const file = await (await folder.getFileHandle(name, { create: true })).createWritable();
  await file.write(text);
  await file.close();
}

function writeRows({ name, rows }: { name: string; rows: [string, string][] }): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('strandproof');
    opening.onupgradeneeded = () => opening.result.createObjectStore('lines');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const change = opening.result.transaction('lines', 'readwrite');
      const lines = change.objectStore('lines');
      lines.delete(IDBKeyRange.bound(`log:${name}:`, `log:${name}:\uffff`));
      for (const [key, line] of rows) lines.add(line, key);
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
