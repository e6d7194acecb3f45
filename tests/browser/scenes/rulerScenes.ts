import type { Page } from 'playwright-core';
import { event, minuteMs, until, untilConfirmed } from './clients';
import { alone, among } from './houses';
import type { Scene, ScenesOf } from './scene';
import type { SceneHand } from './sceneHand';

const dialog = 'dialog[open] .measure';

/** A card was laid on this glass: 5.87 dots a millimetre, a tablet of ten inches. */
export const setRuler = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const { width, height } = window.screen;
    const sides = [width, height].map((px) => Math.round(px * window.devicePixelRatio));
    const of = sides.sort((one, other) => one - other).join('x');
    localStorage.setItem('strandproof.ruler', JSON.stringify({ dotsPerMm: 5.87, of }));
  });

const toFeel = async (hand: SceneHand) => {
  await hand.open(3);
  await hand.press('[data-ledger="wetStretch"]');
  await hand.act('measure');
};
const toOutcome = async (hand: SceneHand) => {
  await hand.open(3);
  await hand.press('[data-ledger="stretch"]');
  await hand.act('measure');
};
/** Readings typed one after the other, each but the last taken. */
const read = async ({ type, act }: SceneHand, ...texts: readonly string[]) => {
  for (const [index, text] of texts.entries()) {
    if (index > 0) await act('reading-next');
    await type('.reading input', text);
  }
};
const asked = untilConfirmed('hotTools');
const scene = (logs: Scene['logs'], shows: string, go: NonNullable<Scene['go']>): Scene => ({
  logs,
  harm: setRuler,
  shows,
  go,
});
const told = (logs: Scene['logs'], verdict: string, ...texts: readonly string[]): Scene =>
  scene(logs, `${dialog} [data-verdict="${verdict}"]`, async (hand) => {
    await toOutcome(hand);
    await read(hand, ...texts);
    await hand.act('reading-next');
  });
const off = until('STRAND_TAKEN_OFF');
/** The ends are off and measured, while the lengths lie in their mix. */
const oneRuns = [
  ...until('STRAND_STARTED', 'lengths'),
  event('STRAND_TAKEN_OFF', { zone: 'ends', why: 'levelReached' }, minuteMs),
];
const toOutcomeOfEnds = async (hand: SceneHand) => {
  await hand.open(3);
  await hand.act('outcome-ends');
  await hand.press('[data-ledger="stretch"]');
  await hand.act('measure');
};

/** Measuring a wet strand on the glass. */
export const scenesOfMeasure: ScenesOf = {
  empty: scene(alone(asked), `${dialog}[data-reading="rest"]`, toFeel),
  usual: scene(alone(asked), `${dialog}[data-reading="pulled"]`, async (hand) => {
    await toFeel(hand);
    await read(hand, '112', '139');
  }),
  full: scene(among(off), `${dialog} [data-past="true"]`, async (hand) => {
    await toOutcome(hand);
    await read(hand, '143.5', '199.5');
  }),
  error: scene(alone(asked), `${dialog} .field-refusal:not(:empty)`, async (hand) => {
    await toFeel(hand);
    await read(hand, '3000');
    await hand.act('reading-next');
  }),
  also: {
    offGlass: scene(alone(asked), '.ruler-short', async (hand) => {
      await toFeel(hand);
      await read(hand, '180', '170');
    }),
    back: scene(alone(asked), `${dialog}[data-reading="back"]`, async (hand) => {
      await toFeel(hand);
      await read(hand, '112', '139', '120');
    }),
    oneRuns: scene(alone(oneRuns), `${dialog} [data-act="strand-broke"]`, async (hand) => {
      await toOutcomeOfEnds(hand);
      await read(hand, '112', '139', '120');
    }),
    snappedWhileOneRuns: scene(alone(oneRuns), `${dialog} [data-verdict="broken"]`, async (hand) => {
      await toOutcomeOfEnds(hand);
      await read(hand, '112', '4o');
      await hand.act('snapped');
    }),
    tooShort: told(alone(off), 'tooShort', '20', '26', '21'),
    short: scene(alone(asked), `${dialog} .reached-said:not(:empty)`, async (hand) => {
      await toFeel(hand);
      await read(hand, '20');
    }),
    sound: told(alone(off), 'sound', '112', '139', '113'),
    gummy: told(among(off), 'gummy', '112', '152', '131'),
    filledFeel: scene(alone(asked), '[data-question="wetStretch"] [aria-pressed="true"]', async (hand) => {
      await toFeel(hand);
      await read(hand, '112', '139', '113');
      await hand.act('reading-next');
      await hand.act('fill-answer');
    }),
    filledOutcome: scene(among(off), '[data-question="stretch"] [aria-pressed="true"]', async (hand) => {
      await toOutcome(hand);
      await read(hand, '112', '152', '131');
      await hand.act('reading-next');
      await hand.act('fill-answer');
    }),
    doubted: told(among(off), 'doubted', '112', '1439', '113'),
    tooLight: told(alone(off), 'tooLight', '112', '120', '112'),
  },
};

/** Setting the ruler with a card: before measuring, and among the settings. */
export const scenesOfSetRuler: ScenesOf = {
  empty: { logs: alone(asked), shows: '.set-ruler', go: toFeel },
  usual: scene(alone(asked), 'main[data-step="ruler"]', async (hand) => {
    await hand.act('settings');
    await hand.press('[data-act="who-Opal"]');
    await hand.act('section-tablet');
    await hand.act('to-ruler');
  }),
  also: {
    oneRuns: { logs: alone(oneRuns), shows: '.set-ruler [data-act="strand-broke"]', go: toOutcomeOfEnds },
  },
  full: scene(among(off), '.set-ruler', async (hand) => {
    await toOutcome(hand);
    await hand.act('set-ruler');
  }),
  error: scene(alone(asked), '#card-refusal:not(:empty)', async (hand) => {
    await toFeel(hand);
    await hand.act('set-ruler');
    for (let presses = 0; presses < 30; presses += 1) await hand.act('much-less');
  }),
};
