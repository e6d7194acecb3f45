import { type Accessor, createSignal, onCleanup } from 'solid-js';
import type { Kept } from './keep';
import { ofTablet } from './keep';
import { keepPage, type PageState, type PageWorkers } from './pageKeeper';
import type { SoundState } from './player';
import type { Audio } from './pulses';
import { makeSound } from './sound';
import { keepSoundCheck, readSoundCheck, type SoundCheck } from './soundCheck';
import { makeSpeech, type SpeechParts, type Synthesis, type Utterance, type VoiceState } from './speech';
import type { Calling } from './turns';
import { makeWakeKeeper, type WakeLocks, type WakeState } from './wakeLock';

/** The tablet itself: its screen that must stay awake, its sound, and its page that must open without the network. */
export interface TabletInUse {
  readonly sound: Accessor<SoundState>;
  readonly screen: Accessor<WakeState>;
  readonly page: Accessor<PageState>;
  readonly voice: Accessor<VoiceState>;
  /** What was said when the sound was last tried on this tablet; null where nobody has. */
  readonly soundCheck: Accessor<SoundCheck | null>;
  readonly noteSoundCheck: (answer: SoundCheck['answer'], atMs: number) => void;
  /** One call, to hear whether it is heard, and a line after it. Answers whether it was played. */
  readonly tryOut: (line: string | null) => Promise<boolean>;
  /** These call now, whoever waits first in front. */
  readonly call: (calls: readonly Calling[]) => void;
  /** In which language lines are spoken; null where none are. */
  readonly speakIn: (language: string | null) => void;
}

/** What a browser has of them; missing where it has none. */
export interface TabletParts {
  readonly openAudio: () => Audio | null;
  readonly wakeLocks: WakeLocks | undefined;
  /** Missing where the page is not to be kept: it is being worked on, or was opened from a file. */
  readonly pageWorkers?: PageWorkers | null;
  readonly speech: SpeechParts | null;
  readonly keep: Kept;
}

const findSpeech = (): SpeechParts | null =>
  'speechSynthesis' in window && 'SpeechSynthesisUtterance' in window
    ? {
        synthesis: window.speechSynthesis as unknown as Synthesis,
        makeUtterance: (line) => new SpeechSynthesisUtterance(line) as unknown as Utterance,
      }
    : null;

const findParts = (): TabletParts => ({
  openAudio: () => ('AudioContext' in window ? (new AudioContext() as unknown as Audio) : null),
  wakeLocks: 'wakeLock' in navigator ? navigator.wakeLock : undefined,
  speech: findSpeech(),
  keep: ofTablet,
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
  const [voice, setVoice] = createSignal<VoiceState>('off');
  const [soundCheck, setSoundCheck] = createSignal(readSoundCheck(parts.keep));
  const speech = makeSpeech(parts.speech, setVoice);
  const pulses = makeSound(parts.openAudio, setSound, speech);
  const keeper = makeWakeKeeper(parts.wakeLocks, () => document.visibilityState === 'visible', setScreen);
  if (parts.pageWorkers !== undefined) void keepPage(parts.pageWorkers, setPage);
  const arm = (): void => {
    pulses.arm();
    keeper.arm();
  };
  const look = (): void => keeper.look();
  const touches = ['pointerup', 'keydown'] as const;
  for (const touch of touches) window.addEventListener(touch, arm, { capture: true });
  document.addEventListener('visibilitychange', look);
  window.addEventListener('pageshow', look);
  onCleanup(() => {
    for (const touch of touches) window.removeEventListener(touch, arm, { capture: true });
    document.removeEventListener('visibilitychange', look);
    window.removeEventListener('pageshow', look);
    pulses.stop();
    speech.stop();
    keeper.stop();
  });
  return {
    sound,
    screen,
    page,
    voice,
    soundCheck,
    noteSoundCheck: (answer, atMs) => {
      const check = { answer, atMs };
      keepSoundCheck(parts.keep, check);
      setSoundCheck(check);
    },
    tryOut: pulses.tryOut,
    call: pulses.call,
    speakIn: speech.speakIn,
  };
}
