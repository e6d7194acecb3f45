import type { Page } from 'playwright-core';
import { settle } from './showScene';

/** The lines of the ledger beside a sheet: every question, by name. None where there is no sheet, or a window over it. */
export const listQuestions = (page: Page): Promise<readonly string[]> =>
  page
    .locator('.ledger [data-ledger]')
    .evaluateAll((lines) =>
      document.querySelector('dialog:modal') === null
        ? lines.map((line) => line.getAttribute('data-ledger') ?? '')
        : [],
    );

/** Turns the sheet to this question, as a tap on its line does, or on the way to all of them where that stands for it. */
export async function turnTo(page: Page, question: string): Promise<void> {
  const line = page.locator(`.ledger [data-ledger="${question}"]`);
  const everything = page.locator('[data-act="all-questions"]');
  if (!(await line.isVisible()) && (await everything.isVisible())) await everything.tap();
  if (!(await line.isVisible())) await page.locator('.ledger [data-act="more-questions"]').tap();
  await line.tap();
  await settle(page);
}
