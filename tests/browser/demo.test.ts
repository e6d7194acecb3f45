import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { tabletLandscape } from './browser';
import { patience } from './person';
import { useStation } from './station';

const station = useStation();

/** Every folder, file and database of this page's origin. */
const listStored = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const found: string[] = [];
    const walk = async (folder: FileSystemDirectoryHandle, path: string): Promise<void> => {
      for await (const [name, handle] of folder.entries()) {
        found.push(`${path}/${name}`);
        if (handle.kind === 'directory') await walk(handle as FileSystemDirectoryHandle, `${path}/${name}`);
      }
    };
    await walk(await navigator.storage.getDirectory(), '');
    const databases = (await indexedDB.databases()).map(({ name }) => `database ${name}`);
    return [...found, ...databases].sort();
  });

async function openTablet() {
  const context = await station.browser.newContext(tabletLandscape);
  context.setDefaultTimeout(20_000);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(station.address);
  const offer = page.locator('[data-act="load-demo"]');
  await offer.waitFor();
  return { context, page, offer, complaints, ribbon: page.locator('[data-demo]') };
}

describe('the invented salon', () => {
  it('comes with one tap, is marked on every screen, and goes without a trace with one hold', async () => {
    const { context, page, offer, complaints, ribbon } = await openTablet();
    const before = await listStored(page);
    await offer.tap();
    await ribbon.waitFor();
    await page.locator('.place[data-consultation]').nth(6).waitFor();
    expect(await page.title()).toBe('DEMO · Strandproof');
    for (const way of ['day', 'settings']) {
      await page.locator(`[data-act="${way}"]`).tap();
      const name = page.locator('[data-act="who-Juno"]');
      await page.locator('main.day-page').or(name).first().waitFor();
      if (await name.isVisible()) await name.tap();
      await page.locator('main.day-page').waitFor();
      expect(await ribbon.count()).toBe(1);
      await page.locator('[data-act="bar"]').tap();
    }
    await page.reload();
    await ribbon.waitFor();
    await page.locator('[data-act="leave-demo"]').tap();
    await page.locator('[data-act="remove-demo"]').press('Enter');
    await page.locator('[data-act="remove-demo-confirm"]').press('Enter');
    await offer.waitFor();
    expect(await ribbon.count()).toBe(0);
    await expect.poll(() => listStored(page), patience).toEqual(before);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('is whole or not there, wherever loading is broken off', async () => {
    const { context, page, offer, ribbon } = await openTablet();
    const before = await listStored(page);
    for (const afterMs of [0, 60, 250, 700]) {
      await offer.tap();
      await page.waitForTimeout(afterMs);
      await page.reload();
      await ribbon.or(offer).first().waitFor();
      if ((await ribbon.count()) > 0) break;
      await expect.poll(() => listStored(page), patience).toEqual(before);
    }
    await context.close();
  });

  it('is cleared by no other window that opens while it is loaded', async () => {
    const { context, page, offer, ribbon } = await openTablet();
    const other = await context.newPage();
    await other.goto(`${station.address}/icon.svg`);
    await page.bringToFront();
    const slow = await context.newCDPSession(page);
    await slow.send('Emulation.setCPUThrottlingRate', { rate: 10 });
    await offer.tap();
    await expect.poll(() => listStored(other), { interval: 5 }).toContain('database strandproof-demo');
    await other.goto(station.address);
    for (const each of [page, other]) await each.locator('[data-demo]').waitFor();
    await slow.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    await page.reload();
    await ribbon.waitFor();
    await page.locator('.place[data-consultation]').nth(6).waitFor();
    expect(await page.locator('[data-notice]').count()).toBe(0);
    await context.close();
  });

  it('that lost its mark is gone with the next start, and the salon’s own store is untouched', async () => {
    const { context, page, offer, ribbon } = await openTablet();
    const before = await listStored(page);
    await offer.tap();
    await ribbon.waitFor();
    await page.goto(`${station.address}/icon.svg`);
    await page.evaluate(async () => (await navigator.storage.getDirectory()).removeEntry('demo-is-here'));
    await page.goto(station.address);
    await offer.waitFor();
    await expect.poll(() => listStored(page), patience).toEqual(before);
    await context.close();
  });

  it('is no part of what a real salon loads', async () => {
    const { context, page } = await openTablet();
    const loaded = await page.evaluate(async () => {
      const scripts = performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.js'));
      const texts = await Promise.all(scripts.map(async ({ name }) => (await fetch(name)).text()));
      return { count: scripts.length, hasSalon: texts.some((text) => text.includes('Sandbar')) };
    });
    expect(loaded.count).toBeGreaterThan(0);
    expect(loaded.hasSalon).toBe(false);
    await context.close();
  });
});
