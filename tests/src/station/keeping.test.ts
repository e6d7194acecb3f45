import { expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { ClosedRecord } from '../../../shared/records/closedRecord';
import { digest } from '../../../shared/records/documents/canonical';
import { findKeptUntilMs } from '../../../shared/records/keptFor';
import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import { msPerDay } from '../../../shared/units/time';
import { ASSUMED_QUIET_DAYS, isInUse, listOfTicket, listPastKeeping } from '../../../src/station/keeping';

const endedAtMs = 1_000;
const past = (findKeptUntilMs(endedAtMs, 36) ?? 0) + 1;

const closed = (id: string, ticketKey: string, more: Partial<ClosedRecord> = {}): ClosedRecord => ({
  v: 1,
  id,
  ticketKey,
  endedAtMs,
  how: 'done',
  hasStandingStop: false,
  hasClearedStop: false,
  log: [],
  ...more,
});

const test = (id: string, ticketKey: string, more: Partial<SkinTest> = {}): SkinTest =>
  ({ id, ticketKey, newestAtMs: endedAtMs, seen: 'nothing', takenBack: null, ...more }) as SkinTest;

const known = (
  records: readonly ClosedRecord[],
  skinTests: readonly SkinTest[] = [],
  keepMonths: number | null = 36,
) => ({
  open: new Map(),
  closed: records,
  skinTests,
  settings: { id: 0, by: 'Juno', settings: { ...salon, keepMonths } },
});

const idsOf = (state: ReturnType<typeof known>, nowMs = past) => {
  const found = listPastKeeping(state, nowMs);
  return [...found.closed, ...found.skinTests].map(({ id }) => id);
};

it('lists what is past its time, and nothing on the last moment of it', () => {
  const state = known(
    [closed('a', 'AA'), closed('b', 'BB', { endedAtMs: endedAtMs + 1 })],
    [test('c', 'CC')],
  );
  expect(idsOf(state)).toEqual(['a', 'c']);
  expect(idsOf(state, past - 1)).toEqual([]);
});

it('lists nothing where the owner chose no end', () => {
  expect(idsOf(known([closed('a', 'AA')], [], null), Number.MAX_SAFE_INTEGER)).toEqual([]);
});

it('leaves a stop that stands, and a skin test that reacted; one taken back goes', () => {
  const stop = closed('a', 'AA', { hasStandingStop: true });
  const tests = [test('c', 'CC', { seen: 'reaction' })];
  expect(listPastKeeping(known([stop], tests), past)).toMatchObject({
    closed: [],
    skinTests: [],
    stopsStanding: 2,
  });
  const corrected = {
    ...{ v: 1, type: 'CORRECTED', atMs: 2, by: 'Opal', settingsId: 0, modelVersion: 6 },
    payload: {
      ...{ answer: 'inherited', code: 'wrongClient', words: 'another' },
      speaksFor: [{ record: 'a', stop: 'unread', entry: digest([]) }],
    },
    tokens: { answer: 'inherited', voids: true, skinTest: 'missing', lapsed: [], isAnotherDay: false },
  };
  const cleared = closed('b', 'AA', { hasClearedStop: true, log: [corrected] });
  const takenBack = { atMs: 2, by: 'Opal', code: 'wrongTap', words: '' };
  const wrong = [test('c', 'CC', { seen: 'reaction', takenBack })];
  expect(idsOf(known([stop, cleared], wrong))).toEqual(['a', 'b', 'c']);
});

it('finds everything of a ticket however it is typed, and nothing under an empty one', () => {
  const state = known([closed('a', 'AK'), closed('b', 'BB')], [test('c', 'AK')]);
  const found = listOfTicket(state, 'a. k.');
  expect([...found.closed, ...found.skinTests].map(({ id }) => id)).toEqual(['a', 'c']);
  expect(listOfTicket(known([closed('a', '')]), ' ')).toEqual({ closed: [], skinTests: [], unjudged: [] });
});

it('believes a clock that is at most a month past the newest entry', () => {
  const edge = endedAtMs + ASSUMED_QUIET_DAYS * msPerDay;
  expect(isInUse(known([closed('a', 'AA')]), edge)).toBe(true);
  expect(isInUse(known([closed('a', 'AA')]), edge + 1)).toBe(false);
  expect(isInUse(known([]), edge)).toBe(false);
});
