import { emptyHouse } from './houses';
import type { Scene, ScenesOf } from './scene';
import type { SceneHand } from './sceneHand';

const toPress = async ({ act }: SceneHand): Promise<void> => {
  await act('day');
  await act('press');
};
/** What is tapped there, one after the other. */
const shown = (shows: string, ...taps: readonly string[]): Scene => ({
  logs: emptyHouse,
  shows,
  go: async (hand) => {
    await toPress(hand);
    for (const tap of taps) await hand.press(tap);
  },
});
const choose = (question: string, option: string) =>
  `[data-question="${question}"] [data-option="${option}"]`;
const again = '[data-act="press-again"]';

/** What a press does: as it opens, pressed until enough, soaked, and hot through. */
export const scenesOfPress: ScenesOf = {
  empty: 'it always shows a press',
  usual: shown('[data-verdict="coolMiddle"]'),
  full: shown(
    '[data-act="press-again"]:disabled',
    choose('section', '2'),
    choose('wetness', 'wet'),
    choose('onPlace', '8'),
    again,
    again,
    again,
  ),
  error: 'every choice there is can be pressed, and nothing is written',
  also: {
    through: shown('[data-verdict="through"]', choose('section', '0.2')),
    damp: shown('[data-verdict]', choose('wetness', 'damp'), choose('section', '0.5'), again),
    tooHot: shown(
      '[data-verdict="tooHot"]',
      choose('section', '0.2'),
      choose('onPlace', '8'),
      '[data-act="hotter"]',
      '[data-act="hotter"]',
    ),
    why: shown('dialog[open] .press-why', '[data-act="why-press"]'),
  },
};
