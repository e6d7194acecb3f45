import { describe, expect, it } from 'vitest';
import { findingTable } from '../../../../shared/chemistry/ingredients/findingTable';
import { nameTable } from '../../../../shared/chemistry/ingredients/nameTable';
import { readIngredientList } from '../../../../shared/chemistry/ingredients/readIngredientList';
import {
  type IngredientFindingId,
  tellIngredients,
} from '../../../../shared/chemistry/ingredients/tellIngredients';
import { brand } from '../../../../shared/units/brand';
import type { Celsius } from '../../../../shared/units/temperature';

const tell = (text: string, plateC?: number) => {
  const list = readIngredientList(text);
  if (!list.ok) throw new Error(`refused: ${list.error.code}`);
  return tellIngredients(list.value, plateC === undefined ? undefined : brand<Celsius>(plateC));
};
const tellIds = (text: string) => tell(text).map(({ id }) => id);
const tellNames = (text: string, id: IngredientFindingId) =>
  tell(text).find((finding) => finding.id === id)?.names;

describe('a list tells', () => {
  it.each<[string, readonly IngredientFindingId[]]>([
    ['AQUA', ['waterWets', 'carriersLeave']],
    ['ALCOHOL DENAT.', ['alcoholBurns', 'carriersLeave']],
    ['ISOPROPYL ALCOHOL', ['isopropylBurns', 'carriersLeave']],
    ['CETEARYL ALCOHOL', ['nothingListed']],
    ['ISOBUTANE', ['propellantBurns']],
    ['SUCROSE', ['sugarCaramelises', 'sucroseBrownsOnceSplit', 'sugarScorches']],
    ['GLUCOSE', ['sugarCaramelises', 'sugarBrownsWithProtein', 'sugarScorches']],
    ['TREHALOSE', ['sugarScorches']],
    ['SORBITOL', ['nothingListed']],
    ['FORMALIN', ['formaldehyde']],
    ['DMDM HYDANTOIN', ['formaldehydeReleaser']],
    ['GLYOXYLIC ACID', ['glyoxylicAcid']],
    ['GLYOXYLIC ACID MONOHYDRATE', ['glyoxylicAcid']],
    ['GLYOXYLIC ACID SOLUTION', ['glyoxylicAcid']],
    ['GLYOXYLOYL CARBOCYSTEINE', ['glyoxylicKin']],
    ['SODIUM GLYOXYLATE', ['glyoxylicKin']],
    ['FORMALDEHYD', ['formaldehyde', 'nameCorrected']],
    ['FORMALDEHYDLÖSUNG', ['formaldehyde']],
    ['UREA/FORMALDEHYDE RESIN', ['formaldehyde']],
    ['AQUA FORMALDEHYD DIMETHICONE', ['formaldehyde']],
    ['FORMALDEHYDE-FREE', ['nameUnknown']],
    ['ETHYLENE GLYCOL', ['nothingListed']],
    ['METHYLENE GLYCOL', ['formaldehyde']],
    ['METHENAMINE', ['formaldehydeReleaser']],
    ['PARFUM, FOO', ['nameUnknown']],
    ['PARFUM, PHENOXYETHANO', ['nothingListed', 'nameCorrected']],
    ['GLYCOLIC ACID', ['nothingListed']],
    ['QUATERNIUM-70', ['whatStays', 'filmFormersMeasured']],
    ['POLYQUATERNIUM-70', ['whatStays', 'polyquaterniumNoFigure']],
    ['POLYQUATERNIUM-37', ['whatStays', 'polyquaterniumNoFigure']],
    ['HYDROLYZED SOY PROTEIN', ['whatStays']],
    ['PVP', ['whatStays']],
    ['QUATERNIUM-15', ['formaldehydeReleaser']],
    ['FOO', ['nameUnknown']],
    [
      'DIMETHICON',
      [
        'siliconeGivesFormaldehyde',
        'dimethiconeBreaksDown',
        'whatStays',
        'siliconeSprayHelpsNoMore',
        'siliconeHoldsDryerHeat',
        'nameCorrected',
      ],
    ],
    [
      'AMODIMETHICONE',
      ['siliconeGivesFormaldehyde', 'whatStays', 'siliconeSprayHelpsNoMore', 'siliconeHoldsDryerHeat'],
    ],
    [
      'STEARYL METHICONE',
      [
        'siliconeGivesFormaldehyde',
        'siliconeLeavesOrStays',
        'siliconeSprayHelpsNoMore',
        'siliconeHoldsDryerHeat',
      ],
    ],
  ])('%s', (text, ids) => expect(tellIds(text)).toEqual(ids));

  it('which names leave and which stay, each once, in the order of the label', () => {
    const text =
      'Aqua, Amodimethicone, Alcohol denat., Cyclopentasiloxane, Parfum, Coconut oil, Water, Polyquaternium-11';
    expect(tellNames(text, 'carriersLeave')).toEqual(['AQUA', 'ALCOHOL DENAT.', 'CYCLOPENTASILOXANE']);
    expect(tellNames(text, 'whatStays')).toEqual([
      'AMODIMETHICONE',
      'COCOS NUCIFERA OIL',
      'POLYQUATERNIUM-11',
    ]);
  });

  it('no name both as leaving and as staying', () => {
    for (const name of Object.values(nameTable).flat(2)) {
      const leaving = tellNames(name, 'carriersLeave');
      expect(leaving === undefined || tellNames(name, 'whatStays') === undefined, name).toBe(true);
    }
  });

  it('something of each name in its table', () => {
    for (const [name] of Object.values(nameTable).flat())
      expect(tellIds(name), name).not.toContain('nothingListed');
  });

  it('what harms before anything else', () => {
    const [first] = tellIds('AQUA, DIMETHICONE, SUCROSE, ALCOHOL, METHYLENE GLYCOL');
    expect(first).toBe('formaldehyde');
  });

  it('which names it did not know and which it put right, as they were written', () => {
    const text = 'Aqua, Dimethicon, Foo extract, foo Extract, Foo extract';
    expect(tellNames(text, 'nameCorrected')).toEqual(['Dimethicon']);
    expect(tellNames(text, 'nameUnknown')).toEqual(['Foo extract', 'foo Extract']);
  });

  it('nothing of an empty list but that nothing is listed', () => {
    expect(tellIngredients([]).map(({ id, names }) => [id, names])).toEqual([['nothingListed', []]]);
  });
});

describe('a plate', () => {
  const placeAt = (plateC?: number) =>
    tell('CYCLOTETRASILOXANE', plateC).find(({ id }) => id === 'd4Boils')?.plate;

  it.each<[number, 'below' | 'at' | 'above']>([
    [-10, 'below'],
    [170.9, 'below'],
    [171, 'at'],
    [176, 'at'],
    [176.1, 'above'],
    [Number.POSITIVE_INFINITY, 'above'],
  ])('of %d °C stands to what boils at 171 to 176 °C: %s', (plateC, place) =>
    expect(placeAt(plateC)).toBe(place),
  );

  it('that is not told, or is no number, stands nowhere', () => {
    expect(placeAt()).toBeUndefined();
    expect(placeAt(Number.NaN)).toBeUndefined();
  });

  it('changes nothing but where it stands', () => {
    const text = 'AQUA, CYCLOPENTASILOXANE, DIMETHICONE, SUCROSE, FOO';
    expect(tell(text, 230).map(({ plate, ...rest }) => rest)).toEqual(tell(text));
    expect(tell(text, 230).some(({ plate }) => plate !== undefined)).toBe(true);
  });
});

describe('every finding', () => {
  it('carries one of the four marks', () => {
    const marks = [...findingTable, ...tell('FOO'), ...tell('DIMETHICON')].map(({ mark }) => mark);
    for (const mark of marks)
      expect(mark).toMatch(/^(published: .|common practice, no source$|from memory: .|assumed: .)/);
  });
});
