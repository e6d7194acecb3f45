import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { scenesOfClient } from './scenes/ofClient';
import { turnTo } from './scenes/questions';
import type { Scene } from './scenes/scene';
import { settle, showScene } from './scenes/showScene';
import { useStation } from './station';

const station = useStation();
const keys = '1234567890.'.split('');

const sceneOf = (screen: 'mix' | 'preparing', name: string): Scene => {
  const { usual, also = {} } = scenesOfClient[screen];
  const scene = name === 'usual' ? usual : also[name];
  if (scene === undefined || typeof scene === 'string') throw new Error(`no scene ${screen} ${name}`);
  return scene;
};

/** Where the middle of each key lies, by its name. */
const findKeys = (page: Page): Promise<Readonly<Record<string, number>>> =>
  page.locator('.pad-key').evaluateAll((all) =>
    Object.fromEntries(
      all.map((key) => {
        const { top, height } = key.getBoundingClientRect();
        const { key: name, act } = (key as HTMLElement).dataset;
        return [name ?? act ?? '', top + height / 2];
      }),
    ),
  );

/** A key of 88 px that moves by less than this stays under the finger that was on its way to it. */
const STAYS_PX = 22;

/** With the second tap of a double tap passed over, as on every tablet. */
async function openPad(page: Page, question: string): Promise<void> {
  await page.evaluate(() => delete document.documentElement.dataset.doubleTapMs);
  await turnTo(page, question);
  await page.waitForTimeout(500);
  const way = page.locator('[data-act="another-number"]');
  if (await way.isVisible()) await way.tap();
  await page.locator('.number-pad').waitFor();
  await page.waitForTimeout(500);
  const clear = page.locator('[data-key="clear"]');
  if (await clear.isEnabled()) await clear.tap();
  await settle(page);
}

describe.each([
  ['mix', 'bowl', 'ratio'],
  ['mix', 'bowl', 'developerPercent'],
  ['mix', 'bowl', 'minutes'],
  ['preparing', 'usual', 'developerPercent'],
  ['preparing', 'usual', 'minutes'],
] as const)('on the pad of %s %s, %s', (screen, name, question) => {
  it.each([
    [1280, 800],
    [800, 1280],
    [1024, 768],
  ])(
    'no key moves away at %d × %d while what is wrong comes and goes, and a second mark makes no other number',
    async (width, height) => {
      const shown = await showScene(station.browser, station.address, sceneOf(screen, name));
      const { page } = shown;
      expect(shown.problem).toBeNull();
      await page.setViewportSize({ width, height });
      await openPad(page, question);
      const before = await findKeys(page);
      expect(Object.keys(before)).toEqual(expect.arrayContaining(keys));
      const seen: string[] = [];
      for (const key of '1.2.3') {
        await page.locator(`[data-key="${key}"]`).tap();
        seen.push(await page.locator('.typing input').inputValue());
        const now = await findKeys(page);
        for (const name of Object.keys(before))
          expect(Math.abs((now[name] ?? 0) - (before[name] ?? 0)), `${name} after ${key}`).toBeLessThan(
            STAYS_PX,
          );
      }
      expect(seen).toEqual(['1', '1.', '1.2', '1.2.', '1.2.3']);
      expect(await page.locator('.field-refusal').textContent()).toContain('That is not a number.');
      expect(await page.locator('[data-act="pad-done"]').isDisabled()).toBe(true);
      await shown.close();
    },
  );
});
