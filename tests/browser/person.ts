import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { tabletLandscape } from './browser';
import { setDoubleTap } from './doubleTap';
import { type UseHands, useFingers } from './hands';

/** So long a busy machine may take to show what it has kept. */
export const patience = { timeout: 10_000, interval: 20 };

/** What the station's main element says of itself. */
export interface Where {
  readonly step: string | null;
  readonly logLength: number;
}

/** Somebody at the tablet: fingers or keys, and a clock that moves only when the test says so. */
export interface Person {
  readonly page: Page;
  /** Every address that was asked for, and everything the page complained of, breaches of its policy included. */
  readonly asked: string[];
  readonly complaints: string[];
  readonly nowMs: () => number;
  /** Time passes on the tablet; what was due in between happens once. */
  readonly pass: (ms: number) => Promise<void>;
  /** Time passes on the tablet second by second: each of its timers fires as often as it would. */
  readonly run: (ms: number) => Promise<void>;
  /** Time passes while the page is hidden and none of its timers runs; then it is seen again. */
  readonly sleep: (ms: number) => Promise<void>;
  readonly press: (what: Locator) => Promise<void>;
  readonly type: (into: Locator, text: string) => Promise<void>;
  /** A finger, or a key, rests on it for as long as a hold takes. */
  readonly hold: (what: Locator) => Promise<void>;
  /** Presses the button of this name. */
  readonly act: (act: string) => Promise<void>;
  readonly where: () => Promise<Where>;
  /** Does it, and waits until so many more entries are acknowledged and shown, or she is closed. */
  readonly kept: (what: () => Promise<void>, more?: number) => Promise<void>;
  readonly isAt: (step: string) => Promise<void>;
  /** The page is loaded anew, and the bar is there again. */
  readonly reload: () => Promise<void>;
  /** Her place on the bar is tapped, and whoever is at the tablet says so. */
  readonly open: (chair: number) => Promise<void>;
  /** All that the screen says: its words, what is pressed, what is typed, what its clocks and marks stand at. */
  readonly readScreen: () => Promise<string>;
}

interface PersonOptions extends BrowserContextOptions {
  readonly hands?: UseHands;
  /** How soon a second tap at one place is a double tap; none is when it is not said. */
  readonly doubleTapMs?: number;
  /** What lies over an idle tablet stays; else whoever comes back after a while takes it away first. */
  readonly leavesCover?: boolean;
  /** Done on a page of the station's origin before the station itself is opened. */
  readonly prepare?: (page: Page) => Promise<void>;
}

/** A tablet in the hands of somebody called `name`, at this moment. The clock stands until `pass`. */
export async function makePerson(
  browser: Browser,
  address: string,
  name: string,
  startAtMs: number,
  { hands = useFingers, prepare, doubleTapMs = 0, leavesCover = false, ...options }: PersonOptions = {},
): Promise<Person> {
  const context = await browser.newContext({ ...tabletLandscape, ...options });
  context.setDefaultTimeout(10_000);
  const page = await context.newPage();
  const asked: string[] = [];
  const complaints: string[] = [];
  context.on('request', (request) => asked.push(request.url()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`breach: ${event.violatedDirective} ${event.blockedURI}`);
    });
  });
  await setDoubleTap(page, doubleTapMs);
  await page.clock.install({ time: startAtMs - 1000 });
  await page.clock.pauseAt(startAtMs);
  if (prepare !== undefined) {
    await page.goto(`${address}/icon.svg`);
    await prepare(page);
  }
  await page.goto(address);
  await page.locator('main.bar').waitFor();
  await isReady(page);
  let nowMs = startAtMs;

  const comeBack = async (): Promise<void> => {
    if (leavesCover || (await page.locator('.idle-over[open]').count()) === 0) return;
    await page.keyboard.press('Escape');
    // The window closes at once, and says so a moment later.
    await page.locator('.idle-over > *').waitFor({ state: 'detached' });
  };
  const pass = async (ms: number): Promise<void> => {
    if (ms <= 0) return;
    await page.clock.fastForward(ms);
    nowMs += ms;
    await comeBack();
  };
  const own = await hands(page, pass);
  const where = () =>
    page.evaluate((): Where => {
      const main = document.querySelector('main');
      return { step: main?.dataset.step ?? null, logLength: Number(main?.dataset.logLength ?? 0) };
    });
  const kept = async (what: () => Promise<void>, more = 1): Promise<void> => {
    const before = await where();
    await what();
    await expect
      .poll(async () => {
        const now = await where();
        return now.step === null || now.logLength >= before.logLength + more ? 'kept' : sayTrouble(page);
      }, patience)
      .toBe('kept');
  };

  /** Says on the bar who is at the tablet; a client whose clock runs is opened before anybody is asked. */
  const sayWho = async (): Promise<void> => {
    const who = page.locator('main.bar [data-act="who"]');
    const listed = page.locator(`[data-act="who-${name}"]`);
    if ((await who.count()) === 0 || (await who.textContent()) === name) return;
    await own.press(who);
    if ((await listed.count()) > 0) await own.press(listed);
    else await page.keyboard.press('Escape');
  };

  return {
    page,
    asked,
    complaints,
    nowMs: () => nowMs,
    pass,
    run: async (ms) => {
      await page.clock.runFor(ms);
      nowMs += ms;
      await comeBack();
    },
    sleep: async (ms) => {
      nowMs += ms;
      await page.clock.setSystemTime(nowMs);
      await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
      await comeBack();
    },
    where,
    kept,
    ...own,
    act: (act) => own.press(page.locator(`[data-act="${act}"]`)),
    isAt: async (step) => {
      await expect.poll(async () => (await where()).step, patience).toBe(step);
    },
    reload: async () => {
      await page.reload();
      await page.locator('main.bar').waitFor();
      await isReady(page);
      await sayWho();
    },
    open: async (chair) => {
      await own.press(page.locator(`.place[data-chair="${chair}"]`));
      const asks = page.locator(`[data-act="who-${name}"]`);
      const main = page.locator('main[data-consultation]');
      await asks.or(main).first().waitFor();
      if (await asks.isVisible()) await own.press(asks);
      await main.waitFor();
    },
    readScreen: () => page.evaluate(readMain),
  };
}

const isReady = (page: Page) =>
  expect.poll(() => page.locator('.window-part[data-mode="starting"]').count(), patience).toBe(0);

/** Why nothing was kept, as far as the screen says it. */
const sayTrouble = async (page: Page): Promise<string> =>
  (await page.locator('.field-refusal, .refusal').allInnerTexts()).filter((text) => text !== '').join(' | ');

function readMain(): string {
  const lines: string[] = [];
  const marks = ['pressed', 'knot', 'state', 'bowl', 'strand', 'dueAt', 'step', 'logLength', 'refused'];
  for (const element of document.querySelectorAll<HTMLElement>('main, main *')) {
    const said = marks.flatMap((mark) =>
      mark in element.dataset ? [`${mark}=${element.dataset[mark]}`] : [],
    );
    if (element.getAttribute('aria-pressed') === 'true') said.push('pressed');
    if (element instanceof HTMLInputElement) said.push(`typed=${element.value}`);
    if ('disabled' in element && element.disabled === true) said.push('disabled');
    const own = [...element.childNodes]
      .filter((node) => node.nodeType === Node.TEXT_NODE)
      .map((node) => node.textContent?.trim() ?? '')
      .filter((text) => text !== '');
    const line = [...said, ...own].join(' ');
    if (line !== '') lines.push(line);
  }
  return lines.join('\n');
}
