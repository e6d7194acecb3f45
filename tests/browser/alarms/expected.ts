import type { CallKind } from '../../../shared/records/call';

const minute = 60_000;
const second = 1000;

/** A strand as whoever set it going would write it on paper: nothing of it is read from the station. */
export interface PaperStrand {
  readonly id: string;
  readonly chair: number;
  readonly clock: string;
  readonly startedAtMs: number;
  readonly dueAtMs: number;
  readonly lookedAtMs: number[];
  heardAtMs: number;
  isOff: boolean;
}

/** First look after two minutes, then every five; over, it calls every three minutes: what the station promises. */
const FIRST_LOOK_MS = 2 * minute;
const LOOK_EVERY_MS = 5 * minute;
const AGAIN_OVER_MS = 3 * minute;

/** From one call to the next of a kind, as the station promises. */
export const againMs: Readonly<Record<CallKind, number>> = {
  look: 8 * second,
  due: 6 * second,
  overrun: 5 * second,
};

/** What does this strand call for at this moment, and since when? */
export function findPaperCall(strand: PaperStrand, atMs: number): { kind: CallKind; sinceMs: number } | null {
  if (strand.isOff) return null;
  if (atMs >= strand.dueAtMs) {
    let sinceMs = strand.dueAtMs;
    while (sinceMs + AGAIN_OVER_MS <= atMs) sinceMs += AGAIN_OVER_MS;
    return { kind: sinceMs === strand.dueAtMs ? 'due' : 'overrun', sinceMs };
  }
  let lookAtMs: number | null = null;
  for (let at = strand.startedAtMs + FIRST_LOOK_MS; at <= atMs && at < strand.dueAtMs; at += LOOK_EVERY_MS) {
    lookAtMs = at;
  }
  if (lookAtMs === null) return null;
  const since = lookAtMs;
  return strand.lookedAtMs.some((at) => at >= since) ? null : { kind: 'look', sinceMs: since };
}

export const isUnheard = (strand: PaperStrand, atMs: number): boolean => {
  const call = findPaperCall(strand, atMs);
  return call !== null && strand.heardAtMs < call.sinceMs;
};

const gravity: readonly (CallKind | null)[] = [null, 'look', 'due', 'overrun'];

/** What is to be heard at this moment: the gravest of what nobody has heard yet. */
export const findPaperKind = (strands: readonly PaperStrand[], atMs: number): CallKind | null =>
  strands
    .filter((strand) => isUnheard(strand, atMs))
    .map((strand) => findPaperCall(strand, atMs)?.kind ?? null)
    .reduce<CallKind | null>(
      (gravest, kind) => (gravity.indexOf(kind) > gravity.indexOf(gravest) ? kind : gravest),
      null,
    );

/** One call as it is to be heard; an `onset` begins one, the others repeat it. */
export interface ExpectedCall {
  readonly atMs: number;
  readonly kind: CallKind;
  readonly isOnset: boolean;
  /** By how much it comes after it fell due, where only a tick was waited for; 0 where the page was hidden or new. */
  readonly lateMs: number;
  /** A repetition that falls on the very moment another call begins: either may win. */
  mayLack: boolean;
}

/** The sound of the salon on paper: moved on second by second, it lists every call that is to be heard. */
export function makePaper(startAtMs: number) {
  const strands: PaperStrand[] = [];
  const calls: ExpectedCall[] = [];
  let nowMs = startAtMs;
  let seenMs = startAtMs;
  let kind: CallKind | null = null;
  let leftMs = 0;

  const findTrueAtMs = (): number =>
    Math.min(
      ...strands
        .filter((strand) => isUnheard(strand, seenMs) && findPaperCall(strand, seenMs)?.kind === kind)
        .map((strand) => findPaperCall(strand, seenMs)?.sinceMs ?? nowMs),
    );

  const hear = (isOnset: boolean, isByTick: boolean): void => {
    if (kind === null) return;
    leftMs = againMs[kind];
    const lateMs = isOnset && isByTick ? nowMs - findTrueAtMs() : 0;
    calls.push({ atMs: nowMs, kind, isOnset, lateMs, mayLack: false });
  };

  /** The station sees the time, and calls for what is gravest now. */
  const see = (isByTick = false): void => {
    seenMs = nowMs;
    settle(isByTick);
  };
  /** Something was heard, looked at or taken off. */
  function settle(isByTick = false): void {
    const next = findPaperKind(strands, seenMs);
    if (next === kind) return;
    const last = calls.at(-1);
    if (last !== undefined && last.atMs === nowMs && !last.isOnset) last.mayLack = true;
    kind = next;
    hear(true, isByTick);
  }

  const run = (ms: number): void => {
    const endMs = nowMs + ms;
    while (nowMs < endMs) {
      const tickInMs = second - (nowMs % second);
      const repeatInMs = kind === null ? Number.POSITIVE_INFINITY : leftMs;
      const stepMs = Math.min(tickInMs, repeatInMs, endMs - nowMs);
      nowMs += stepMs;
      leftMs -= stepMs;
      if (stepMs === repeatInMs) hear(false, true);
      if (stepMs === tickInMs) see(true);
    }
  };

  return {
    strands,
    calls,
    nowMs: () => nowMs,
    seenMs: () => seenMs,
    kind: () => kind,
    run,
    see: () => see(),
    settle: () => settle(),
    /** The page was hidden: its timers stood still, and what is due calls as soon as it is seen. */
    sleep: (ms: number): void => {
      nowMs += ms;
      see();
    },
    /** The page is new: what calls is heard from its beginning, at the first touch. */
    reload: (): void => {
      kind = null;
      see();
    },
  };
}
