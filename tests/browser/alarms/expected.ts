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

/**
 * First look after two minutes, then every five; over for three minutes it is an overrun, and calls again three minutes
 * after each time it was heard: what the station promises.
 */
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
    const overrunAtMs = strand.dueAtMs + AGAIN_OVER_MS;
    const kind = atMs < overrunAtMs ? 'due' : 'overrun';
    if (strand.heardAtMs < strand.dueAtMs)
      return { kind, sinceMs: atMs < overrunAtMs ? strand.dueAtMs : overrunAtMs };
    const againAtMs = strand.heardAtMs + AGAIN_OVER_MS;
    return { kind, sinceMs: againAtMs <= atMs ? againAtMs : strand.dueAtMs };
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

const gravity: readonly CallKind[] = ['look', 'due', 'overrun'];

/** Somebody calls whom nobody has heard yet. `key` tells this call from every other, also of the same strand. */
interface PaperCall {
  readonly key: string;
  readonly kind: CallKind;
  readonly sinceMs: number;
}

export const listUnheard = (strands: readonly PaperStrand[], atMs: number): readonly PaperCall[] =>
  strands.flatMap((strand) => {
    const call = isUnheard(strand, atMs) ? findPaperCall(strand, atMs) : null;
    return call === null ? [] : [{ ...call, key: `${strand.id} ${strand.clock} ${call.sinceMs}` }];
  });

const findGravest = (calls: readonly PaperCall[]): CallKind | null =>
  gravity.findLast((kind) => calls.some((call) => call.kind === kind)) ?? null;

/** One call as it is to be heard; an onset begins what it names, the others repeat the gravest. */
export interface ExpectedCall {
  readonly atMs: number;
  readonly kind: CallKind;
  /** Whose calls begin with it; none where it repeats. */
  readonly begins: readonly string[];
  /** Another strand was called for already, and for the same: by its kind alone nobody would hear that it begins. */
  readonly isAmid: boolean;
  /** By how much it comes after it fell due, where only a tick was waited for; 0 where the page was hidden or new. */
  readonly lateMs: number;
  /** A repetition that falls on the very moment another call begins: either may win. */
  mayLack: boolean;
}

/** The sound of the salon on paper: moved on second by second, it lists every call that is to be heard. */
export function makePaper(startAtMs: number) {
  const strands: PaperStrand[] = [];
  const calls: ExpectedCall[] = [];
  /** When the page was new, and all that called began anew. */
  const newAtMs: number[] = [];
  let nowMs = startAtMs;
  let seenMs = startAtMs;
  let unheard: readonly PaperCall[] = [];
  let leftMs = Number.POSITIVE_INFINITY;

  const hear = (kind: CallKind, begun: readonly PaperCall[], isByTick: boolean): void => {
    const gravest = findGravest(unheard) ?? kind;
    leftMs = againMs[gravest];
    const lateMs = isByTick ? nowMs - Math.min(nowMs, ...begun.map(({ sinceMs }) => sinceMs)) : 0;
    const begins = begun.map(({ key }) => key);
    const isAmid =
      begins.length > 0 &&
      kind === gravest &&
      unheard.some((call) => call.kind === kind && !begins.includes(call.key));
    calls.push({ atMs: nowMs, kind, begins, isAmid, lateMs, mayLack: false });
  };

  /** The station sees the time, and calls for what is new. */
  const see = (isByTick = false): void => {
    seenMs = nowMs;
    settle(isByTick);
  };
  /** Something was heard, looked at or taken off, or fell due. */
  function settle(isByTick = false): void {
    const before = new Set(unheard.map(({ key }) => key));
    unheard = listUnheard(strands, seenMs);
    if (unheard.length === 0) leftMs = Number.POSITIVE_INFINITY;
    const begun = unheard.filter(({ key }) => !before.has(key));
    const kind = findGravest(begun);
    if (kind === null) return;
    const last = calls.at(-1);
    if (last !== undefined && last.atMs === nowMs && last.begins.length === 0) last.mayLack = true;
    hear(kind, begun, isByTick);
  }

  const run = (ms: number): void => {
    const endMs = nowMs + ms;
    while (nowMs < endMs) {
      const tickInMs = second - (nowMs % second);
      const stepMs = Math.min(tickInMs, leftMs, endMs - nowMs);
      const isRepeat = stepMs === leftMs;
      nowMs += stepMs;
      leftMs -= stepMs;
      const gravest = findGravest(unheard);
      if (isRepeat && gravest !== null) hear(gravest, [], true);
      if (stepMs === tickInMs) see(true);
    }
  };

  return {
    strands,
    calls,
    newAtMs,
    nowMs: () => nowMs,
    seenMs: () => seenMs,
    isCalling: () => unheard.length > 0,
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
      unheard = [];
      newAtMs.push(nowMs);
      see();
    },
  };
}
