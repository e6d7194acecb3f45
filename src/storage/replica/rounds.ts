import { type Result, refuse } from '../../../shared/result';
import type { Exchanged, ReplicaFailure } from './replica';

/** The next round begins so long after one that came to its end, ms. Assumed because nobody walks to another chair and looks for her record sooner. */
export const ASSUMED_ROUND_MS = 60_000;
/** And so long after one that failed, ms, twice as long each time it fails again. Assumed because most networks are back within seconds. */
export const ASSUMED_RETRY_MS = 5_000;
/** So long at most between two rounds, ms. Assumed because whoever mends a network looks within ten minutes whether it is whole. */
export const ASSUMED_RETRY_MAX_MS = 600_000;

export interface RoundParts {
  readonly exchange: (signal: AbortSignal) => Promise<Result<Exchanged, ReplicaFailure>>;
  /** Between 0 and 1: stations that lost the same network do not all come back at once. */
  readonly chance: () => number;
  readonly onEnded: (ended: Result<Exchanged, ReplicaFailure>) => void;
  /** Does something later; answers how it is called off. */
  readonly later: (work: () => void, ms: number) => () => void;
}

export interface Rounds {
  /** Something is new here: a round begins now or, where one is under way, right after it. */
  nudge(): void;
  /** Breaks off, and begins no other. Resolves when nothing is under way any more. */
  stop(): Promise<void>;
}

/** How long until the next round, after so many failures in a row? Half of it is chance. */
export const waitAfter = (failures: number, chance: number): number => {
  const ms =
    failures === 0
      ? ASSUMED_ROUND_MS
      : Math.min(ASSUMED_RETRY_MS * 2 ** (failures - 1), ASSUMED_RETRY_MAX_MS);
  return ms / 2 + (ms / 2) * chance;
};

/**
 * Exchanges at once, then again and again, one at a time, for as long as there are other stations. Nobody waits for it.
 * Checked in tests/src/storage/replica/rounds.test.ts.
 */
export function startRounds({ exchange, chance, onEnded, later }: RoundParts): Rounds {
  const stopping = new AbortController();
  const { signal } = stopping;
  let failures = 0;
  let isNudged = false;
  let underWay: Promise<void> | null = null;
  let callOff = (): void => undefined;

  async function goRound(): Promise<void> {
    const ended = await exchange(signal).catch(() => refuse('notTaken' as const));
    if (signal.aborted) return;
    failures = ended.ok ? 0 : failures + 1;
    onEnded(ended);
    const isOff = !ended.ok && ended.error === 'off';
    if (!isOff) callOff = later(begin, isNudged ? 0 : waitAfter(failures, chance()));
    isNudged = false;
  }

  function begin(): void {
    underWay = goRound().finally(() => {
      underWay = null;
    });
  }

  begin();
  return {
    nudge() {
      isNudged = underWay !== null;
      if (isNudged || signal.aborted) return;
      callOff();
      begin();
    },
    async stop() {
      stopping.abort();
      callOff();
      await underWay;
    },
  };
}
