import { describe, expect, it } from 'vitest';
import { ASSUMED_LONGEST_NAME } from '../../../../shared/chemistry/ingredients/labelName';
import {
  ASSUMED_LONGEST_LIST,
  ASSUMED_MOST_NAMES,
  readIngredientList,
} from '../../../../shared/chemistry/ingredients/readIngredientList';

const read = (text: string) => {
  const result = readIngredientList(text);
  if (!result.ok) throw new Error(`refused: ${result.error.code}`);
  return result.value;
};
const readNames = (text: string) => read(text).map(({ name }) => name);
const readHow = (text: string) => read(text).map(({ name, how }) => `${name} ${how}`);

describe('a list of ingredients', () => {
  it.each<[string, readonly string[]]>([
    ['AQUA, DIMETHICONE, PARFUM', ['AQUA', 'DIMETHICONE', 'PARFUM']],
    ['aqua; dimethicone; parfum', ['AQUA', 'DIMETHICONE', 'PARFUM']],
    ['Aqua · Dimethicone • Parfum', ['AQUA', 'DIMETHICONE', 'PARFUM']],
    ['Aqua|Dimethicone', ['AQUA', 'DIMETHICONE']],
    ['Aqua - Dimethicone – Parfum', ['AQUA', 'DIMETHICONE', 'PARFUM']],
    ['AQUA，DIMETHICONE；PARFUM', ['AQUA', 'DIMETHICONE', 'PARFUM']],
    ['- Aqua\r\n- Dimethicone\n* Parfum', ['AQUA', 'DIMETHICONE', 'PARFUM']],
    ['1. Aqua\n2. Sucrose', ['AQUA', 'SUCROSE']],
    ['Ingredients: Aqua, Dimethicone.', ['AQUA', 'DIMETHICONE']],
    ['INGREDIENTS\nAQUA\nDIMETHICONE', ['AQUA', 'DIMETHICONE']],
    ['Ingredients (INCI): Aqua', ['AQUA']],
    ['Ingrédients : Aqua', ['AQUA']],
    ['AQUA/WATER/EAU, SUCROSE', ['AQUA', 'SUCROSE']],
    ['AQUA (WATER), PARFUM [FRAGRANCE]', ['AQUA', 'PARFUM']],
    ['MEL / HONEY / MIEL', ['MEL']],
    ['SUCROSE/GLUCOSE', ['SUCROSE', 'GLUCOSE']],
    ['DIMETHICONE (and) CYCLOPENTASILOXANE', ['DIMETHICONE', 'CYCLOPENTASILOXANE']],
    ['AQUA and ALCOHOL DENAT.', ['AQUA', 'ALCOHOL DENAT.']],
    ['AQUA [+/- CI 77891]', ['AQUA', 'CI 77891']],
    ['AQUA. MAY CONTAIN: CI 77891, CI 77492.', ['AQUA', 'CI 77891', 'CI 77492']],
    ['PARFUM (LIMONENE, LINALOOL)', ['PARFUM', 'LIMONENE', 'LINALOOL']],
    ['AQUA 70%, SUCROSE* (2.5 %), HONEY**', ['AQUA', 'SUCROSE', 'MEL']],
    ['AQUA\u00a0, CETEARYL\u00a0ALCOHOL', ['AQUA', 'CETEARYL ALCOHOL']],
    [
      'CETEARYL\nALCOHOL, ALCOHOL\nDENAT., QUATERNIUM-\n70',
      ['CETEARYL ALCOHOL', 'ALCOHOL DENAT.', 'QUATERNIUM-70'],
    ],
    ['1,2-HEXANEDIOL, AQUA', ['1,2-HEXANEDIOL', 'AQUA']],
    ['AQUA,1,2-HEXANEDIOL', ['AQUA', '1,2-HEXANEDIOL']],
    ['POLYQUATERNIUM-7,1,2-HEXANEDIOL', ['POLYQUATERNIUM-7', '1,2-HEXANEDIOL']],
    ['PEG-8,2-Bromo-2-Nitropropane-1,3-Diol', ['PEG-8', '2-BROMO-2-NITROPROPANE-1,3-DIOL']],
    ['BIS-PEG/PPG-20/20 DIMETHICONE', ['BIS-PEG/PPG-20/20 DIMETHICONE']],
    ['PVP/DMAPA ACRYLATES COPOLYMER', ['PVP/DMAPA ACRYLATES COPOLYMER']],
    ['DIMETHICONE/VINYL DIMETHICONE CROSSPOLYMER', ['DIMETHICONE/VINYL DIMETHICONE CROSSPOLYMER']],
    ['ACRYLATES/C10-30 ALKYL ACRYLATE CROSSPOLYMER', ['ACRYLATES/C10-30 ALKYL ACRYLATE CROSSPOLYMER']],
    [
      'C12-13 ALKYL LACTATE, C12–13 ALKYL ETHYLHEXANOATE',
      ['C12-13 ALKYL LACTATE', 'C12-13 ALKYL ETHYLHEXANOATE'],
    ],
    ['SIMMONDSIA CHINENSIS (JOJOBA) SEED OIL', ['SIMMONDSIA CHINENSIS SEED OIL']],
    ['SD Alcohol 40-B (Alcohol Denat.)', ['ALCOHOL DENAT.']],
    ['polyquaternium 37', ['POLYQUATERNIUM-37']],
    ['AQUA (FORMALDEHYDE)', ['AQUA', 'FORMALDEHYDE']],
    ['Formalin (CAS No. 50-00-0)', ['FORMALDEHYDE']],
    ['50-00-0', ['FORMALDEHYDE']],
    ['AQUA (WATER) (FORMALDEHYDE)', ['AQUA', 'AQUA', 'FORMALDEHYDE']],
    ['Aqua 70% Sucrose* Honey 5 %', ['AQUA', 'SUCROSE', 'MEL']],
    ['Foo (5 %).', ['FOO (5 %)']],
    ['FOO (BAR)', ['FOO (BAR)']],
    ['AQUA, AQUA', ['AQUA', 'AQUA']],
    ['AQUA)(SUCROSE', ['AQUA', 'SUCROSE']],
    [',,;; AQUA ,\n,', ['AQUA']],
  ])('%j', (text, names) => expect(readNames(text)).toEqual(names));

  it('keeps what was typed beside what was read', () => {
    expect(read('Aqua / Water, sucrose* 5 %, Alcohol denat.').map(({ asWritten }) => asWritten)).toEqual([
      'Aqua / Water',
      'sucrose* 5 %',
      'Alcohol denat.',
    ]);
  });
});

describe('a name with a slip of the finger', () => {
  it.each([
    ['DIMETHICON', 'DIMETHICONE corrected'],
    ['DIMETICHONE', 'DIMETICHONE unknown'],
    ['DIMEHTICONE', 'DIMETHICONE corrected'],
    ['Cyclopentasilloxane', 'CYCLOPENTASILOXANE corrected'],
    ['FORMALDEHYD', 'FORMALDEHYDE corrected'],
    ['GLYOXILIC ACID', 'GLYOXYLIC ACID corrected'],
    ['GLYCOLIC ACID', 'GLYCOLIC ACID known'],
    ['LACTASE', 'LACTASE unknown'],
    ['SUCROS', 'SUCROS unknown'],
    ['ETHANAL', 'ACETALDEHYDE known'],
    ['QUATERNIUM-16', 'QUATERNIUM-16 unknown'],
    ['QUATERNUM-15', 'QUATERNIUM-15 corrected'],
    ['ISOPROPYL ALCOHOLS', 'ISOPROPYL ALCOHOL corrected'],
    ['AQUA DIMETHICONE', 'AQUA DIMETHICONE unknown'],
    ['CETYL DIMETHICONE', 'CETYL DIMETHICONE known'],
    ['<script>alert(1)</script>', '<SCRIPT>ALERT(1)</SCRIPT> unknown'],
  ])('%s is %s', (text, expected) => expect(readHow(text)).toEqual([expected]));

  it('that lies as near to two names is neither', () => {
    expect(readHow('XETHYLPARABEN')).toEqual(['XETHYLPARABEN unknown']);
    expect(readHow('XROPYLPARABEN')).toEqual(['PROPYLPARABEN corrected']);
  });
});

describe('a text that is no list', () => {
  it.each([
    ['', { code: 'empty' }],
    [' \n\u00a0\t', { code: 'empty' }],
    [',;·•', { code: 'nothingRead' }],
    [','.repeat(10_000), { code: 'nothingRead' }],
    ['Ingredients:', { code: 'nothingRead' }],
    ['A'.repeat(50_000), { code: 'tooLong', most: ASSUMED_LONGEST_LIST }],
    ['AQUA, '.repeat(10_000), { code: 'tooLong', most: ASSUMED_LONGEST_LIST }],
    ['\ufdfa'.repeat(1_000), { code: 'tooLong', most: ASSUMED_LONGEST_LIST }],
    ['AQUA,'.repeat(ASSUMED_MOST_NAMES + 1), { code: 'tooMany', most: ASSUMED_MOST_NAMES }],
    ['SUCROSE/GLUCOSE,'.repeat(ASSUMED_MOST_NAMES), { code: 'tooMany', most: ASSUMED_MOST_NAMES }],
  ])('%.20j is refused', (text, error) => expect(readIngredientList(text)).toEqual({ ok: false, error }));

  it('keeps a name that is too long to be compared, whole', () => {
    const tooLong = `${'AQUA AND '.repeat(14)}AQUA`;
    expect(tooLong.length).toBeGreaterThan(ASSUMED_LONGEST_NAME);
    expect(readHow(tooLong)).toEqual([`${tooLong} unknown`]);
    expect(readNames('AQUA and AQUA and AQUA')).toEqual(['AQUA', 'AQUA', 'AQUA']);
  });

  it('takes as many names as it says', () => {
    expect(read('AQUA,'.repeat(ASSUMED_MOST_NAMES))).toHaveLength(ASSUMED_MOST_NAMES);
  });

  it.each(['(', ')', '[', '/', ' ', '1', '1,', '.', '*', '%', '+', '- ', 'a/', '(a', 'A and ', '\u200b'])(
    'of the longest, made of %j, is answered',
    (part) => {
      const result = readIngredientList(part.repeat(Math.floor(ASSUMED_LONGEST_LIST / part.length)));
      const names = result.ok ? result.value : [];
      expect(names.filter(({ how }) => how !== 'unknown')).toEqual([]);
      expect(result.ok ? 'read' : result.error.code).toMatch(/^(read|nothingRead|tooMany|empty)$/);
    },
  );
});
