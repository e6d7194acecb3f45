import { expect, it } from 'vitest';
import { defaultSettings } from '../../../../shared/records/settings';
import { viewClockDoubt } from '../../../../src/screens/clockDoubt/viewClockDoubt';
import { playUntil } from '../playStory';

const { consultation, atMs } = playUntil('DECIDED');
const state = {
  mode: 'writing',
  settings: { id: 0, settings: defaultSettings, by: '' },
  open: new Map([['story', consultation]]),
  closed: [],
  months: { read: 0, all: 0 },
  skinTests: [],
  bench: [],
  erasings: { tombstones: [], unfinished: 0 },
  notices: [],
} as const;

it('doubts a clock that is more than a few seconds behind the newest entry', () => {
  expect(viewClockDoubt(state, atMs, 0)).toBeNull();
  expect(viewClockDoubt(state, atMs - 5_000, 0)).toBeNull();
  expect(viewClockDoubt(state, atMs - 5_001, 0)).toEqual({ newestAtMs: atMs, behindMs: 5_001 });
  expect(viewClockDoubt({ ...state, open: new Map() }, 0, atMs)).toBeNull();
});

it('doubts a clock that showed more than a few seconds later before, even if nothing was written then', () => {
  expect(viewClockDoubt(state, atMs, atMs + 5_000)).toBeNull();
  expect(viewClockDoubt(state, atMs, atMs + 5_001)).toEqual({ newestAtMs: atMs + 5_001, behindMs: 5_001 });
});
