import type { Browser, Page } from 'playwright-core';
import { tabletLandscape } from '../browser';
import { setDoubleTap } from '../doubleTap';
import { writeLogs } from '../memory';
import { nowMs } from './clients';
import { emptyTablet } from './emptyTablet';
import type { Scene } from './scene';
import { makeSceneHand } from './sceneHand';

/** A scene on a tablet. */
export interface Shown {
  readonly page: Page;
  /** Why what is shown now is not the scene; null when it is. */
  readonly problem: string | null;
  /** What the page complained of. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

/** Shows scenes one after the other. */
export interface SceneTablets {
  readonly show: (scene: Scene) => Promise<Shown>;
  readonly close: () => Promise<void>;
}

/** Opens the scene on a tablet of its own: its logs stand in both copies before the station loads, and its clock stands still. */
export async function showScene(browser: Browser, address: string, scene: Scene): Promise<Shown> {
  const page = await unpack(browser, address);
  return showOn(page, address, scene, () => page.context().close());
}

/**
 * Tablets that are emptied and shown the next scene, as many as are wanted at once. Half of the work of a scene on a
 * new one is the new one. A scene that harms its tablet, or did not come, has one that nobody else gets.
 */
export function keepTablets(browser: Browser, address: string): SceneTablets {
  const free: Page[] = [];
  return {
    show: async (scene) => {
      if (scene.harm !== undefined) return showScene(browser, address, scene);
      const known = free.pop();
      if (known !== undefined) await emptyTablet(known, address);
      const page = known ?? (await unpack(browser, address));
      const shown = await showOn(page, address, scene, async () => {
        if (shown.problem === null && shown.complaints.length === 0) free.push(page);
        else await page.context().close();
      });
      return shown;
    },
    close: async () => {
      for (const page of free.splice(0)) await page.context().close();
    },
  };
}

/** A new tablet beside the station: its store can be written, and nothing of the station runs yet. */
async function unpack(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({ ...tabletLandscape, reducedMotion: 'reduce' });
  context.setDefaultTimeout(30_000);
  const page = await context.newPage();
  await setDoubleTap(page, 0);
  await page.goto(`${address}/icon.svg`);
  return page;
}

async function showOn(page: Page, address: string, scene: Scene, putAway: Shown['close']): Promise<Shown> {
  const complaints: string[] = [];
  const listen = (error: Error) => void complaints.push(error.message);
  page.on('pageerror', listen);
  const problem = await play(page, address, scene).then(
    () => null,
    (error: Error) => error.message,
  );
  const close = () => putAway().finally(() => page.off('pageerror', listen));
  return { page, problem, complaints, close };
}

async function play(page: Page, address: string, scene: Scene): Promise<void> {
  await writeLogs(page, scene.logs());
  await page.clock.setFixedTime(scene.atMs ?? nowMs);
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
