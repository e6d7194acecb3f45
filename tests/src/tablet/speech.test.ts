import { describe, expect, it } from 'vitest';
import { makeSpeech, type Synthesis, type Utterance, type VoiceState } from '../../../src/tablet/speech';

const english = { lang: 'en-GB', localService: true };
const elsewhere = { lang: 'en-US', localService: false };
const french = { lang: 'fr_FR', localService: true };

function makeTalker(installed: (typeof english)[], isRefusing = false) {
  const told: VoiceState[] = [];
  const spoken: Utterance[] = [];
  const lines: string[] = [];
  let hushed = 0;
  const synthesis: Synthesis = {
    getVoices: () => installed,
    speak: (utterance) => {
      if (isRefusing) throw new Error('not allowed');
      spoken.push(utterance);
    },
    cancel: () => {
      hushed += 1;
    },
    onvoiceschanged: null,
  };
  const makeUtterance = (line: string): Utterance => {
    lines.push(line);
    return { voice: null, lang: '', onerror: null };
  };
  const speech = makeSpeech({ synthesis, makeUtterance }, (state) => told.push(state));
  return { speech, synthesis, installed, told, spoken, lines, countHushed: () => hushed };
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

  it('is unavailable where this browser cannot speak', () => {
    const told: VoiceState[] = [];
    const speech = makeSpeech(null, (state) => told.push(state));
    speech.speakIn('en');
    speech.speak('Chair 3: rinse');
    expect(told.at(-1)).toBe('unavailable');
  });
});
