import { type UseHands, useFingers } from '../hands';

/** What was counted since the last time it was asked for. */
export interface TapCounter {
  readonly hands: UseHands;
  readonly take: () => { readonly taps: number; readonly holds: number; readonly keys: number };
}

/** Fingers on glass that count: every landing, every hold among them, every key typed. */
export function makeTapCounter(): TapCounter {
  let [taps, holds, keys] = [0, 0, 0];
  return {
    hands: async (page, pass) => {
      const own = await useFingers(page, pass);
      return {
        press: (what) => {
          taps += 1;
          return own.press(what);
        },
        hold: (what) => {
          taps += 1;
          holds += 1;
          return own.hold(what);
        },
        type: (into, text) => {
          // The finger lands in the field first.
          taps += 1;
          keys += text.length;
          return own.type(into, text);
        },
      };
    },
    take: () => {
      const counted = { taps, holds, keys };
      [taps, holds, keys] = [0, 0, 0];
      return counted;
    },
  };
}
