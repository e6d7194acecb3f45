import { type Audio, PULSES, playPulses } from './pulses';

/** `asleep`: a browser gives no sound before the first touch, or took it away. */
export type SoundState = 'asleep' | 'ready' | 'unavailable';

export interface Sound {
  readonly state: () => SoundState;
  /** In a touch or a key alone: asks the browser for sound. The first one that gets it is heard once, softly. */
  arm(): void;
  /** One call, to hear whether it is heard. */
  tryOut(): void;
  /** Calls again and again until it is told otherwise. */
  call(isCalling: boolean): void;
  stop(): void;
}

/** From one call to the next, ms. Assumed because IEC 60601-1-8 (secondary) lets seconds pass, and it must not wear. */
export const ASSUMED_CALL_AGAIN_MS = 6_000;

/**
 * The sound of this tablet. Nothing is played while it is asleep; as soon as it wakes, a call that is due is heard.
 * `openAudio` answers null where this browser has none. Checked in tests/src/tablet/sound.test.ts.
 */
export function makeSound(openAudio: () => Audio | null, onChange: (state: SoundState) => void): Sound {
  let audio: Audio | null = null;
  let isUnavailable = false;
  let isCalling = false;
  let timer: ReturnType<typeof setInterval> | undefined;
  let shown: SoundState = 'asleep';

  const read = (): SoundState => {
    if (isUnavailable) return 'unavailable';
    return audio?.state === 'running' ? 'ready' : 'asleep';
  };

  const play = (count: number): void => {
    if (audio === null || read() !== 'ready') return;
    try {
      playPulses(audio, count);
    } catch {
      isUnavailable = true;
      tell();
    }
  };

  const keepCalling = (): void => {
    const shouldCall = isCalling && read() === 'ready';
    if (!shouldCall) {
      clearInterval(timer);
      timer = undefined;
      return;
    }
    if (timer !== undefined) return;
    play(PULSES);
    timer = setInterval(() => play(PULSES), ASSUMED_CALL_AGAIN_MS);
  };

  function tell(): void {
    const now = read();
    if (now === shown) return;
    shown = now;
    onChange(now);
    keepCalling();
  }

  const open = (): Audio | null => {
    try {
      return openAudio();
    } catch {
      return null;
    }
  };

  return {
    state: read,

    arm() {
      if (read() !== 'asleep') return;
      const isFirst = audio === null;
      audio ??= open();
      if (audio === null) {
        isUnavailable = true;
        return tell();
      }
      audio.onstatechange = tell;
      const heardOnce = (): void => {
        tell();
        if (isFirst && !isCalling) play(1);
      };
      audio.resume().then(heardOnce, tell);
    },

    tryOut: () => play(PULSES),

    call(next) {
      isCalling = next;
      keepCalling();
    },

    stop() {
      clearInterval(timer);
      timer = undefined;
      if (audio === null) return;
      audio.onstatechange = null;
      audio.close().catch(() => undefined);
      audio = null;
    },
  };
}
