import type { Audio } from '../../../src/tablet/pulses';

interface Played {
  readonly atS: number;
  readonly pitchHz: number;
  readonly harmonics: number;
}

/** A Web Audio context that plays nothing and remembers what it was asked to play. */
export function makeFakeAudio({ isRefusing = false }: { readonly isRefusing?: boolean } = {}) {
  const played: Played[] = [];
  let state = 'suspended';
  let isClosed = false;
  const audio: Audio = {
    get state() {
      return state;
    },
    currentTime: 0,
    destination: {},
    onstatechange: null,
    resume: async () => {
      if (isRefusing) throw new Error('not allowed');
      state = 'running';
    },
    close: async () => {
      isClosed = true;
    },
    createPeriodicWave: (_real, imag) => imag.filter((part) => part > 0).length,
    createOscillator: () => {
      let harmonics = 0;
      const frequency = { value: 0 };
      return {
        frequency,
        setPeriodicWave: (wave: number) => {
          harmonics = wave;
        },
        connect: () => undefined,
        start: (atS: number) => void played.push({ atS, pitchHz: frequency.value, harmonics }),
        stop: () => undefined,
      };
    },
    createGain: () => ({
      gain: { setValueAtTime: () => undefined, linearRampToValueAtTime: () => undefined },
      connect: () => undefined,
    }),
  };
  return {
    audio,
    played,
    isClosed: () => isClosed,
    /** The browser takes the sound away, or gives it back. */
    turn: (next: 'running' | 'suspended') => {
      state = next;
      audio.onstatechange?.();
    },
  };
}
