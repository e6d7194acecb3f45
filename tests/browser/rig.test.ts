import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, launchKillableBrowser, tabletLandscape } from './browser';
import { startStation } from './server';

let station: Awaited<ReturnType<typeof startStation>>;
beforeAll(async () => {
  station = await startStation();
});
afterAll(() => station.close());

describe('the browser of the tests', () => {
  it('comes with its own Chromium and the pinned zone and language', async () => {
    const browser = await launchBrowser();
    const page = await browser.newPage(tabletLandscape);
    await page.goto(station.address);
    const place = await page.evaluate(() => {
      const { timeZone, locale } = Intl.DateTimeFormat().resolvedOptions();
      return { timeZone, locale };
    });
    await browser.close();
    expect(place).toEqual({ timeZone: 'America/St_Johns', locale: 'en-US' });
  });

  it('keeps what was flushed to the disk through a kill, and forgets nothing of the profile', async () => {
    const profile = await mkdtemp(join(tmpdir(), 'strandproof-profile-'));
    try {
      const first = await launchKillableBrowser(profile);
      const page = await first.context.newPage();
      await page.goto(station.address);
      await page.evaluate(writeDurably);
      await first.kill();
      await expect.poll(() => first.browser.isConnected()).toBe(false);

      const second = await launchKillableBrowser(profile);
      const again = await second.context.newPage();
      await again.goto(station.address);
      expect(await again.evaluate(readDurable)).toBe('kept');
      await second.kill();
    } finally {
      await rm(profile, { recursive: true, force: true });
    }
  });
});

function writeDurably(): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('rig', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('rig');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const change = opening.result.transaction('rig', 'readwrite', { durability: 'strict' });
      change.objectStore('rig').put('kept', 'state');
      change.oncomplete = () => resolve();
      change.onerror = () => reject(change.error);
    };
  });
}

function readDurable(): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('rig', 1);
    opening.onerror = () => reject(opening.error);
    opening.onupgradeneeded = () => reject(new Error('The store is gone'));
    opening.onsuccess = () => {
      const reading = opening.result.transaction('rig').objectStore('rig').get('state');
      reading.onsuccess = () => resolve(reading.result);
      reading.onerror = () => reject(reading.error);
    };
  });
}
