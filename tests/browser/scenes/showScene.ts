import type { Browser, Page } from 'playwright-core';
import { tabletLandscape } from '../browser';
import { setDoubleTap } from '../doubleTap';
import { writeLogs } from '../memory';
import { nowMs } from './clients';
import type { Scene } from './scene';
import { makeSceneHand } from './sceneHand';

/** A scene on a tablet of its own. */
export interface Shown {
  readonly page: Page;
  /** Why what is shown now is not the scene; null when it is. */
  readonly problem: string | null;
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
  const problem = await play(page, address, scene).then(
    () => null,
    (error: Error) => error.message,
  );
  return { page, problem, complaints, close: () => context.close() };
}

async function play(page: Page, address: string, scene: Scene): Promise<void> {
  await setDoubleTap(page, 0);
  await page.clock.setFixedTime(scene.atMs ?? nowMs);
  await page.goto(`${address}/icon.svg`);
  await writeLogs(page, scene.logs());
  await scene.harm?.(page);
  await page.goto(address);
  await page.locator('main').first().waitFor();
  const starting = page.locator('[data-mode="starting"]');
  if (!scene.shows.includes('starting')) await starting.waitFor({ state: 'detached' });
  await scene.go?.(makeSceneHand(page));
  await page.locator(scene.shows).filter({ visible: true }).first().waitFor();
  await settle(page);
}

/** Letters are there and everything is drawn. */
export const settle = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await document.fonts.ready;
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  });
