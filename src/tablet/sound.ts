import type { CallKind } from '../../shared/records/call';
import { ASSUMED_CALL_PULSES, type Audio, playPulses } from './pulses';

/** `asleep`: a browser gives no sound before the first touch, or took it away. */
export type SoundState = 'asleep' | 'ready' | 'unavailable';

/** What is called now, and the line that is spoken after the pulses, where that is wanted. */
export interface Calling {
  readonly kind: CallKind;
  readonly line: string | null;
}

export interface Sound {
  readonly state: () => SoundState;
  /** In a touch or a key alone: asks the browser for sound. The first one that gets it is heard once, softly. */
  arm(): void;
  /** One call, to hear whether it is heard. */
  tryOut(line: string | null): void;
  /** Calls again and again until it is told otherwise; another call is heard at once. */
  call(calling: Calling | null): void;
  stop(): void;
}

/** What speaks, where this browser can. */
export interface Voice {
  speak(line: string): void;
  hush(): void;
}

/** The line is spoken with every so many calls. Assumed because words wear sooner than pulses. */
export const ASSUMED_SPOKEN_EACH = 4;

/** The first touch that gets the sound is answered by this. */
const FIRST = { pitchesHz: ASSUMED_CALL_PULSES.look.pitchesHz.slice(0, 1), pauseS: 0 };

const isSameCall = (one: Calling | null, other: Calling | null): boolean =>
  one?.kind === other?.kind && one?.line === other?.line;

/**
 * The sound of this tablet. Nothing is played while it is asleep; as soon as it wakes, a call that is due is heard.
 * `openAudio` answers null where this browser has none. Words come after the pulses, never instead of them.
 * Checked in tests/src/tablet/sound.test.ts.
 */
export function makeSound(
  openAudio: () => Audio | null,
  onChange: (state: SoundState) => void,
  voice: Voice | null = null,
): Sound {
  let audio: Audio | null = null;
  let isUnavailable = false;
  let calling: Calling | null = null;
  let heard: Calling | null = null;
  let timer: ReturnType<typeof setInterval> | undefined;
  let speaking: ReturnType<typeof setTimeout> | undefined;
  let shown: SoundState = 'asleep';

  const read = (): SoundState => {
    if (isUnavailable) return 'unavailable';
    return audio?.state === 'running' ? 'ready' : 'asleep';
  };

  const play = (pattern: Parameters<typeof playPulses>[1], line: string | null): void => {
    if (audio === null || read() !== 'ready') return;
    try {
      const lengthS = playPulses(audio, pattern);
      clearTimeout(speaking);
      if (line !== null) speaking = setTimeout(() => voice?.speak(line), lengthS * 1000);
    } catch {
      isUnavailable = true;
      tell();
    }
  };

  const beQuiet = (): void => {
    clearInterval(timer);
    clearTimeout(speaking);
    timer = undefined;
    if (heard?.line != null) voice?.hush();
    heard = null;
  };

  const keepCalling = (): void => {
    const now = read() === 'ready' ? calling : null;
    if (isSameCall(now, heard)) return;
    beQuiet();
    if (now === null) return;
    heard = now;
    const pattern = ASSUMED_CALL_PULSES[now.kind];
    let count = 0;
    const callOnce = (): void => {
      play(pattern, count % ASSUMED_SPOKEN_EACH === 0 ? now.line : null);
      count += 1;
    };
    timer = setInterval(callOnce, pattern.againMs);
    callOnce();
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
        if (isFirst && calling === null) play(FIRST, null);
      };
      audio.resume().then(heardOnce, tell);
    },

    tryOut: (line) => play(ASSUMED_CALL_PULSES.due, line),

    call(next) {
      calling = next;
      keepCalling();
    },

    stop() {
      beQuiet();
      if (audio === null) return;
      audio.onstatechange = null;
      audio.close().catch(() => undefined);
      audio = null;
    },
  };
}
