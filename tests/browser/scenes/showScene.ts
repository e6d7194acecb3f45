import type { Browser, Page } from 'playwright-core';
import { tabletLandscape } from '../browser';
import { writeLogs } from '../memory';
import { nowMs } from './clients';
import type { Scene } from './scene';
import { makeSceneHand } from './sceneHand';

/** A scene on a tablet of its own. */
export interface Shown {
  readonly page: Page;
  /** What the page complained of. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

/** Opens the scene: its logs stand in both copies before the station loads, and its clock stands still. */
export async function showScene(browser: Browser, address: string, scene: Scene): Promise<Shown> {
  const context = await browser.newContext({ ...tabletLandscape, reducedMotion: 'reduce' });
  context.setDefaultTimeout(5_000);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  try {
    await page.clock.setFixedTime(scene.atMs ?? nowMs);
    await page.goto(`${address}/icon.svg`);
    await writeLogs(page, scene.logs());
    await scene.harm?.(page);
    await page.goto(address);
    await page.locator('main').first().waitFor();
    if (!scene.shows.includes('starting'))
      await page.locator('[data-mode="starting"]').waitFor({ state: 'detached' });
    await scene.go?.(makeSceneHand(page));
    await page.locator(scene.shows).first().waitFor();
    await settle(page);
  } catch (error) {
    await context.close();
    throw error;
  }
  return { page, complaints, close: () => context.close() };
}

/** Letters are there and everything is drawn. */
export const settle = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await document.fonts.ready;
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  });
