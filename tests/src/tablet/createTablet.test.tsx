import { createRoot } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { createTablet, type TabletInUse } from '../../../src/tablet/createTablet';
import { makeFakeAudio } from './fakeAudio';

const memory = { getItem: () => null, setItem: () => undefined };
const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('the tablet', () => {
  it.each(['pointerup', 'keydown'])(
    'is armed by the first %s, and left alone after its screens',
    async (touch) => {
      const fake = makeFakeAudio();
      let asked = 0;
      const [tablet, dispose] = createRoot<[TabletInUse, () => void]>((end) => [
        createTablet({
          openAudio: () => fake.audio,
          speech: null,
          keep: memory,
          wakeLocks: {
            request: async () => {
              asked += 1;
              return { released: false, release: async () => undefined, addEventListener: () => undefined };
            },
          },
        }),
        end,
      ]);
      expect([tablet.sound(), tablet.screen()]).toEqual(['asleep', 'resting']);
      window.dispatchEvent(new Event(touch));
      await settle();
      expect([tablet.sound(), tablet.screen(), asked]).toEqual(['ready', 'awake', 1]);
      dispose();
      expect(fake.isClosed()).toBe(true);
    },
  );

  it('has neither sound nor a lock where the browser has none, and says so after the first touch', async () => {
    const [tablet, dispose] = createRoot<[TabletInUse, () => void]>((end) => [
      createTablet({ openAudio: () => null, wakeLocks: undefined, speech: null, keep: memory }),
      end,
    ]);
    window.dispatchEvent(new Event('pointerup'));
    await settle();
    expect([tablet.sound(), tablet.screen()]).toEqual(['unavailable', 'unavailable']);
    dispose();
  });

  it.each([
    ['has no way to keep a page', null, 'refused'],
    ['is not asked to', undefined, 'asking'],
  ] as const)('says of its page what a browser does that %s', async (_title, pageWorkers, state) => {
    const [tablet, dispose] = createRoot<[TabletInUse, () => void]>((end) => [
      createTablet({
        openAudio: () => null,
        wakeLocks: undefined,
        speech: null,
        keep: memory,
        ...(pageWorkers === undefined ? {} : { pageWorkers }),
      }),
      end,
    ]);
    await settle();
    expect(tablet.page()).toBe(state);
    dispose();
  });
});
