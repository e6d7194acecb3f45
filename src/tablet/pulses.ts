/** As much of a Web Audio context as three soft pulses need. */
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
  };
  connect(to: never): unknown;
}

/**
 * The fundamental of a pulse, Hz, within 150 to 1000 and with harmonics: published, IEC 60601-1-8 (secondary), from
 * which the shape is borrowed; this is no medical device and claims nothing. Assumed because it is heard over a dryer
 * and does not shrill.
 */
export const ASSUMED_PITCH_HZ = 440;

/** How loud each harmonic is, the fundamental first. Assumed because small speakers carry the upper ones. */
export const ASSUMED_HARMONICS = [1, 0.6, 0.45, 0.3, 0.2] as const;

/** One pulse, its swelling and its fading, and the pause to the next, in s. Assumed because nothing in it startles. */
export const ASSUMED_PULSE_S = { on: 0.2, rise: 0.04, pause: 0.22 } as const;

/** The gain of a pulse, 0 to 1. Assumed because the tablet's own volume does the rest. */
const ASSUMED_GAIN = 0.35;

/** Three of them make a call: published, IEC 60601-1-8 (secondary), medium priority. */
export const PULSES = 3;

/** Plays so many soft pulses, from now on. Answers how long they take, s. */
export function playPulses(audio: Audio, count: number): number {
  const { on, rise, pause } = ASSUMED_PULSE_S;
  const imag = Float32Array.from([0, ...ASSUMED_HARMONICS]);
  const wave = audio.createPeriodicWave(new Float32Array(imag.length), imag);
  const beginS = audio.currentTime + 0.02;
  for (let pulse = 0; pulse < count; pulse += 1) {
    const atS = beginS + pulse * (on + pause);
    const oscillator = audio.createOscillator();
    const gain = audio.createGain();
    oscillator.frequency.value = ASSUMED_PITCH_HZ;
    oscillator.setPeriodicWave(wave as never);
    oscillator.connect(gain as never);
    gain.connect(audio.destination as never);
    gain.gain.setValueAtTime(0, atS);
    gain.gain.linearRampToValueAtTime(ASSUMED_GAIN, atS + rise);
    gain.gain.setValueAtTime(ASSUMED_GAIN, atS + on - rise);
    gain.gain.linearRampToValueAtTime(0, atS + on);
    oscillator.start(atS);
    oscillator.stop(atS + on);
  }
  return count * (on + pause);
}
