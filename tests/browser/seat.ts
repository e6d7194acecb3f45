import type { Browser, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import { salon } from '../../seeds/salon';
import type { StoryStep } from '../../seeds/story';
import { lengthOf, playAlone } from './makeLog';
import { readLogs, writeLogs } from './memory';
import { makePerson, type Person } from './person';

const { startAtMs } = endsIronedWet;

/** Each of these beginnings of a story as a client of her own, at chair 1, 2, 3 … */
export async function seat(
  browser: Browser,
  address: string,
  beginnings: readonly (readonly StoryStep[])[],
  /** Done on her page before the station is opened. */
  prepare: (page: Page) => Promise<unknown> = async () => undefined,
  doubleTapMs = 0,
): Promise<Person> {
  const logs = beginnings.map((steps, index) => {
    const seated = steps.map((step) =>
      step.raw.type === 'OPENED'
        ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, chair: String(index + 1) } } }
        : step,
    );
    const id = `client${String(index + 1).padStart(4, '0')}`;
    return [`open-${id}`, playAlone(seated, startAtMs, salon, id).log] as const;
  });
  const latestMs = startAtMs + Math.max(...beginnings.map(lengthOf));
  return makePerson(browser, address, 'Juno', latestMs + 1_000, {
    doubleTapMs,
    prepare: async (page) => {
      await prepare(page);
      await writeLogs(page, {
        settings: [{ settings: salon, by: 'Juno', atMs: startAtMs }],
        ...Object.fromEntries(logs),
      });
    },
  });
}

/** There is no scale on this screen, the knot is tied, and no bowl stands in any log. */
export async function expectNoMix({ page }: Person): Promise<void> {
  expect(await page.locator('[data-act="weigh"], [data-act="apply"], [data-panel="grams"]').count()).toBe(0);
  expect(await page.locator('[data-knot="untied"]').count()).toBe(0);
  const logs = [...(await readLogs(page)).values()].flat() as readonly { type?: string }[];
  expect(logs.filter(({ type }) => type === 'BOWL_WEIGHED')).toEqual([]);
}

/** The button as somebody with the browser's tools presses it: no longer disabled, and clicked by script. */
export async function force(button: Locator): Promise<void> {
  expect(await button.isDisabled()).toBe(true);
  await button.evaluate((element: HTMLButtonElement) => {
    element.removeAttribute('disabled');
    element.click();
  });
}

/** Every button of the step, disabled or not, pressed by script; whatever that leads to. */
export const pressAll = (page: Page) =>
  page.evaluate(async () => {
    for (const button of document.querySelectorAll<HTMLButtonElement>(
      '.step-content button, .step-actions button',
    )) {
      button.disabled = false;
      button.click();
      await Promise.resolve();
    }
  });

export const sayRefusal = async ({ page }: Person): Promise<string> => {
  await page.locator('.refusal').first().waitFor();
  return (await page.locator('.refusal').allTextContents()).join(' ');
};
