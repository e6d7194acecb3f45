import type { Consultation } from '../../machines/consultation/consultation';
import type { BenchTrial } from '../../shared/records/bench/benchTrial';
import type { ClosedRecord } from '../../shared/records/closedRecord';
import type { Settings } from '../../shared/records/settings';
import type { SkinTest } from '../../shared/records/skinTest/skinTest';
import type { Tombstone } from '../../shared/records/tombstone';
import type { Notice } from './notice';
import type { PracticeKept } from './practice/practiceLogs';
import type { Unjudged } from './unjudged';

/** The settings in force, and the place in the settings log that events name. */
export interface SettingsInForce {
  readonly id: number;
  readonly settings: Settings;
  /** Who saved them; empty for those a station starts with. */
  readonly by: string;
}

/** What was erased here, and whether all of it is out of both copies. */
export interface Erasings {
  readonly tombstones: readonly Pick<Tombstone, 'ids' | 'atMs' | 'by' | 'code'>[];
  /** So many logs are still to be rewritten. */
  readonly unfinished: number;
}

/** All the station shows: one immutable value, published anew after each acknowledged change. */
export interface StationState {
  /** Only a window in `writing` takes answers; `watching` shows another window's; `noStore` shows why. */
  readonly mode: 'starting' | 'writing' | 'watching' | 'noStore';
  readonly settings: SettingsInForce;
  /** Open consultations by id, in the order they were opened. */
  readonly open: ReadonlyMap<string, Consultation>;
  /** What closed, once all months were read; before that only what has closed since the start. */
  readonly closed: readonly ClosedRecord[];
  /** So many of the closed months were looked through since the start. */
  readonly months: { readonly read: number; readonly all: number };
  /** Every skin test, by whatever ticket; screens put them in order. */
  readonly skinTests: readonly SkinTest[];
  /** Every trial at the bench. */
  readonly bench: readonly BenchTrial[];
  readonly erasings: Erasings;
  /** Other stations' records that this edition cannot judge: what they say may be a stop. */
  readonly unjudged?: readonly Unjudged[];
  /** What was practised here; lacking where nothing ever was. */
  readonly practice?: PracticeKept;
  readonly notices: readonly Notice[];
}

/** Was everything that closed earlier looked through? Before that nobody knows whom a stop of then keeps from colour. */
export const isPastRead = ({ months }: Pick<StationState, 'months'>): boolean => months.read >= months.all;

/** The newest moment any open consultation or skin test was written at: the last time this tablet was seen to be right. */
export const findNewestAtMs = ({ open, skinTests }: Pick<StationState, 'open' | 'skinTests'>): number =>
  Math.max(
    0,
    ...[...open.values()].map(({ record }) => record.newestAtMs),
    ...skinTests
      .filter(({ takenBack, isTold }) => takenBack === null && isTold !== true)
      .map(({ newestAtMs }) => newestAtMs),
  );
