import type { Page } from 'playwright-core';

/** How soon a second tap is a double tap: never, in a test whose taps follow one another at once. */
export const setDoubleTap = (page: Page, doubleTapMs: number): Promise<unknown> =>
  page.addInitScript((ms) => {
    document.addEventListener('DOMContentLoaded', () => {
      document.documentElement.dataset.doubleTapMs = String(ms);
    });
  }, doubleTapMs);
