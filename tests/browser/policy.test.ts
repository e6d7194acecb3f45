import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { tabletLandscape } from './browser';
import { useStation } from './station';

const station = useStation();
let page: Page;
const asked: string[] = [];
const complaints: string[] = [];

beforeEach(async () => {
  page = await station.browser.newPage(tabletLandscape);
  asked.length = 0;
  complaints.length = 0;
  page.on('request', (request) => asked.push(request.url()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  await page.addInitScript(() => {
    const broken: string[] = [];
    Object.assign(globalThis, { broken });
    document.addEventListener('securitypolicyviolation', (event) => {
      broken.push(`${event.violatedDirective} ${event.blockedURI}`);
    });
  });
  await page.goto(station.address);
  await page.locator('#station > *').first().waitFor();
});

const readBroken = () => page.evaluate(() => (globalThis as unknown as { broken: string[] }).broken);

describe('the page under its policy', () => {
  it('loads without breaking the policy, without a complaint, and asks its own origin only', async () => {
    await page.waitForLoadState('networkidle');
    expect(await readBroken()).toEqual([]);
    expect(complaints).toEqual([]);
    expect(asked.length).toBeGreaterThan(2);
    expect(asked.filter((url) => !url.startsWith(`${station.address}/`))).toEqual([]);
  });

  it('sees a breach when there is one', async () => {
    await page.evaluate(() => document.body.setAttribute('style', 'color: red'));
    await page.evaluate(() => fetch('http://127.0.0.1:9/').catch(() => undefined));
    await expect.poll(readBroken).toEqual(['style-src-attr inline', 'connect-src http://127.0.0.1:9/']);
  });

  it('runs neither text as code nor what the page is told it may not ask for', async () => {
    // In a turn of its own: what a test's own hand evaluates may do more.
    const refused = await page.evaluate(
      () =>
        new Promise<readonly string[]>((resolve) => {
          const listen = (act: () => unknown) => {
            try {
              return `ran ${String(act())}`;
            } catch (error) {
              return (error as Error).name;
            }
          };
          setTimeout(() =>
            // biome-ignore lint/security/noGlobalEval: it is to be refused.
            resolve([listen(() => globalThis.eval('1')), listen(() => new Function('return 1')())]),
          );
        }),
    );
    expect(refused).toEqual(['EvalError', 'EvalError']);
    const allowed = await page.evaluate(() => {
      const { featurePolicy } = document as unknown as {
        featurePolicy?: { allowedFeatures: () => string[] };
      };
      return featurePolicy?.allowedFeatures() ?? null;
    });
    for (const each of [
      'camera',
      'microphone',
      'geolocation',
      'clipboard-read',
      'clipboard-write',
      'bluetooth',
    ])
      expect(allowed).not.toContain(each);
    expect(allowed).toContain('screen-wake-lock');
  });

  it('is written in the bundled typeface', async () => {
    const loaded = await page.evaluate(async () => {
      await document.fonts.ready;
      return [...document.fonts].filter(({ status }) => status === 'loaded').map(({ family }) => family);
    });
    expect(loaded).toContain('Atkinson Hyperlegible Next Variable');
    const family = await page.evaluate(() => getComputedStyle(document.body).fontFamily);
    expect(family).toMatch(/^"Atkinson Hyperlegible Next Variable"/);
  });

  it('lets markup through and scripts of its own origin', async () => {
    const passed = await page.evaluate(() => {
      document.createElement('template').innerHTML = '<b>bold</b>';
      document.createElement('script').src = '/assets/own.js';
      return 'passed';
    });
    expect(passed).toBe('passed');
  });

  it.each([
    ['another origin', 'https://elsewhere.invalid/worker.js'],
    ['another port', 'http://127.0.0.1:9/worker.js'],
    ['data', 'data:text/javascript,1'],
    ['a blob', 'blob:null/1'],
  ])('refuses a worker and a script from %s', async (_from, address) => {
    const said = await page.evaluate((url) => {
      const listen = (act: () => void) => {
        try {
          act();
          return 'accepted';
        } catch (error) {
          return String(error);
        }
      };
      return [
        listen(() => new Worker(url)),
        listen(() => {
          document.createElement('script').src = url;
        }),
      ];
    }, address);
    expect(said).toEqual(Array(2).fill(`TypeError: No script from elsewhere: ${address}`));
  });

  it('refuses a service worker from elsewhere', async () => {
    const said = await page.evaluate(() =>
      navigator.serviceWorker.register('https://elsewhere.invalid/worker.js').then(() => 'accepted', String),
    );
    expect(said).toBe('TypeError: No script from elsewhere: https://elsewhere.invalid/worker.js');
  });

  it('refuses a script made from text', async () => {
    const said = await page.evaluate(() => {
      try {
        document.createElement('script').text = 'globalThis.ran = true';
        return 'accepted';
      } catch (error) {
        return String(error);
      }
    });
    expect(said).toBe('TypeError: No script made from text');
  });
});
