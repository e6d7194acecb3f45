import type { Voice } from './sound';

/** `off`: not wanted. `noVoice`: none of this language is on the tablet itself. `refused`: it would not speak. */
export type VoiceState = 'off' | 'ready' | 'noVoice' | 'refused' | 'unavailable';

interface InstalledVoice {
  readonly lang: string;
  readonly localService: boolean;
}

/** What is spoken, as a browser takes it. */
export interface Utterance {
  voice: InstalledVoice | null;
  lang: string;
  onerror: ((event: { readonly error: string }) => void) | null;
}

/** As much of `speechSynthesis` as is needed. */
export interface Synthesis {
  getVoices(): readonly InstalledVoice[];
  speak(utterance: never): void;
  cancel(): void;
  onvoiceschanged: (() => void) | null;
}

/** What a browser has for speaking. */
export interface SpeechParts {
  readonly synthesis: Synthesis;
  readonly makeUtterance: (line: string) => Utterance;
}

export interface Speech extends Voice {
  /** From now on in this language, or not at all. */
  speakIn(language: string | null): void;
  stop(): void;
}

/** These end a line because the station itself began another, or was told to be quiet. */
const ownEndings: readonly string[] = ['canceled', 'interrupted'];

const isOfLanguage = ({ lang }: InstalledVoice, language: string): boolean =>
  lang.toLowerCase().split(/[-_]/)[0] === language;

/**
 * Speaks a line with a voice of the tablet itself: one that lives elsewhere would send it out of the salon, and is silent
 * without a network. Null where this browser has no speech. Checked in tests/src/tablet/speech.test.ts.
 */
export function makeSpeech(parts: SpeechParts | null, onChange: (state: VoiceState) => void): Speech {
  let language: string | null = null;
  let isRefused = false;

  const findVoice = (): InstalledVoice | undefined =>
    parts?.synthesis
      .getVoices()
      .find((voice) => voice.localService && language !== null && isOfLanguage(voice, language));

  const read = (): VoiceState => {
    if (language === null) return 'off';
    if (parts === null) return 'unavailable';
    if (findVoice() === undefined) return 'noVoice';
    return isRefused ? 'refused' : 'ready';
  };
  const tell = (): void => onChange(read());
  if (parts !== null) parts.synthesis.onvoiceschanged = tell;

  const hush = (): void => parts?.synthesis.cancel();
  const turn = (isNowRefused: boolean): void => {
    isRefused = isNowRefused;
    tell();
  };

  return {
    speakIn(next) {
      language = next;
      turn(false);
      if (next === null) hush();
    },
    speak(line) {
      const voice = findVoice();
      if (parts === null || voice === undefined) return tell();
      try {
        const utterance = parts.makeUtterance(line);
        utterance.voice = voice;
        utterance.lang = voice.lang;
        utterance.onerror = ({ error }) => {
          if (!ownEndings.includes(error)) turn(true);
        };
        hush();
        turn(false);
        parts.synthesis.speak(utterance as never);
      } catch {
        turn(true);
      }
    },
    hush,
    stop() {
      hush();
      if (parts !== null) parts.synthesis.onvoiceschanged = null;
    },
  };
}
