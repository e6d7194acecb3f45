import { describe, expect, it } from 'vitest';
import { closeRecord } from '../../../../shared/records/closedRecord';
import { gatherDay } from '../../../../shared/records/day/dayRecords';
import { countBack, goBackDays, nameDay, nameDayFile } from '../../../../src/screens/day/dayNames';
import { clear } from '../../../shared/records/skinTest/makeTest';
import { playUntil } from '../playStory';

const whole = playUntil('whole');
const half = playUntil('DECIDED');
const closed = closeRecord(whole.consultation.record, whole.consultation.log);
if (closed === null) throw new Error('the story did not close');
const state = { closed: [closed], open: new Map([['half', half.consultation]]), skinTests: [] };

describe('the records of a day', () => {
  it('hold each closed consultation as its log, and what the log says', () => {
    const { closed: records } = gatherDay(state, whole.atMs, countBack(whole.atMs));
    expect(records).toHaveLength(1);
    expect(records[0]).toMatchObject({
      how: 'done',
      record: { ticket: 'Q.F.', bowls: [{ zone: 'lengths' }] },
    });
    expect(records[0]?.log).toEqual(whole.consultation.log);
    expect(records[0]?.record).toEqual(whole.consultation.record);
  });

  it('hold what is still open too, and nothing that closed on another day', () => {
    expect(
      gatherDay(state, whole.atMs, countBack(whole.atMs)).open.map(({ record }) => record.decision?.decision),
    ).toEqual(['endsOut']);
    expect(gatherDay(state, whole.atMs + 86_400_000, countBack(whole.atMs + 86_400_000)).closed).toEqual([]);
  });

  it('say of a strand that still runs which looks were missed by now', () => {
    const { consultation, atMs } = playUntil('STRAND_STARTED');
    const day = gatherDay(
      { closed: [], skinTests: [], open: new Map([['run', consultation]]) },
      atMs + 600_000,
      countBack(atMs + 600_000),
    );
    const [missed] = day.open.flatMap(({ record }) => record.strands.map((strand) => strand.missedLooksAtMs));
    expect(missed?.[0]).toBe(atMs + 120_000);
  });

  it('hold one whose record is in one copy only once, as still open', () => {
    const id = whole.consultation.id;
    const both = gatherDay(
      { ...state, open: new Map([[id, whole.consultation]]) },
      whole.atMs,
      countBack(whole.atMs),
    );
    expect([both.closed.length, both.open.map(({ record }) => record.ended?.how)]).toEqual([0, ['done']]);
  });

  it('hold the skin tests of which something was written that day, and no others', () => {
    const { test } = clear;
    if (test === null) throw new Error('no test');
    const day = (atMs: number) => gatherDay({ ...state, skinTests: [test] }, atMs, countBack(atMs)).skinTests;
    expect(day(test.newestAtMs)).toEqual([test]);
    expect(day(test.noted.atMs)).toEqual([]);
  });
});

const oneDay = { from: '2026-03-02', day: '2026-03-02' };

it('goes back by days of the wall, over the hour that is left out in spring', () => {
  // St. John's, 8 March 2026: 02:00 becomes 03:00.
  const monday = Date.UTC(2026, 2, 9, 4, 0);
  expect([0, 1, 2].map((days) => nameDay(goBackDays(monday, days)))).toEqual([
    '2026-03-09',
    '2026-03-08',
    '2026-03-07',
  ]);
});

it('gathers an earlier day, or several, and what is open only up to today', () => {
  const later = goBackDays(whole.atMs, -3);
  expect(gatherDay(state, later, countBack(later, { back: 3 })).closed).toHaveLength(1);
  expect(gatherDay(state, later, countBack(later, { back: 2 })).closed).toEqual([]);
  expect(gatherDay(state, later, countBack(later, { days: 3 })).closed).toEqual([]);
  expect(gatherDay(state, later, countBack(later, { days: 4 })).closed).toHaveLength(1);
  expect(gatherDay(state, later, countBack(later, { days: 4 })).open).toHaveLength(1);
  expect(gatherDay(state, later, countBack(later, { back: 1, days: 7 })).open).toEqual([]);
});

it('names the day by the wall clock of the salon, not by UTC, and no client in the file name', () => {
  // St. John's is 3 h 30 min behind UTC in winter: 02:00 UTC is still the evening before.
  expect(nameDay(Date.UTC(2026, 2, 3, 2, 0))).toBe('2026-03-02');
  expect(nameDayFile(oneDay, false)).toBe('strandproof-day-2026-03-02.json');
  expect(nameDayFile({ ...oneDay, from: '2026-02-24' }, false, 'csv')).toBe(
    'strandproof-days-2026-02-24-to-2026-03-02.csv',
  );
});

it('names a day of the demo as one, and the key to each file after it', () => {
  expect(nameDayFile(oneDay, true)).toBe('strandproof-demo-day-2026-03-02.json');
  expect(nameDayFile(oneDay, false, 'json.schema.json')).toBe('strandproof-day-2026-03-02.json.schema.json');
});
