import type { Page } from 'playwright-core';

/** From now on the journal has no room for a log whose name begins so; every tap into it is refused as not saved. */
const fillJournal = (beginning: string): void => {
  const { postMessage } = Worker.prototype;
  Worker.prototype.postMessage = function (request: { id: number; method: string; args: unknown[] }) {
    if (!['append', 'prepare'].includes(request.method) || !String(request.args[0]).startsWith(beginning)) {
      return postMessage.call(this, request);
    }
    const error = { copy: 'journal', kind: 'quotaExceeded', detail: 'no room' };
    const data = { id: request.id, answer: { ok: false, error } };
    queueMicrotask(() => this.onmessage?.(new MessageEvent('message', { data })));
  };
};

/** From now on no month is written anew. */
export const refuseRewriting = (page: Page): Promise<void> => page.evaluate(fillJournal, 'closed-');

export const refuseWrites = (page: Page): Promise<void> => page.evaluate(fillJournal, '');

/** From the start on, no record can be closed. */
export const refuseClosing = (page: Page) => page.addInitScript(fillJournal, 'closed-');

/** From the start on, no month of before is ever read. */
export const holdMonths = (page: Page) =>
  page.addInitScript(() => {
    const { postMessage } = Worker.prototype;
    Worker.prototype.postMessage = function (request: { method: string }) {
      if (request.method !== 'readPast') postMessage.call(this, request);
    };
  });

/** The index never answers. */
export const neverOpen = (page: Page) =>
  page.addInitScript(() => {
    IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
  });

/** From the start on, the worker that is asked what strands taught breaks off. */
export const breakLearning = (page: Page) =>
  page.addInitScript(() => {
    const { postMessage } = Worker.prototype;
    Worker.prototype.postMessage = function (request: unknown) {
      if (!Array.isArray(request)) return postMessage.call(this, request);
      queueMicrotask(() => this.onerror?.(new ErrorEvent('error')));
    };
  });

/** This browser gives nobody the place of the one who writes. */
export const refusePlace = (page: Page) =>
  page.addInitScript(() => {
    const request = () => Promise.reject(new Error('no locks on this page'));
    Object.defineProperty(navigator, 'locks', { value: { request } });
  });

/** While this page was open the tablet's clock went on by so much at once, and nobody has said why. */
export const jumpAhead = (page: Page, atMs: number, aheadMs: number) =>
  page.addInitScript(
    (kept) => localStorage.setItem('strandproof.clockJumps', kept),
    JSON.stringify([{ atMs, aheadMs }]),
  );

/** Another window of the same tablet writes. */
export async function writeElsewhere(page: Page): Promise<void> {
  const other = await page.context().newPage();
  await other.goto(new URL('/', page.url()).href);
  await other.locator('[data-mode="starting"]').waitFor({ state: 'detached' });
}

/** This tablet keeps its screen on. */
export const keepAwake = (page: Page): Promise<void> =>
  page.context().grantPermissions(['screen-wake-lock'], { origin: new URL(page.url()).origin });

/** From now on nothing can be played. */
export const breakSound = (page: Page): Promise<void> =>
  page.evaluate(() => {
    AudioContext.prototype.createPeriodicWave = () => {
      throw new DOMException('the device is gone', 'InvalidStateError');
    };
  });

/** A browser that shares and writes into folders, as headless ones do not; what is taken goes nowhere. */
export const offerWays = (page: Page) =>
  page.addInitScript(() => {
    const folder = {
      name: 'Records of the salon',
      getFileHandle: async () => {
        throw Object.assign(new Error('gone'), { name: 'NotAllowedError' });
      },
    };
    Object.assign(navigator, { canShare: () => true, share: async () => undefined });
    Object.assign(window, { showDirectoryPicker: async () => folder });
  });

/** All of a newer build is here and waits. */
export const letBuildWait = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const waiting = {
      postMessage: (asked: string, ports: readonly MessagePort[] = []) => {
        if (asked === 'SAY_BUILD') ports[0]?.postMessage('0.2.0 0123abcd');
      },
      addEventListener: () => undefined,
    };
    const registration = {
      waiting,
      installing: null,
      addEventListener: () => undefined,
      update: async () => undefined,
    };
    Object.defineProperty(navigator.serviceWorker, 'ready', { value: Promise.resolve(registration) });
  });
