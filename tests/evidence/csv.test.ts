import { describe, expect, it } from 'vitest';
import { columnNames, type Row } from '../../shared/records/table/columns';
import { readCsv, writeCsv } from '../../shared/records/table/csv';

const units = { temperature: 'C', mass: 'g', length: 'cm' } as const;
const empty = Object.fromEntries(columnNames.map((name) => [name, null])) as Row;
const write = (words: readonly (string | null)[]) =>
  [
    ...writeCsv(
      words.map((each) => ({ ...empty, words: each })),
      units,
    ),
  ].join('');

/**
 * A reader of its own, straight from the grammar: published, RFC 4180, section 2:
 * file = [header CRLF] record *(CRLF record) [CRLF]; field = (escaped / non-escaped);
 * escaped = DQUOTE *(TEXTDATA / COMMA / CR / LF / 2DQUOTE) DQUOTE.
 */
function readStrictly(text: string): readonly (readonly string[])[] {
  const records: string[][] = [];
  let at = 0;
  const readField = (): string => {
    if (text[at] !== '"') {
      const end = text.slice(at).search(/[,\r\n"]/);
      const field = end === -1 ? text.slice(at) : text.slice(at, at + end);
      at += field.length;
      if (text[at] === '"') throw new Error(`a quote inside a plain field at ${at}`);
      return field;
    }
    let field = '';
    for (at += 1; ; at += 1) {
      if (at >= text.length) throw new Error('a quote that never ends');
      if (text[at] !== '"') field += text[at];
      else if (text[at + 1] === '"') {
        field += '"';
        at += 1;
      } else break;
    }
    at += 1;
    return field;
  };
  while (at < text.length) {
    const record = [readField()];
    while (text[at] === ',') {
      at += 1;
      record.push(readField());
    }
    if (text.slice(at, at + 2) !== '\r\n' && at < text.length) throw new Error(`no CRLF at ${at}`);
    at += 2;
    records.push(record);
  }
  return records;
}

const lastCells = (text: string) => readStrictly(text).map((record) => record.at(-1));

describe('RFC 4180, section 2', () => {
  it('the reader reads the examples of the RFC', () => {
    // Published: RFC 4180, section 2, rules 1, 2, 3, 5, 6 and 7.
    expect(readStrictly('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(readStrictly('aaa,bbb,ccc\r\nzzz,yyy,xxx')).toHaveLength(2);
    expect(readStrictly('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')[0]).toEqual(['aaa', 'bbb', 'ccc']);
    expect(readStrictly('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')[0]?.[1]).toBe('b\r\nbb');
    expect(readStrictly('"aaa","b""bb","ccc"')[0]?.[1]).toBe('b"bb');
    expect(() => readStrictly('aaa,b"bb,ccc')).toThrow();
    expect(() => readStrictly('aaa,bbb\nccc')).toThrow();
  });

  it('each example comes back through what is written, by a reader of its own', () => {
    const texts = ['aaa', 'b\r\nbb', 'b"bb', 'a,b', ' spaces are part of a field ', '"', '""', 'é漢字'];
    const records = readStrictly(write(texts));
    expect(records.map(({ length }) => length)).toEqual(Array(texts.length + 1).fill(columnNames.length));
    expect(records.slice(1).map((record) => record.at(-1))).toEqual(texts);
  });
});

describe('texts that a spreadsheet might run', () => {
  // Published: OWASP, CSV Injection: = + - @, tab, CR, LF, and the full-width twins of the first four.
  it.each(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'])(
    '%j in front is never in front',
    (sign) => {
      const text = `${sign}1+1`;
      const [, cell] = lastCells(write([text]));
      expect(cell).toBe(`'${text}`);
      const read = readCsv(write([text]));
      expect(read.ok && read.value.rows[0]?.words).toBe(text);
    },
  );

  it('a leading mark of their own comes back too', () => {
    for (const text of ["'", "'=1", "''", "'tis"]) {
      const [, cell] = lastCells(write([text]));
      expect(cell).toBe(`'${text}`);
      const read = readCsv(write([text]));
      expect(read.ok && read.value.rows[0]?.words).toBe(text);
    }
  });

  it('what begins otherwise is left as it is', () => {
    for (const text of ['6N', 'a=1', '1-2', 'Q.F.']) expect(lastCells(write([text]))[1]).toBe(text);
  });
});
