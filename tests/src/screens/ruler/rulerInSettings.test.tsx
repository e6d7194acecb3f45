import { render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { expect, it, onTestFinished } from 'vitest';
import type { Settings } from '../../../../shared/records/settings';
import { accept } from '../../../../shared/result';
import { RulerProvider } from '../../../../src/screens/ruler/rulerInUse';
import { SettingsScreen } from '../../../../src/screens/settings/SettingsScreen';
import type { TabletInUse } from '../../../../src/tablet/createTablet';
import { act, press, seen, title } from '../bench';
import { settings } from '../playStory';

const tablet: TabletInUse = {
  sound: () => 'ready',
  screen: () => 'awake',
  page: () => 'kept',
  voice: () => 'off',
  soundCheck: () => null,
  noteSoundCheck: () => undefined,
  speakIn: () => undefined,
  tryOut: async () => true,
  call: () => undefined,
};

/** The settings of a tablet of ten inches, opened at the card that is laid on its glass. */
async function layCard(inForce: Settings = settings) {
  const [dotsPerMm, keep] = createSignal<number | null>(null);
  let saved = 0;
  const { unmount } = render(() => (
    <RulerProvider value={{ dotsPerPx: () => 1, sides: () => [1280, 800], pxPerMm: dotsPerMm, keep }}>
      <SettingsScreen
        inForce={inForce}
        nowMs={0}
        tablet={tablet}
        save={async () => {
          saved += 1;
          return accept(undefined);
        }}
        onBar={() => undefined}
      />
    </RulerProvider>
  ));
  onTestFinished(unmount);
  await press('section-tablet');
  const state = seen('[data-line="ruler-state"]');
  await press('to-ruler');
  return { dotsPerMm, state, countSaved: () => saved };
}

const pressTimes = async (times: number, name: string) => {
  for (let time = 0; time < times; time += 1) await press(name);
};
const fault = () => seen('#card-refusal');
const mayKeep = () => !(act('keep-ruler') as HTMLButtonElement).disabled;

it('is set among the settings of this tablet, and no edition of the salon’s is written for it', async () => {
  const { dotsPerMm, state, countSaved } = await layCard();
  expect(title()).toBe('Set the ruler of this tablet');
  expect(state).toContain('Not set on this tablet yet.');
  await press('much-more');
  await press('leave-ruler');
  expect(dotsPerMm()).toBeNull();
  await press('to-ruler');
  await press('keep-ruler');
  expect(dotsPerMm()).toBeCloseTo(149 / 25.4, 9);
  expect(seen('[data-line="ruler-state"]')).toContain('5.87 px are a millimetre here.');
  expect(countSaved()).toBe(0);
});

it('refuses in words a card so wide that the glass would be smaller than any tablet, until it is none', async () => {
  const { dotsPerMm } = await layCard();
  expect(fault()).toBe('');
  await pressTimes(25, 'much-more');
  expect(mayKeep()).toBe(true);
  await press('much-more');
  expect(fault()).toBe('No card is so wide: this glass would be only 6.67 in corner to corner.');
  expect(mayKeep()).toBe(false);
  await press('keep-ruler');
  expect(dotsPerMm()).toBeNull();
  await press('much-less');
  expect(fault()).toBe('');
  await press('keep-ruler');
  expect(dotsPerMm()).toBeCloseTo(149 / 25.4 + 250 / 85.6, 9);
});

it('refuses one so narrow that no glass has dots so coarse, in the unit of the salon', async () => {
  await layCard({ ...settings, units: { ...settings.units, length: 'cm' } });
  await pressTimes(28, 'much-less');
  expect(mayKeep()).toBe(true);
  await press('much-less');
  expect(fault()).toBe('No card is so narrow: this glass would be 60.9 cm corner to corner.');
  expect(mayKeep()).toBe(false);
});

it('lets the lines go no further than half as far again as any card', async () => {
  await layCard();
  await pressTimes(80, 'much-more');
  expect((act('much-more') as HTMLButtonElement).disabled).toBe(true);
  expect(fault()).toContain('No card is so wide');
  await pressTimes(120, 'much-less');
  expect((act('little-less') as HTMLButtonElement).disabled).toBe(true);
  expect(fault()).toContain('No card is so narrow');
});
