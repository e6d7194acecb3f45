import type { Page } from 'playwright-core';
import { readEntry } from '../../src/storage/line';

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
