import type { Page } from 'playwright-core';

/** How long what appears takes no finger: no time for a test that waits for what it taps. */
export const setArrival = (page: Page, arrivalMs: number): Promise<unknown> =>
  page.addInitScript((ms) => {
    document.addEventListener('DOMContentLoaded', () =>
      document.documentElement.style.setProperty('--arrival', `${ms}ms`),
    );
  }, arrivalMs);
