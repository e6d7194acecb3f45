import type { BrowserContext, CDPSession, Page } from 'playwright-core';
import { launchKillableBrowser, tabletLandscape } from '../browser';
import { setDoubleTap } from '../doubleTap';

/** What the page itself says of itself, at once: a tap that has landed, or how much of a log it shows. */
type Said =
  | { readonly kind: 'tap' }
  | { readonly kind: 'shown'; readonly id: string; readonly length: number };

/** A station in a browser that can be killed. */
export interface StationWindow {
  readonly page: Page;
  /** The newest `data-log-length` the page was heard to show, by consultation: what it has acknowledged. */
  readonly shown: ReadonlyMap<string, number>;
  /** Calls back when so many more taps have landed. */
  onLanded(taps: number, then: () => void): void;
  /** Puts a finger down at these places, one after the other, and lifts it; waits for nothing. */
  tap(at: readonly Point[]): void;
  kill(): Promise<void>;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Starts the browser on this profile and opens this address, with an ear on what the page shows. */
export async function openWindow(profileDir: string, address: string): Promise<StationWindow> {
  const { context, kill } = await launchKillableBrowser(profileDir);
  let killing: Promise<void> | null = null;
  try {
    const heard = await listenTo(context, address);
    return {
      ...heard,
      // Once only: the number of a process group that is gone may be another's by the second time.
      kill: () => {
        killing ??= kill();
        return killing;
      },
    };
  } catch (error) {
    await kill();
    throw error;
  }
}

async function listenTo(context: BrowserContext, address: string): Promise<Omit<StationWindow, 'kill'>> {
  const page = context.pages()[0] ?? (await context.newPage());
  const session = await context.newCDPSession(page);
  const shown = new Map<string, number>();
  let landed = 0;
  let waiting: { readonly at: number; readonly then: () => void } | null = null;

  session.on('Runtime.bindingCalled', ({ name, payload }) => {
    if (name !== 'sayToTest') return;
    const said = JSON.parse(payload) as Said;
    if (said.kind === 'shown') shown.set(said.id, said.length);
    else {
      landed += 1;
      if (waiting?.at === landed) waiting.then();
    }
  });
  await session.send('Runtime.enable');
  await session.send('Runtime.addBinding', { name: 'sayToTest' });
  await setDoubleTap(page, 0);
  await page.addInitScript(listenInPage);
  await session.send('Emulation.setTouchEmulationEnabled', { enabled: true });
  await page.setViewportSize(tabletLandscape.viewport);
  await page.goto(address);

  return {
    page,
    shown,
    onLanded: (taps, then) => {
      waiting = { at: landed + taps, then };
    },
    tap: (at) => touch(session, at),
  };
}

function touch(session: CDPSession, at: readonly Point[]): void {
  const send = (type: 'touchStart' | 'touchEnd', touchPoints: Point[]): void => {
    // What the killed browser can no longer answer is what the test is about.
    session.send('Input.dispatchTouchEvent', { type, touchPoints }).catch(() => undefined);
  };
  for (const point of at) {
    send('touchStart', [point]);
    send('touchEnd', []);
  }
}

/** Runs in the page, before the station does. */
function listenInPage(): void {
  const say = (said: unknown): void =>
    (globalThis as unknown as { sayToTest(text: string): void }).sayToTest(JSON.stringify(said));
  // A click that a finger made, not one that the test dispatched.
  addEventListener('click', ({ isTrusted }) => isTrusted && say({ kind: 'tap' }), true);
  new MutationObserver(() => {
    const main = document.querySelector<HTMLElement>('main[data-log-length]');
    if (main === null) return;
    say({ kind: 'shown', id: main.dataset.consultation, length: Number(main.dataset.logLength) });
  }).observe(document, {
    subtree: true,
    childList: true,
    attributes: true,
    attributeFilter: ['data-log-length', 'data-consultation'],
  });
}
