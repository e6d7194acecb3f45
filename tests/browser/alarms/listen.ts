import type { Page } from 'playwright-core';

/** One run of pulses as the tablet played it, by its own clock. */
export interface HeardCall {
  readonly atMs: number;
  readonly pitchesHz: readonly number[];
}

/** One entry the station has acknowledged. */
export interface Acknowledged {
  readonly name: string;
  readonly entry: { readonly type?: string; readonly atMs?: number; readonly payload?: { clock?: string } };
}

type Said =
  | { readonly what: 'call'; readonly atMs: number; readonly pitchesHz: readonly number[] }
  | ({ readonly what: 'entry' } & Acknowledged);

/** Hears every pulse that is played and every entry that is acknowledged, over reloads; before the page is opened. */
export async function listen(page: Page) {
  const heard: HeardCall[] = [];
  const entries: Acknowledged[] = [];
  await page.exposeFunction('sayHeard', (said: Said) => {
    if (said.what === 'call') heard.push({ atMs: said.atMs, pitchesHz: said.pitchesHz });
    else entries.push({ name: said.name, entry: said.entry });
  });
  await page.addInitScript(() => {
    const { sayHeard } = window as unknown as { sayHeard: (said: unknown) => void };
    let pitchesHz: number[] = [];
    const { createPeriodicWave } = AudioContext.prototype;
    AudioContext.prototype.createPeriodicWave = function (...args) {
      const call = { what: 'call', atMs: Date.now(), pitchesHz: [] as number[] };
      pitchesHz = call.pitchesHz;
      queueMicrotask(() => sayHeard(call));
      return createPeriodicWave.apply(this, args);
    };
    const { start } = OscillatorNode.prototype;
    OscillatorNode.prototype.start = function (atS) {
      pitchesHz.push(this.frequency.value);
      start.call(this, atS);
    };
    const { postMessage } = BroadcastChannel.prototype;
    BroadcastChannel.prototype.postMessage = function (message) {
      if (message?.kind === 'acknowledged') {
        sayHeard({ what: 'entry', name: message.name, entry: message.entry });
      }
      postMessage.call(this, message);
    };
  });
  return { heard, entries };
}
