import { type Audio, type Pattern, type Pulses, playPulses } from './pulses';

/** `asleep`: a browser gives no sound before the first touch, or took it away. */
export type SoundState = 'asleep' | 'ready' | 'unavailable';

/**
 * What plays pulses on this tablet, one thing at a time. `openAudio` answers null where this browser has none; `onTurn`
 * is told whenever the sound may have come or gone. What fails while playing is closed, and opened anew at the next touch;
 * failing twice in a row, there is no sound. Checked in tests/src/tablet/soundFails.test.ts.
 */
export function makePlayer(openAudio: () => Audio | null, onTurn: () => void) {
  let audio: Audio | null = null;
  let waking: Promise<void> = Promise.resolve();
  let isUnavailable = false;
  let failed = 0;
  let pulses: Pulses | null = null;

  const read = (): SoundState => {
    if (isUnavailable) return 'unavailable';
    return audio?.state === 'running' ? 'ready' : 'asleep';
  };

  const open = (): Audio | null => {
    try {
      return openAudio();
    } catch {
      return null;
    }
  };

  const close = (): void => {
    if (audio === null) return;
    audio.onstatechange = null;
    audio.close().catch(() => undefined);
    audio = null;
    pulses = null;
  };

  /** Does it, and answers what came of it; null where it failed. */
  const attempt = <T>(play: () => T): T | null => {
    try {
      return play();
    } catch {
      failed += 1;
      isUnavailable = failed > 1;
      close();
      onTurn();
      return null;
    }
  };

  return {
    state: read,

    /** In a touch or a key alone: asks for the sound; `onFirst` is done as soon as it is there for the first time. */
    arm(onFirst: () => void): void {
      if (read() !== 'asleep') return;
      const isFirst = audio === null;
      audio ??= open();
      if (audio === null) {
        isUnavailable = true;
        onTurn();
        return;
      }
      audio.onstatechange = onTurn;
      waking = audio.resume().then(() => {
        onTurn();
        if (isFirst) onFirst();
      }, onTurn);
    },

    /** The sound that was asked for is there, or refused; some browsers leave it open for ever. */
    waking: (): Promise<void> => waking,

    /** What sounds ends; answers how long this takes, s, or null where nothing was played. */
    play(pattern: Pick<Pattern, 'pitchesHz' | 'pauseS'>): number | null {
      const playing = audio;
      if (playing === null || read() !== 'ready') return null;
      const begun = attempt(() => {
        pulses?.stop();
        return playPulses(playing, pattern);
      });
      if (begun === null) return null;
      pulses = begun;
      failed = 0;
      return begun.lengthS;
    },

    /** What sounds ends. */
    cut(): void {
      const playing = pulses;
      pulses = null;
      attempt(() => playing?.stop());
    },

    close,
  };
}
