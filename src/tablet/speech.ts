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
  onstart: (() => void) | null;
  onend: (() => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
}

/** As much of `speechSynthesis` as is needed. */
export interface Synthesis {
  readonly speaking: boolean;
  readonly pending: boolean;
  getVoices(): readonly InstalledVoice[];
  speak(utterance: never): void;
  cancel(): void;
  resume(): void;
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

/** A line that has not begun after so long, ms, is one the browser refused. Assumed because by then the next call is heard. */
export const ASSUMED_VOICE_STARTS_MS = 5_000;

/** These end a line because the station itself began another, or was told to be quiet. */
const ownEndings: readonly string[] = ['canceled', 'interrupted'];

const isOfLanguage = ({ lang }: InstalledVoice, language: string): boolean =>
  lang.toLowerCase().split(/[-_]/)[0] === language;

/**
 * Speaks a line with a voice of the tablet itself: one that lives elsewhere would send it out of the salon, and is silent
 * without a network. Refused once, it is said so until a line is heard to begin. Null where this browser has no speech.
 * Checked in tests/src/tablet/speech.test.ts.
 */
export function makeSpeech(parts: SpeechParts | null, onChange: (state: VoiceState) => void): Speech {
  let language: string | null = null;
  let isRefused = false;
  /** Held here until it ends: an engine may drop one that nobody holds, in mid sentence. */
  let current: Utterance | null = null;
  let patience: ReturnType<typeof setTimeout> | undefined;

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

  const turn = (isNowRefused: boolean): void => {
    if (isRefused === isNowRefused) return;
    isRefused = isNowRefused;
    tell();
  };
  const letGo = (): void => {
    clearTimeout(patience);
    current = null;
  };
  /** Asked to be quiet while it is, an engine may swallow the next line instead. */
  const hush = (): void => {
    letGo();
    if (parts?.synthesis.speaking || parts?.synthesis.pending) parts.synthesis.cancel();
  };

  const makeLine = (made: Utterance, voice: InstalledVoice): Utterance => {
    made.voice = voice;
    made.lang = voice.lang;
    made.onstart = () => {
      if (made === current) clearTimeout(patience);
      turn(false);
    };
    made.onend = () => {
      if (made === current) letGo();
    };
    made.onerror = ({ error }) => {
      if (made === current) letGo();
      if (!ownEndings.includes(error)) turn(true);
    };
    return made;
  };

  return {
    speakIn(next) {
      if (next === language) return;
      language = next;
      isRefused = false;
      if (next === null) hush();
      tell();
    },
    speak(line) {
      const voice = findVoice();
      if (parts === null || voice === undefined) return tell();
      hush();
      try {
        current = makeLine(parts.makeUtterance(line), voice);
        patience = setTimeout(() => turn(true), ASSUMED_VOICE_STARTS_MS);
        // After a sleep some engines stand still until they are told to go on.
        parts.synthesis.resume();
        parts.synthesis.speak(current as never);
      } catch {
        letGo();
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
