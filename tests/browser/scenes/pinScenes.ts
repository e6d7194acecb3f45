import { emptyHouse, fullHouse, usualHouse } from './houses';
import type { Scene, ScenesOf } from './scene';
import type { SceneHand } from './sceneHand';

/** An invented PIN. */
export const scenePin = '908172';

export const typePin = async ({ press, act }: SceneHand, pin: string): Promise<void> => {
  for (const digit of pin) await press(`dialog[open] [data-key="${digit}"]`);
  await act('pad-done');
};

const toPanel = async ({ act, press }: SceneHand): Promise<void> => {
  await act('settings');
  await press('[data-act="who-Opal"]');
  await act('section-cover');
};
/** Sets it in the settings, as their owner would. */
const setPin = async (hand: SceneHand): Promise<void> => {
  await toPanel(hand);
  await hand.act('set-pin');
  await typePin(hand, scenePin);
  await hand.page.locator('[data-pin="again"]').waitFor();
  await typePin(hand, scenePin);
  await hand.page.locator('[data-pin-set="yes"]').waitFor();
};
const toAsked = async (hand: SceneHand): Promise<void> => {
  await setPin(hand);
  await hand.act('bar');
  await hand.act('settings');
  await hand.page.locator('[data-pin="asked"]').waitFor();
};
const toWaiting = async (hand: SceneHand): Promise<void> => {
  await toAsked(hand);
  await typePin(hand, '111111');
};
const scene = (logs: Scene['logs'], shows: string, go: Scene['go'] = toPanel): Scene => ({ logs, shows, go });

/** The PIN: set, asked for, wrong and waiting, forgotten. */
export const scenesOfPin: ScenesOf = {
  empty: scene(emptyHouse, '[data-pin-set="no"]'),
  usual: scene(usualHouse, '[data-pin="asked"]', toAsked),
  full: scene(fullHouse, '[data-pin="asked"] .pin-dot[data-filled]', async (hand) => {
    await toAsked(hand);
    for (const digit of scenePin) await hand.press(`dialog[open] [data-key="${digit}"]`);
  }),
  error: scene(usualHouse, '[data-pin="waiting"]', toWaiting),
  also: {
    isSet: scene(usualHouse, '[data-pin-set="yes"]', setPin),
    new: scene(usualHouse, '[data-pin="new"]', async (hand) => {
      await toPanel(hand);
      await hand.act('set-pin');
    }),
    easy: scene(usualHouse, '[data-pin="new"] [role="status"] strong:not(:empty)', async (hand) => {
      await toPanel(hand);
      await hand.act('set-pin');
      await typePin(hand, '123456');
    }),
    forgotten: scene(usualHouse, '[data-pin="forgotten"]', async (hand) => {
      await toAsked(hand);
      await hand.act('pin-forgotten');
    }),
    falls: scene(usualHouse, '[data-pin="forgotten"] strong:not(:empty)', async (hand) => {
      await toAsked(hand);
      await hand.act('pin-forgotten');
      await hand.act('forget-pin');
    }),
  },
};
