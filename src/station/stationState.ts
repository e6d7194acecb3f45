import type { Consultation } from '../../machines/consultation/consultation';
import type { ClosedRecord } from '../../shared/records/closedRecord';
import type { Settings } from '../../shared/records/settings';
import type { SkinTest } from '../../shared/records/skinTest/skinTest';
import type { Tombstone } from '../../shared/records/tombstone';
import type { Notice } from './notice';

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
  readonly closed: readonly ClosedRecord[];
  /** Every skin test, by whatever ticket; screens put them in order. */
  readonly skinTests: readonly SkinTest[];
  readonly erasings: Erasings;
  readonly notices: readonly Notice[];
}

/** The newest moment any open consultation or skin test was written at: the last time this tablet was seen to be right. */
export const findNewestAtMs = ({ open, skinTests }: Pick<StationState, 'open' | 'skinTests'>): number =>
  Math.max(
    0,
    ...[...open.values()].map(({ record }) => record.newestAtMs),
    ...skinTests.filter(({ takenBack }) => takenBack === null).map(({ newestAtMs }) => newestAtMs),
  );
