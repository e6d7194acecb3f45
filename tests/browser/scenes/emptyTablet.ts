import type { Page } from 'playwright-core';
import { tabletLandscape } from '../browser';

/**
 * Leaves nothing of the station on this tablet: no journal, no index, nothing of its local storage, and the glass as it
 * stands first. What is kept is the page itself, in the cache of its service worker.
 */
export async function emptyTablet(page: Page, address: string): Promise<void> {
  await page.setViewportSize(tabletLandscape.viewport);
  await page.goto(`${address}/icon.svg`);
  await page.evaluate(wipe);
}

/** Runs in the page. The station that was open there ends with its page, so what it still holds is tried again. */
async function wipe(): Promise<void> {
  localStorage.clear();
  sessionStorage.clear();
  const top = await navigator.storage.getDirectory();
  const names: string[] = [];
  for await (const [name] of top.entries()) names.push(name);
  for (const name of names) {
    for (let tries = 1; ; tries += 1) {
      try {
        await top.removeEntry(name, { recursive: true });
        break;
      } catch (error) {
        if (tries > 100) throw error;
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
    }
  }
  for (const { name = '' } of await indexedDB.databases()) {
    await new Promise((resolve, reject) => {
      const deleting = indexedDB.deleteDatabase(name);
      deleting.onsuccess = resolve;
      deleting.onerror = () => reject(deleting.error);
    });
  }
}
