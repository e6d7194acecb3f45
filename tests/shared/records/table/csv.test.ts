import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Cell,
  columnNames,
  columns,
  nameColumn,
  type Row,
} from '../../../../shared/records/table/columns';
import { BOM, type FileUnits, readCsv, writeCsv } from '../../../../shared/records/table/csv';
import type { UnitSettings } from '../../../../shared/units/quantity';
import { drawnWalks, live } from '../../../machines/consultation/walks/walk';
import { holds, seed } from '../../seeded';
import { rowsOf, stories } from './stories';

const units: FileUnits = { temperature: 'C', mass: 'g' };
const shown: UnitSettings = { ...units, length: 'cm' };
const written = (rows: readonly Row[], by = units) => [...writeCsv(rows, by)].join('');
const empty = Object.fromEntries(columnNames.map((name) => [name, null])) as Row;
const row = (said: Partial<Row>): Row => ({ ...empty, ...said });
const refusalOf = (text: string) => {
  const read = readCsv(text);
  return read.ok ? 'read' : read.error;
};

const cellOf = (name: (typeof columnNames)[number]): fc.Arbitrary<Cell> => {
  switch (columns[name].type) {
    case 'number':
      return fc.option(fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0));
    case 'datetime':
      return fc.option(
        fc
          .date({ min: new Date(0), max: new Date(4e12), noInvalidDate: true })
          .map((at) => at.toISOString().replace('Z', '+05:30')),
      );
    case 'string':
      return fc.option(
        fc.string({ unit: 'binary', minLength: 1 }).filter((text) => !text.includes('\ufffd')),
      );
  }
};
const rows = fc.array(
  fc.record(
    Object.fromEntries(columnNames.map((name) => [name, cellOf(name)])),
  ) as unknown as fc.Arbitrary<Row>,
  { maxLength: 8 },
);

describe('a CSV of the flat table', () => {
  it('is read as the rows it was written from, whatever stands in them', () => {
    holds(
      fc.property(rows, fc.constantFrom('', BOM), (some, mark) => {
        const read = readCsv(`${mark}${written(some)}`);
        expect(read).toEqual({ ok: true, value: { rows: some, units } });
      }),
      300,
    );
  });

  it.each(stories)('is read as the rows of %s, in either units', (_, record) => {
    for (const each of [units, { temperature: 'F', mass: 'oz' } as const]) {
      const flat = rowsOf(record, { ...each, length: 'in' });
      expect(flat.length).toBeGreaterThan(0);
      expect(readCsv(written(flat, each))).toEqual({ ok: true, value: { rows: flat, units: each } });
    }
  });

  it('is read as the rows of random walks, in either units', () => {
    const walked = fc
      .sample(drawnWalks, { seed, numRuns: 60 })
      .map((drawn) => live(drawn).consultation.record);
    expect(walked.filter(({ bowls }) => bowls.length > 0).length).toBeGreaterThan(5);
    for (const each of [units, { temperature: 'F', mass: 'oz' } as const]) {
      const flat = walked.flatMap((record) => rowsOf(record, { ...each, length: 'in' }));
      expect(readCsv(written(flat, each))).toEqual({ ok: true, value: { rows: flat, units: each } });
    }
  });

  it('names its units in its header', () => {
    expect(nameColumn('colour', shown)).toBe('colour_g');
    expect(nameColumn('colour', { ...shown, mass: 'oz' })).toBe('colour_oz');
    expect(nameColumn('setting', { ...shown, temperature: 'F' })).toBe('setting_degF');
    expect(nameColumn('minutesOn', shown)).toBe('minutes_on_min');
    expect(nameColumn('developer', shown)).toBe('developer_percent');
    expect(nameColumn('ticket', shown)).toBe('ticket');
  });

  it('ends each line with CR LF, the last one too (published: RFC 4180, section 2)', () => {
    const text = written([row({ ticket: 'Q.F.' }), row({ words: 'two\r\nlines, "quoted"' })]);
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.split('\r\n')).toHaveLength(5);
    expect(text).toContain('"two\r\nlines, ""quoted"""');
  });

  it('that was cut off within a line gives no row at all', () => {
    const text = written([row({ ticket: 'Q.F.', words: 'a "word", and more' }), row({ by: 'Opal' })]);
    for (let length = 1; length < text.length; length += 1) {
      const cut = text.slice(0, length);
      const isWholeLines = cut.endsWith('\r\n');
      if (!isWholeLines)
        expect(refusalOf(cut), JSON.stringify(cut.slice(-20))).toMatchObject({ code: 'cutOff' });
    }
  });

  it.each([
    ['nothing', '', 'anotherProgram'],
    ['another program’s', 'Date,Client,Formula\r\n2026-11-12,Q.F.,6N\r\n', 'anotherProgram'],
    ['lines that end as elsewhere', written([]).replaceAll('\r\n', '\n'), 'anotherProgram'],
    ['semicolons', written([]).replaceAll(',', ';'), 'anotherProgram'],
    ['another encoding', `${written([])}\ufffd\r\n`, 'notText'],
  ])('%s is refused', (_, text, code) => expect(refusalOf(text)).toMatchObject({ code }));

  it.each([
    ['a figure with a comma', { colour: '1,5' }, 1, 'colour_g'],
    ['a moment a spreadsheet wrote anew', { at: '12/11/2026 17:30' }, 2, 'at'],
    ['a word where a figure stood', { level: 'seven' }, 2, 'level'],
  ] as const)('%s is named by row and column', (_, said, at, column) => {
    const bad = row(said as unknown as Partial<Row>);
    const some = at === 1 ? [bad] : [empty, bad];
    expect(refusalOf(written(some))).toEqual({ code: 'badCell', row: at, column });
  });
});
