import { render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { expect, it, onTestFinished } from 'vitest';
import { accept } from '../../../../shared/result';
import { RulerProvider } from '../../../../src/screens/ruler/rulerInUse';
import { SettingsScreen } from '../../../../src/screens/settings/SettingsScreen';
import type { TabletInUse } from '../../../../src/tablet/createTablet';
import { press, seen, title } from '../bench';
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

it('is set among the settings of this tablet, and no edition of the salon’s is written for it', async () => {
  const [dotsPerMm, keep] = createSignal<number | null>(null);
  let saved = 0;
  const { unmount } = render(() => (
    <RulerProvider value={{ dotsPerPx: () => 1, pxPerMm: dotsPerMm, keep }}>
      <SettingsScreen
        inForce={settings}
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
  expect(title()).toBe('Settings · This tablet');
  expect(seen('[data-line="ruler-state"]')).toContain('Not set on this tablet yet.');
  await press('to-ruler');
  await press('much-more');
  await press('leave-ruler');
  expect(dotsPerMm()).toBeNull();
  await press('to-ruler');
  await press('keep-ruler');
  expect(dotsPerMm()).toBeCloseTo(149 / 25.4, 9);
  expect(seen('[data-line="ruler-state"]')).toContain('5.87 px are a millimetre here.');
  expect(saved).toBe(0);
});
