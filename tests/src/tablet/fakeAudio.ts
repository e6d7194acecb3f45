import type { Audio } from '../../../src/tablet/pulses';

export interface Played {
  readonly atS: number;
  readonly pitchHz: number;
  readonly harmonics: number;
}

type Change = { readonly atS: number; readonly to: number; readonly isRamp: boolean };

/** What a gain is turned to over time, as the Web Audio standard has it for these three calls. */
function makeGain() {
  let changes: Change[] = [];
  const add = (change: Change) => {
    changes = [...changes, change].sort((one, other) => one.atS - other.atS);
  };
  const readAt = (atS: number): number => {
    const before = changes.findLast((change) => change.atS <= atS);
    const next = changes.find((change) => change.atS > atS);
    const from = before?.to ?? 1;
    if (next?.isRamp !== true) return from;
    const fromS = before?.atS ?? 0;
    return from + ((next.to - from) * (atS - fromS)) / (next.atS - fromS);
  };
  const node: { to: unknown } = { to: null };
  return {
    node,
    readAt,
    gain: {
      setValueAtTime: (to: number, atS: number) => add({ atS, to, isRamp: false }),
      linearRampToValueAtTime: (to: number, atS: number) => add({ atS, to, isRamp: true }),
      cancelScheduledValues: (fromS: number) => {
        changes = changes.filter(({ atS }) => atS < fromS);
      },
    },
    connect: (to: unknown) => {
      node.to = to;
    },
  };
}
type FakeGain = ReturnType<typeof makeGain>;

interface FakeOscillator {
  readonly pitchHz: () => number;
  readonly startS: () => number;
  readonly stopS: () => number;
  readonly to: () => FakeGain | null;
}

/**
 * A Web Audio context that plays nothing, remembers what it was asked to play, and tells what would be heard at a moment.
 * Its clock is the one of the test's timers.
 */
export function makeFakeAudio({
  isRefusing = false,
  resumesAfterMs,
}: {
  readonly isRefusing?: boolean;
  readonly resumesAfterMs?: number;
} = {}) {
  const played: Played[] = [];
  const oscillators: FakeOscillator[] = [];
  const startedAtMs = Date.now();
  const destination = {};
  let state = 'suspended';
  let closed = 0;
  let isBroken = false;
  const nowS = () => (Date.now() - startedAtMs) / 1000;
  const audio: Audio = {
    get state() {
      return state;
    },
    get currentTime() {
      return nowS();
    },
    destination,
    onstatechange: null,
    resume: async () => {
      if (isRefusing) throw new Error('not allowed');
      if (resumesAfterMs !== undefined) await new Promise((resolve) => setTimeout(resolve, resumesAfterMs));
      state = 'running';
    },
    close: async () => {
      closed += 1;
      state = 'closed';
    },
    createPeriodicWave: (_real, imag) => {
      if (isBroken) throw new Error('the device is gone');
      return imag.filter((part) => part > 0).length;
    },
    createOscillator: () => {
      let harmonics = 0;
      let startS = Number.POSITIVE_INFINITY;
      let stopS = Number.POSITIVE_INFINITY;
      let to: FakeGain | null = null;
      const frequency = { value: 0 };
      oscillators.push({
        pitchHz: () => frequency.value,
        startS: () => startS,
        stopS: () => stopS,
        to: () => to,
      });
      return {
        frequency,
        setPeriodicWave: (wave: number) => {
          harmonics = wave;
        },
        connect: (next: FakeGain) => {
          to = next;
        },
        start: (atS: number) => {
          startS = atS;
          played.push({ atS, pitchHz: frequency.value, harmonics });
        },
        stop: (atS: number) => {
          stopS = atS;
        },
      };
    },
    createGain: makeGain,
  };

  const loudnessOf = ({ startS, stopS, to }: FakeOscillator, atS: number): number => {
    if (state !== 'running' || atS < startS() || atS >= stopS()) return 0;
    let loud = 1;
    let next: unknown = to();
    while (next !== null && next !== destination) {
      const gain = next as FakeGain;
      loud *= gain.readAt(atS);
      next = gain.node.to;
    }
    return next === destination ? loud : 0;
  };

  return {
    audio,
    played,
    isClosed: () => closed > 0,
    /** The pitches that are to be heard at this very moment of the timers, or so many ms after it. */
    sounding: (afterMs = 0): readonly number[] =>
      oscillators
        .filter((each) => loudnessOf(each, nowS() + afterMs / 1000) > 0.001)
        .map(({ pitchHz }) => pitchHz()),
    /** How loud all of it is together. */
    loudness: (afterMs = 0): number =>
      oscillators.reduce((sum, each) => sum + loudnessOf(each, nowS() + afterMs / 1000), 0),
    /** From now on nothing can be played, or again. */
    breakDown: (isNowBroken = true) => {
      isBroken = isNowBroken;
    },
    /** The browser takes the sound away, or gives it back. */
    turn: (next: 'running' | 'suspended') => {
      state = next;
      audio.onstatechange?.();
    },
  };
}
