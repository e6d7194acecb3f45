import { defaultSettings } from '../../shared/records/settings';
import type { Notice } from './notice';
import type { StationState } from './stationState';

const firstState: StationState = {
  mode: 'starting',
  settings: { id: 0, settings: defaultSettings, by: '' },
  open: new Map(),
  closed: [],
  months: { read: 0, all: 0 },
  skinTests: [],
  bench: [],
  erasings: { tombstones: [], unfinished: 0 },
  notices: [],
};

/** What the station shows: read by whoever works on it, and published anew at each change. */
export interface Board {
  readonly read: () => StationState;
  readonly show: (change: Partial<StationState>) => void;
  readonly note: (...notices: readonly Notice[]) => void;
}

/** A board on which nothing has been shown yet. */
export function makeBoard(publish: (state: StationState) => void): Board {
  let state = firstState;
  const show = (change: Partial<StationState>): void => {
    state = { ...state, ...change };
    publish(state);
  };
  return {
    read: () => state,
    show,
    note: (...notices) => show({ notices: [...state.notices, ...notices] }),
  };
}
