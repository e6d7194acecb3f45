import { type Accessor, createSignal, onCleanup } from 'solid-js';
import type { Audio } from './pulses';
import { makeSound, type SoundState } from './sound';
import { makeWakeKeeper, type WakeLocks, type WakeState } from './wakeLock';

/** The tablet itself: its screen that must stay awake, and its sound. */
export interface TabletInUse {
  readonly sound: Accessor<SoundState>;
  readonly screen: Accessor<WakeState>;
  readonly tryOut: () => void;
  readonly call: (isCalling: boolean) => void;
}

/** What a browser has of both; missing where it has none. */
export interface TabletParts {
  readonly openAudio: () => Audio | null;
  readonly wakeLocks: WakeLocks | undefined;
}

const findParts = (): TabletParts => ({
  openAudio: () => ('AudioContext' in window ? (new AudioContext() as unknown as Audio) : null),
  wakeLocks: 'wakeLock' in navigator ? navigator.wakeLock : undefined,
});

/**
 * Screen and sound of this tablet, from its first touch or key on: no browser gives either before. Lives as long as
 * the reactive root that made it. Checked in tests/src/tablet/createTablet.test.tsx.
 */
export function createTablet(parts: TabletParts = findParts()): TabletInUse {
  const [sound, setSound] = createSignal<SoundState>('asleep');
  const [screen, setScreen] = createSignal<WakeState>('resting');
  const voice = makeSound(parts.openAudio, setSound);
  const keeper = makeWakeKeeper(parts.wakeLocks, () => document.visibilityState === 'visible', setScreen);
  const arm = (): void => {
    voice.arm();
    keeper.arm();
  };
  const look = (): void => keeper.look();
  const touches = ['pointerup', 'keydown'] as const;
  for (const touch of touches) window.addEventListener(touch, arm, { capture: true });
  document.addEventListener('visibilitychange', look);
  onCleanup(() => {
    for (const touch of touches) window.removeEventListener(touch, arm, { capture: true });
    document.removeEventListener('visibilitychange', look);
    voice.stop();
    keeper.stop();
  });
  return { sound, screen, tryOut: () => voice.tryOut(), call: (isCalling) => voice.call(isCalling) };
}
