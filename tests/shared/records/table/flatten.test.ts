import { describe, expect, it } from 'vitest';
import { columnNames, type Row } from '../../../../shared/records/table/columns';
import { playUntil } from '../../../src/screens/playStory';
import { rowsOf, stories } from './stories';

const inGrams = { temperature: 'C', mass: 'g', length: 'cm' } as const;
const whole = playUntil('whole').consultation.record;
const ofKind = (rows: readonly Row[], kind: string) => rows.filter((row) => row.kind === kind);

describe('the flat table of a record', () => {
  it('begins with the visit, and has a row for each strand, look and bowl', () => {
    const rows = rowsOf(whole, inGrams);
    expect(rows[0]).toMatchObject({ kind: 'visit', ticket: 'Q.F.', what: 'done', service: 'lighten' });
    expect(ofKind(rows, 'strand')).toHaveLength(whole.strands.length);
    expect(ofKind(rows, 'bowl')).toHaveLength(whole.bowls.length);
    const looks = [...whole.strands, ...whole.bowls].flatMap((each) => each.looks);
    expect(ofKind(rows, 'look')).toHaveLength(looks.length);
    expect(looks.length).toBeGreaterThan(2);
  });

  it('tells a strand by what it was and what came of it', () => {
    const [ends] = ofKind(rowsOf(whole, inGrams), 'strand');
    const strand = whole.strands[0];
    expect(ends).toMatchObject({
      zone: 'ends',
      line: 'Sandbar powder',
      developer: 6,
      ratio: 2,
      grade: strand?.outcome?.grade,
      minutesOn: strand?.minutesOn,
      missedLooks: strand?.missedLooksAtMs.length,
    });
    expect(ends?.batch).toBe(strand?.batch === '' ? null : strand?.batch);
  });

  it('tells grams and degrees in the units of the station, and a moment with its offset', () => {
    const [bowl] = whole.bowls;
    const grams = ofKind(rowsOf(whole, inGrams), 'bowl')[0];
    const ounces = ofKind(rowsOf(whole, { temperature: 'F', mass: 'oz', length: 'in' }), 'bowl')[0];
    expect(grams?.colour).toBe(bowl?.colourG);
    // 28.349523125 g in an ounce. published: international yard and pound agreement, 1959.
    expect(ounces?.colour).toBeCloseTo((bowl?.colourG ?? 0) / 28.349523125, 6);
    expect(grams?.at).toMatch(/^2026-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}\+00:00$/);
  });

  it.each(stories)(
    '%s: no cell is anything but a text, a figure or empty, and no column is missing',
    (_, record) => {
      for (const row of rowsOf(record, inGrams)) {
        expect(Object.keys(row)).toEqual(columnNames);
        for (const cell of Object.values(row)) {
          const isCell = cell === null || typeof cell === 'string' || Number.isFinite(cell);
          expect(isCell && cell !== '', JSON.stringify(row)).toBe(true);
        }
      }
    },
  );

  it('holds every column somewhere, and every kind of row', () => {
    const rows = stories.flatMap(([, record]) => rowsOf(record, inGrams));
    const kinds = new Set(rows.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual([
      'bowl',
      'correction',
      'lifted',
      'look',
      'reaction',
      'strand',
      'visit',
    ]);
    const neverSaid = columnNames.filter((name) => rows.every((row) => row[name] === null));
    expect(neverSaid).toEqual(['bottles', 'weighed']);
  });

  it('says of two bottles both, and what the scale said of each', () => {
    const bowls = whole.bowls.map((bowl) => ({
      ...bowl,
      bottles: [{ percent: 9 }, { percent: 3 }],
      weighed: [{ amountG: 40 }, { amountG: 40.5 }],
    }));
    const [bowl] = ofKind(rowsOf({ ...whole, bowls }, inGrams), 'bowl');
    expect(bowl).toMatchObject({ bottles: '9; 3', weighed: '40; 40.5' });
  });
});
