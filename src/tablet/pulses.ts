import type { CallKind } from '../../shared/records/call';

/** As much of a Web Audio context as soft pulses need. */
export interface Audio {
  readonly state: string;
  readonly currentTime: number;
  readonly destination: unknown;
  onstatechange: (() => void) | null;
  resume(): Promise<void>;
  close(): Promise<void>;
  createPeriodicWave(real: Float32Array<ArrayBuffer>, imag: Float32Array<ArrayBuffer>): unknown;
  createOscillator(): Oscillator;
  createGain(): Gain;
}

interface Oscillator {
  readonly frequency: { value: number };
  setPeriodicWave(wave: never): void;
  connect(to: never): unknown;
  start(atS: number): void;
  stop(atS: number): void;
}

interface Gain {
  readonly gain: {
    setValueAtTime(value: number, atS: number): unknown;
    linearRampToValueAtTime(value: number, atS: number): unknown;
    cancelScheduledValues(fromS: number): unknown;
  };
  connect(to: never): unknown;
}

/** How loud each harmonic is, the fundamental first. Assumed because small speakers carry the upper ones. */
export const ASSUMED_HARMONICS = [1, 0.6, 0.45, 0.3, 0.2] as const;

/** One pulse, its swelling and its fading, in s. Assumed because nothing in it startles. */
export const ASSUMED_PULSE_S = { on: 0.2, rise: 0.04 } as const;

/** One call: its pulses by their fundamentals, the pause after each, and from one call to the next. */
export interface Pattern {
  readonly pitchesHz: readonly number[];
  readonly pauseS: number;
  readonly againMs: number;
}

/**
 * How does each call sound? Three soft pulses of 150 to 1000 Hz with harmonics, repeated: published, IEC 60601-1-8
 * (secondary), medium priority, from which the shape is borrowed; this is no medical device and claims nothing. A look
 * is one low pitch, slow; what is due rises; an overrun falls, twice three, quickly. Assumed because direction and pace
 * are told apart over a dryer where pitch alone is not, and because what is graver may be heard sooner again without
 * wearing.
 */
export const ASSUMED_CALL_PULSES: Readonly<Record<CallKind, Pattern>> = {
  look: { pitchesHz: [392, 392, 392], pauseS: 0.3, againMs: 8_000 },
  due: { pitchesHz: [440, 554, 659], pauseS: 0.22, againMs: 6_000 },
  overrun: { pitchesHz: [784, 659, 523, 784, 659, 523], pauseS: 0.12, againMs: 5_000 },
};

/** The gain of a pulse, 0 to 1. Assumed because the tablet's own volume does the rest. */
const ASSUMED_GAIN = 0.35;

/** Pulses under way: how long they take, s, and how to end them softly at once. */
export interface Pulses {
  readonly lengthS: number;
  readonly stop: () => void;
}

/** Plays soft pulses of these pitches, from now on. */
export function playPulses(
  audio: Audio,
  { pitchesHz, pauseS }: Pick<Pattern, 'pitchesHz' | 'pauseS'>,
): Pulses {
  const { on, rise } = ASSUMED_PULSE_S;
  const imag = Float32Array.from([0, ...ASSUMED_HARMONICS]);
  const wave = audio.createPeriodicWave(new Float32Array(imag.length), imag);
  const beginS = audio.currentTime + 0.02;
  const all = audio.createGain();
  all.connect(audio.destination as never);
  pitchesHz.forEach((pitchHz, pulse) => {
    const atS = beginS + pulse * (on + pauseS);
    const oscillator = audio.createOscillator();
    const gain = audio.createGain();
    oscillator.frequency.value = pitchHz;
    oscillator.setPeriodicWave(wave as never);
    oscillator.connect(gain as never);
    gain.connect(all as never);
    gain.gain.setValueAtTime(0, atS);
    gain.gain.linearRampToValueAtTime(ASSUMED_GAIN, atS + rise);
    gain.gain.setValueAtTime(ASSUMED_GAIN, atS + on - rise);
    gain.gain.linearRampToValueAtTime(0, atS + on);
    oscillator.start(atS);
    oscillator.stop(atS + on);
  });
  return {
    lengthS: pitchesHz.length * (on + pauseS),
    /** Those that have not begun yet go through the same gain. */
    stop: () => {
      const nowS = audio.currentTime;
      all.gain.cancelScheduledValues(nowS);
      all.gain.setValueAtTime(1, nowS);
      all.gain.linearRampToValueAtTime(0, nowS + rise);
    },
  };
}
