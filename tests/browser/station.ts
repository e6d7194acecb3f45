import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { launchBrowser } from './browser';
import { startStation } from './server';

/** The built station, served, and a browser beside it, for all tests of a file; there from the first test on. */
export function useStation(): { readonly address: string; readonly browser: Browser } {
  let served: Awaited<ReturnType<typeof startStation>>;
  let browser: Browser;
  beforeAll(async () => {
    served = await startStation();
    browser = await launchBrowser();
  });
  afterAll(async () => {
    await browser.close();
    await served.close();
  });
  return {
    get address() {
      return served.address;
    },
    get browser() {
      return browser;
    },
  };
}
