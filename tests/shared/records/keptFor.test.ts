import { expect, it } from 'vitest';
import { findKeptUntilMs, isPastKeeping } from '../../../shared/records/keptFor';
import { readErasedIds, readTombstone } from '../../../shared/records/tombstone';
import { msPerDay } from '../../../shared/units/time';

it('keeps a record to the last moment of its months, each counted as its longest', () => {
  const until = 1_000 + 36 * 31 * msPerDay;
  expect(findKeptUntilMs(1_000, 36)).toBe(until);
  expect(isPastKeeping(1_000, 36, until)).toBe(false);
  expect(isPastKeeping(1_000, 36, until + 1)).toBe(true);
});

it('never erases before the same day of the calendar', () => {
  for (const months of [1, 2, 11, 12, 36, 600]) {
    for (const day of ['2026-01-31', '2027-02-28', '2028-02-29', '2026-12-15']) {
      const from = new Date(`${day}T12:00:00Z`);
      const calendar = new Date(from);
      calendar.setUTCMonth(calendar.getUTCMonth() + months, 1);
      const last = new Date(Date.UTC(calendar.getUTCFullYear(), calendar.getUTCMonth() + 1, 0)).getUTCDate();
      calendar.setUTCDate(Math.min(from.getUTCDate(), last));
      expect(findKeptUntilMs(from.getTime(), months), `${day} + ${months}`).toBeGreaterThanOrEqual(
        calendar.getTime(),
      );
    }
  }
});

it('keeps without end only where that was chosen', () => {
  expect(findKeptUntilMs(0, null)).toBeNull();
  expect(isPastKeeping(0, null, Number.MAX_SAFE_INTEGER)).toBe(false);
});

it('understands the ids of a tombstone of a newer edition, though not the rest', () => {
  const newer = { v: 9, ids: ['client0001'], why: { court: true } };
  expect(readErasedIds(newer)).toEqual(['client0001']);
  expect(readTombstone(newer)).toBeNull();
  expect(readErasedIds({ v: 1 })).toBeNull();
  expect(readErasedIds(null)).toBeNull();
});
