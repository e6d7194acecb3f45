import { type Accessor, createSignal, onCleanup } from 'solid-js';
import { keepPage, type PageState, type PageWorkers } from './pageKeeper';
import type { Audio } from './pulses';
import { makeSound, type SoundState } from './sound';
import { makeWakeKeeper, type WakeLocks, type WakeState } from './wakeLock';

/** The tablet itself: its screen that must stay awake, its sound, and its page that must open without the network. */
export interface TabletInUse {
  readonly sound: Accessor<SoundState>;
  readonly screen: Accessor<WakeState>;
  readonly page: Accessor<PageState>;
  readonly tryOut: () => void;
  readonly call: (isCalling: boolean) => void;
}

/** What a browser has of them; missing where it has none. */
export interface TabletParts {
  readonly openAudio: () => Audio | null;
  readonly wakeLocks: WakeLocks | undefined;
  /** Missing where the page is not to be kept: it is being worked on, or was opened from a file. */
  readonly pageWorkers?: PageWorkers | null;
}

const findParts = (): TabletParts => ({
  openAudio: () => ('AudioContext' in window ? (new AudioContext() as unknown as Audio) : null),
  wakeLocks: 'wakeLock' in navigator ? navigator.wakeLock : undefined,
  ...(import.meta.env.PROD && location.protocol.startsWith('http')
    ? { pageWorkers: 'serviceWorker' in navigator ? navigator.serviceWorker : null }
    : {}),
});

/**
 * Screen and sound of this tablet, from its first touch or key on: no browser gives either before; and its page, which
 * is kept at once. Lives as long as the reactive root that made it. Checked in tests/src/tablet/createTablet.test.tsx.
 */
export function createTablet(parts: TabletParts = findParts()): TabletInUse {
  const [sound, setSound] = createSignal<SoundState>('asleep');
  const [screen, setScreen] = createSignal<WakeState>('resting');
  const [page, setPage] = createSignal<PageState>('asking');
  const voice = makeSound(parts.openAudio, setSound);
  const keeper = makeWakeKeeper(parts.wakeLocks, () => document.visibilityState === 'visible', setScreen);
  if (parts.pageWorkers !== undefined) void keepPage(parts.pageWorkers, setPage);
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
  return { sound, screen, page, tryOut: () => voice.tryOut(), call: (isCalling) => voice.call(isCalling) };
}
