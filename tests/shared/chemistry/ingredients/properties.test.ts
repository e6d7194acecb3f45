import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nameTable } from '../../../../shared/chemistry/ingredients/nameTable';
import { plainNames } from '../../../../shared/chemistry/ingredients/plainNames';
import { readIngredientList } from '../../../../shared/chemistry/ingredients/readIngredientList';
import { tellIngredients } from '../../../../shared/chemistry/ingredients/tellIngredients';
import { holds } from '../../seeded';

const rows: readonly (readonly string[])[] = [...Object.values(nameTable).flat(), ...plainNames];
const table = rows.map(([name = '']) => name);
const listed = fc.array(fc.constantFrom(...table), { minLength: 1, maxLength: 20 });
const separator = fc.constantFrom(
  ', ',
  ',',
  '; ',
  ' · ',
  ' • ',
  '\n',
  ',\n',
  ' | ',
  ' (and) ',
  '\u00a0,\u00a0',
);

/** Strings of everything, and strings of what lists are made of. */
const mark = fc.constantFrom(
  ...[', ', ',', '/', '(', ')', '[', '+/-', ' and ', '.', '. ', '-', '*', '%', '1', '2,', '\n', '\u00a0'],
);
const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 80 }),
  fc.string({ unit: 'grapheme', maxLength: 80 }),
  fc
    .array(fc.oneof(mark, fc.constantFrom(...table, 'FORMALD', 'GLYOXYL'), fc.string({ maxLength: 4 })))
    .map((parts) => parts.join('')),
);

const readOr = (text: string) => {
  const result = readIngredientList(text);
  return result.ok ? result.value : [];
};
const readNames = (text: string) => readOr(text).map(({ name }) => name);
const sortLetters = (text: string) => [...text.normalize('NFKC').matchAll(/[\p{L}\p{N}]/gu)].sort().join('');

describe('any text', () => {
  it('is read or refused, and told of, without an exception', () => {
    holds(
      fc.property(anyText, (text) => {
        const result = readIngredientList(text);
        if (result.ok) expect(result.value.length).toBeGreaterThan(0);
        expect(tellIngredients(readOr(text)).length).toBeGreaterThan(0);
      }),
      2000,
    );
  });

  it('read again from its own names gives the same names', () => {
    holds(
      fc.property(anyText, (text) => {
        const names = readNames(text);
        expect(readNames(names.join(', '))).toEqual(names);
      }),
      2000,
    );
  });

  it('loses no letter and no digit but those of "and" between two names', () => {
    const isLinked = /(?:\band\b|&|\bet\b|\bund\b)/iu;
    holds(
      fc.property(anyText, (text) => {
        fc.pre(!isLinked.test(text.normalize('NFKC')) && readIngredientList(text).ok);
        expect(
          sortLetters(
            readOr(text)
              .map(({ asWritten }) => asWritten)
              .join(' '),
          ),
        ).toBe(sortLetters(text));
      }),
      2000,
    );
  });
});

describe('a list of names that the table has', () => {
  it('is read name by name, whatever stands between them', () => {
    holds(
      fc.property(listed, separator, (names, between) => {
        expect(readNames(names.join(between))).toEqual(names);
        expect(readOr(names.join(between)).map(({ how }) => how)).toEqual(names.map(() => 'known'));
      }),
    );
  });

  it('is read alike in capitals, small letters and both', () => {
    holds(
      fc.property(listed, (names) => {
        const text = names.join(', ');
        const mixed = text.replace(/\w+/g, (word) => word.slice(0, 1) + word.slice(1).toLowerCase());
        expect(readNames(text.toLowerCase())).toEqual(names);
        expect(readNames(mixed)).toEqual(names);
      }),
    );
  });

  it('keeps a name in its place when an unknown one stands among them', () => {
    holds(
      fc.property(listed, fc.nat(), (names, seed) => {
        const at = seed % (names.length + 1);
        const withOther = names.toSpliced(at, 0, 'ZZYZX');
        expect(readNames(withOther.join(', '))).toEqual(withOther);
      }),
    );
  });

  it('knows each name under each of its other names', () => {
    for (const [name = '', ...others] of rows) {
      for (const other of others) expect(readNames(other), other).toEqual([name]);
    }
  });

  it('has no two names that are a third one when a line ends between them', () => {
    const known = new Set(rows.flat());
    const joined = [...known].flatMap((one) => [...known].map((other) => `${one} ${other}`));
    expect(joined.filter((name) => known.has(name))).toEqual([]);
  });

  it('has no name twice', () => {
    const written = rows.flat();
    expect(written.filter((name, index) => written.indexOf(name) !== index)).toEqual([]);
  });
});
