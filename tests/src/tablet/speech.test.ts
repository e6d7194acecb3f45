import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  ASSUMED_VOICE_STARTS_MS,
  makeSpeech,
  type Synthesis,
  type Utterance,
  type VoiceState,
} from '../../../src/tablet/speech';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const english = { lang: 'en-GB', localService: true };
const elsewhere = { lang: 'en-US', localService: false };
const french = { lang: 'fr_FR', localService: true };

function makeTalker(installed: (typeof english)[], isRefusing = false) {
  const told: VoiceState[] = [];
  const spoken: Utterance[] = [];
  const lines: string[] = [];
  /** What the browser was asked for, in order. */
  const asked: string[] = [];
  const state = { speaking: false, pending: false };
  const synthesis: Synthesis = {
    get speaking() {
      return state.speaking;
    },
    get pending() {
      return state.pending;
    },
    getVoices: () => installed,
    speak: (utterance) => {
      if (isRefusing) throw new Error('not allowed');
      asked.push('speak');
      spoken.push(utterance);
    },
    cancel: () => void asked.push('cancel'),
    resume: () => void asked.push('resume'),
    onvoiceschanged: null,
  };
  const makeUtterance = (line: string): Utterance => {
    lines.push(line);
    return { voice: null, lang: '', onstart: null, onend: null, onerror: null };
  };
  const speech = makeSpeech({ synthesis, makeUtterance }, (state) => told.push(state));
  return { speech, synthesis, installed, told, spoken, lines, asked, state };
}

describe('the spoken line', () => {
  it('is off until it is wanted, and again when it is not', () => {
    const { speech, spoken, told } = makeTalker([english]);
    speech.speak('Chair 3: rinse');
    expect([spoken, told.at(-1)]).toEqual([[], 'off']);
    speech.speakIn('en');
    speech.speakIn(null);
    speech.speak('Chair 3: rinse');
    expect([spoken, told.at(-1)]).toEqual([[], 'off']);
  });

  it('is spoken with a voice of the language that is on the tablet itself', () => {
    const { speech, spoken, lines, told } = makeTalker([french, elsewhere, english]);
    speech.speakIn('en');
    speech.speak('Chair 3: rinse');
    expect([lines, spoken[0]?.voice, spoken[0]?.lang]).toEqual([['Chair 3: rinse'], english, 'en-GB']);
    expect(told.at(-1)).toBe('ready');
  });

  it.each([
    ['no voice at all', []],
    ['voices of other languages', [french]],
    ['one that lives elsewhere', [elsewhere]],
  ])('is not spoken with %s, and that is told', (_title, installed) => {
    const { speech, spoken, told } = makeTalker(installed);
    speech.speakIn('en');
    speech.speak('Chair 3: rinse');
    expect([spoken, told.at(-1)]).toEqual([[], 'noVoice']);
  });

  it('is ready once the browser has found its voices', () => {
    const { speech, synthesis, installed, told } = makeTalker([]);
    speech.speakIn('en');
    installed.push(english);
    synthesis.onvoiceschanged?.();
    expect(told).toEqual(['noVoice', 'ready']);
  });

  it('is told as refused, but not where the station itself cut it short', () => {
    const { speech, spoken, told } = makeTalker([english]);
    speech.speakIn('en');
    speech.speak('Chair 3: rinse');
    spoken[0]?.onerror?.({ error: 'interrupted' });
    expect(told.at(-1)).toBe('ready');
    spoken[0]?.onerror?.({ error: 'not-allowed' });
    expect(told.at(-1)).toBe('refused');
    const refusing = makeTalker([english], true);
    refusing.speech.speakIn('en');
    refusing.speech.speak('Chair 3: rinse');
    expect(refusing.told.at(-1)).toBe('refused');
  });

  it('stays told as refused until a line is heard to begin, whatever is asked of it', () => {
    const { speech, spoken, told } = makeTalker([english]);
    speech.speakIn('en');
    speech.speak('Chair 3: rinse');
    spoken[0]?.onerror?.({ error: 'not-allowed' });
    told.length = 0;
    speech.speakIn('en');
    for (const error of ['not-allowed', 'not-allowed']) {
      speech.speak('Chair 3: rinse');
      spoken.at(-1)?.onerror?.({ error });
    }
    expect(told).toEqual([]);
    speech.speak('Chair 3: rinse');
    spoken.at(-1)?.onstart?.();
    expect(told).toEqual(['ready']);
  });

  it('is refused where nothing is heard to begin in time, and not where it began or was silenced', () => {
    const silent = makeTalker([english]);
    silent.speech.speakIn('en');
    silent.speech.speak('Chair 3: rinse');
    vi.advanceTimersByTime(ASSUMED_VOICE_STARTS_MS - 1);
    expect(silent.told.at(-1)).toBe('ready');
    vi.advanceTimersByTime(1);
    expect(silent.told.at(-1)).toBe('refused');
    const heard = makeTalker([english]);
    heard.speech.speakIn('en');
    heard.speech.speak('Chair 3: rinse');
    heard.spoken[0]?.onstart?.();
    vi.advanceTimersByTime(10 * ASSUMED_VOICE_STARTS_MS);
    expect(heard.told).toEqual(['ready']);
    heard.speech.speak('Chair 4: rinse');
    heard.speech.hush();
    vi.advanceTimersByTime(10 * ASSUMED_VOICE_STARTS_MS);
    expect(heard.told).toEqual(['ready']);
  });

  it('is never cut short by its own silence: the browser is hushed only while it speaks or is about to', () => {
    const { speech, asked, state } = makeTalker([english]);
    speech.speakIn(null);
    speech.speakIn('en');
    speech.hush();
    speech.speak('Chair 3: rinse');
    expect(asked).toEqual(['resume', 'speak']);
    for (const being of ['speaking', 'pending'] as const) {
      asked.length = 0;
      state[being] = true;
      speech.speak('Chair 4: rinse');
      expect(asked).toEqual(['cancel', 'resume', 'speak']);
      state[being] = false;
    }
    asked.length = 0;
    state.speaking = true;
    speech.speakIn('en');
    expect(asked).toEqual([]);
    speech.speakIn(null);
    expect(asked).toEqual(['cancel']);
  });

  it('is unavailable where this browser cannot speak', () => {
    const told: VoiceState[] = [];
    const speech = makeSpeech(null, (state) => told.push(state));
    speech.speakIn('en');
    speech.speak('Chair 3: rinse');
    expect(told.at(-1)).toBe('unavailable');
  });
});
