import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { ASSUMED_HOLD_MS } from '../../src/parts/hold';

/** How somebody presses, holds and types. */
export interface Hands {
  readonly press: (what: Locator) => Promise<void>;
  readonly hold: (what: Locator) => Promise<void>;
  readonly type: (into: Locator, text: string) => Promise<void>;
}

export type UseHands = (page: Page, pass: (ms: number) => Promise<void>) => Promise<Hands>;

const isHeld = (page: Page) =>
  expect.poll(() => page.locator('.hold[data-phase="holding"]').count(), { timeout: 10_000 }).toBe(1);

/** Fingers on glass. */
export const useFingers: UseHands = async (page, pass) => {
  const touch = await page.context().newCDPSession(page);
  return {
    press: (what) => what.tap(),
    type: (into, text) => into.fill(text),
    hold: async (what) => {
      await what.scrollIntoViewIfNeeded();
      const box = await what.boundingBox();
      if (box === null) throw new Error('Nothing to hold');
      const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
      await isHeld(page);
      await pass(ASSUMED_HOLD_MS);
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    },
  };
};

/** More stops than any screen has. */
const MOST_STOPS = 200;

/** A keyboard and nothing else: Tab to it, then Enter or Space; and where the focus is can be seen. */
export const useKeys: UseHands = async (page, pass) => {
  const reach = async (what: Locator): Promise<void> => {
    await what.waitFor();
    for (let stop = 0; stop < MOST_STOPS; stop += 1) {
      if (await what.evaluate((element) => element === document.activeElement)) {
        expect(await what.evaluate((element) => element.matches(':focus-visible'))).toBe(true);
        return;
      }
      await page.keyboard.press('Tab');
    }
    throw new Error(`No Tab leads to ${what}`);
  };
  return {
    press: async (what) => {
      await reach(what);
      const isBig = await what.evaluate((element) => element.matches('.big-button'));
      await page.keyboard.press(isBig ? 'Enter' : 'Space');
    },
    type: async (into, text) => {
      await reach(into);
      await page.keyboard.press('Control+A');
      await page.keyboard.type(text);
    },
    hold: async (what) => {
      await reach(what);
      await page.keyboard.down('Space');
      await isHeld(page);
      await pass(ASSUMED_HOLD_MS);
      await page.keyboard.up('Space');
    },
  };
};
