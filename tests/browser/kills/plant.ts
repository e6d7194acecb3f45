import type { Page } from 'playwright-core';
import { writeKey } from '../../../src/storage/readIndex';
import type { PlantedLog } from './salonDay';

/**
 * Writes logs into both copies of an origin that holds nothing yet, as the station would have left them.
 * The page must be one of the origin that is not the station: its picture will do.
 */
export async function plantLogs(page: Page, logs: readonly PlantedLog[]): Promise<void> {
  const files = logs.map(({ name, lines }) => ({ name, text: lines.map((line) => `${line}\n`).join('') }));
  const pairs = logs.flatMap(({ name, lines }) =>
    lines.map((line, seq) => [writeKey(name, seq), line] as const),
  );
  await page.evaluate(writeFiles, files);
  await page.evaluate(writePairs, pairs);
}

async function writeFiles(files: readonly { readonly name: string; readonly text: string }[]): Promise<void> {
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle('journals', { create: true });
  for (const { name, text } of files) {
    const file = await folder.getFileHandle(name, { create: true });
    const stream = await file.createWritable();
    await stream.write(text);
    await stream.close();
  }
}

function writePairs(pairs: readonly (readonly [string, string])[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('strandproof');
    opening.onupgradeneeded = () => opening.result.createObjectStore('lines');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const change = opening.result.transaction('lines', 'readwrite', { durability: 'strict' });
      for (const [key, line] of pairs) change.objectStore('lines').add(line, key);
      change.onabort = () => reject(change.error);
      change.oncomplete = () => {
        opening.result.close();
        resolve();
      };
    };
  });
}
