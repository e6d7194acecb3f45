import { describe, expect, it } from 'vitest';
import { gatherDay } from '../../../../shared/records/day/dayRecords';
import { readCsv } from '../../../../shared/records/table/csv';
import { countBack } from '../../../../src/screens/day/dayNames';
import { writeDayTable, writeMoment } from '../../../../src/screens/day/dayTable';
import { playUntil, settings } from '../playStory';

describe('a moment in a table', () => {
  it('is written with the offset of this tablet then: RFC 3339, section 5.6', () => {
    const atMs = Date.UTC(2026, 10, 12, 17, 30, 5);
    const text = writeMoment(atMs);
    expect(text).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/);
    expect(Date.parse(text)).toBe(atMs);
    for (let month = 0; month < 12; month += 1) {
      const at = Date.UTC(2026, month, 1, 12);
      expect(Date.parse(writeMoment(at))).toBe(at);
    }
  });
});

describe('the day as a table', () => {
  it('is read again as the rows of each record, what is open among them', () => {
    const half = playUntil('DECIDED');
    const state = { closed: [], open: new Map([['half', half.consultation]]), skinTests: [] };
    const text = [...writeDayTable(gatherDay(state, half.atMs, countBack(half.atMs)), settings.units)].join(
      '',
    );
    const read = readCsv(text);
    if (!read.ok) throw new Error(JSON.stringify(read.error));
    const { rows } = read.value;
    expect(rows.map(({ kind }) => kind).filter((kind) => kind !== 'look')).toEqual([
      'visit',
      'strand',
      'strand',
    ]);
    expect(rows[0]).toMatchObject({ what: 'open', decision: 'endsOut', ticket: 'Q.F.' });
    expect(text.startsWith('\ufeff')).toBe(true);
  });

  it('of a day with nobody is its header alone', () => {
    const text = [
      ...writeDayTable(
        gatherDay({ closed: [], open: new Map(), skinTests: [] }, 0, countBack(0)),
        settings.units,
      ),
    ].join('');
    expect(readCsv(text)).toMatchObject({ ok: true, value: { rows: [] } });
  });
});
