import { type Result, refuse } from '../../shared/result';
import { readRecordId } from '../storage/replica/name';
import type { Exchanged, Here, Replica, ReplicaFailure } from '../storage/replica/replica';
import { type Rounds, startRounds } from '../storage/replica/rounds';
import { CLOSED, ERASED_LOG, SKIN_TEST } from './logNames';

/** How this station stands with the others. Nothing waits for it: what is here is here. */
export type Others =
  /** There are none; or nobody knows yet. */
  | { readonly kind: 'off' | 'asking' }
  /** What either side had, the other has; so it was then. */
  | ({ readonly kind: 'inStep'; readonly atMs: number } & LeftBehind)
  | ({
      readonly kind: 'apart';
      readonly why: Exclude<ReplicaFailure, 'off' | 'stopped'>;
      /** When they were last in step; null: not since this window was opened. */
      readonly inStepAtMs: number | null;
      /** So many records of here are not there; null where nobody knows what is there. */
      readonly waiting: number | null;
    } & LeftBehind);

/** Of what the others have: what was not taken up, and what is looked at again each time. */
type LeftBehind = Pick<Exchanged, 'refused' | 'later'>;

export interface ReplicatingParts {
  readonly replica: Replica;
  readonly here: Here;
  readonly now: () => number;
  readonly chance: () => number;
  /** null: this window does not write, so another one knows. */
  readonly show: (others: Others | null) => void;
  /** Were there ever others? Kept by the tablet, so that a server that is gone is told from one that has none. */
  readonly known: { readonly read: () => boolean; readonly keep: (isKnown: boolean) => void };
  /** So many are refused that were not before. */
  readonly onRefused: (count: number) => void;
}

const goesOut = (log: string): boolean =>
  log === ERASED_LOG || log.startsWith(CLOSED) || log.startsWith(SKIN_TEST);

const later = (work: () => void, ms: number): (() => void) => {
  const timer = setTimeout(work, ms);
  return () => clearTimeout(timer);
};

/**
 * Keeps this station in step with the others while its window writes. A network that is gone holds up no tap: what is to
 * go out is what is here, so nothing is kept for it. Checked in tests/src/station/replicating.test.ts.
 */
export function makeReplicating({ replica, here, now, chance, show, known, onRefused }: ReplicatingParts) {
  let rounds: Rounds | null = null;
  let inStepAtMs: number | null = null;
  let refused: Exchanged['refused'] = [];
  let postponed: Exchanged['later'] = [];
  let told = 0;

  const exchange = async (signal: AbortSignal): Promise<Result<Exchanged, ReplicaFailure>> => {
    const ended = await replica.exchange(here, signal);
    if (ended.ok || ended.error === 'silent' || ended.error === 'turnedAway') known.keep(true);
    else if (ended.error === 'off') known.keep(false);
    else if (ended.error === 'gone' && !known.read()) return refuse('off');
    return ended;
  };

  const tell = async (ended: Result<Exchanged, ReplicaFailure>): Promise<void> => {
    told += 1;
    const mine = told;
    if (ended.ok) {
      const known = new Set(refused.map(({ id }) => id));
      const more = ended.value.refused.filter(({ id }) => !known.has(id)).length;
      inStepAtMs = now();
      refused = ended.value.refused;
      postponed = ended.value.later;
      show({ kind: 'inStep', atMs: inStepAtMs, refused, later: postponed });
      if (more > 0) onRefused(more);
      return;
    }
    const why = ended.error;
    if (why === 'stopped') return;
    if (why === 'off') return show({ kind: 'off' });
    const goes = [...(await here.readIds())].filter((id) => !here.isHeldBack(readRecordId(id) ?? ''));
    const waiting = replica.countMissing(new Set(goes));
    // To count takes a while: whatever was told meanwhile is newer.
    if (rounds === null || mine !== told) return;
    show({ kind: 'apart', why, inStepAtMs, waiting, refused, later: postponed });
  };

  return {
    start(): void {
      show({ kind: 'asking' });
      rounds ??= startRounds({
        exchange,
        chance,
        later,
        onEnded: (ended) => void tell(ended),
      });
    },
    /** Something was written to this log. */
    noteWritten(log: string): void {
      if (goesOut(log)) rounds?.nudge();
    },
    /** Somebody asks for it now. */
    goNow: (): void => rounds?.nudge(),
    async stop(): Promise<void> {
      const ending = rounds;
      rounds = null;
      show(null);
      await ending?.stop();
    },
  };
}
