import { describe, it } from 'vitest';
import {
  DRYER_HEAT_HELD_SECONDS,
  ethanolFlashPoints,
  filmFormersLessLossPercent,
  findStressLossPercent,
  formaldehydeLimitsPpm,
  ingredientTemperatures,
  isopropylFlashPoint,
} from '../../shared/chemistry/ingredients/figures';
import { findingTable } from '../../shared/chemistry/ingredients/findingTable';
import { readIngredientList } from '../../shared/chemistry/ingredients/readIngredientList';
import {
  type IngredientFindingId,
  tellIngredients,
} from '../../shared/chemistry/ingredients/tellIngredients';
import { brand } from '../../shared/units/brand';
import { type Celsius, toFahrenheit } from '../../shared/units/temperature';
import { checkAnswer, checkFigure } from './check';

const practice = 'common practice, no source';
const filmFormers =
  'published: McMullen & Jachowicz, Thermal degradation of hair II, J. Cosmet. Sci. 49:245–256, 1998, p. 248';
const osha = 'published: OSHA hazard alert 2011; 29 CFR 1910.1048';
const flashPoints = 'published: a table of ethanol–water flash points, publisher not named';

const tell = (text: string, plateC?: number) => {
  const list = readIngredientList(text);
  const plate = plateC === undefined ? undefined : brand<Celsius>(plateC);
  return list.ok ? tellIngredients(list.value, plate) : [];
};
const find = (text: string, id: IngredientFindingId, plateC?: number) =>
  tell(text, plateC).find((finding) => finding.id === id);

type TemperatureId = keyof typeof ingredientTemperatures & IngredientFindingId;
const temperatures: readonly (readonly [TemperatureId, string, number, number, string])[] = [
  ['d4Boils', 'CYCLOTETRASILOXANE', 171, 176, 'published: GisChem'],
  ['d5Boils', 'CYCLOPENTASILOXANE', 210, 210, 'published: ECHA registration dossier 14807'],
  ['d6Boils', 'CYCLOHEXASILOXANE', 245, 245, 'published: ECHA registration dossier 15811'],
  [
    'siliconeGivesFormaldehyde',
    'DIMETHICONE',
    149,
    149,
    'published: Timpe, Formaldehyde generation from silicone rubber',
  ],
  [
    'dimethiconeBreaksDown',
    'DIMETHICONE',
    250,
    250,
    'published: Abrutyn, in Conditioning Agents for Hair and Skin, 1999, p. 176',
  ],
  ['sugarCaramelises', 'HONEY', 120, 120, 'published: Kroh, Food Chem. 51:373–379, 1994'],
  ['filmFormersMeasured', 'HYDROLYZED WHEAT PROTEIN', 132, 152, filmFormers],
];

describe('temperatures', () => {
  it.each(temperatures)('%s of %s: %d to %d °C', (id, name, from, to, source) => {
    const finding = find(name, id);
    const got = finding?.temperatures;
    checkFigure({ input: `${id}, from`, got: got?.from ?? Number.NaN, expected: from, tolerance: 0, source });
    checkFigure({ input: `${id}, to`, got: got?.to ?? Number.NaN, expected: to, tolerance: 0, source });
    checkAnswer({ input: `${id}, mark`, got: finding?.mark, expected: source, source });
  });

  it('above which a silicone spray gives no help are 400 °F', () => {
    const { from, to } = ingredientTemperatures.siliconeSprayHelpsNoMore;
    for (const got of [toFahrenheit(from), toFahrenheit(to)]) {
      checkFigure({ input: 'no help above, °F', got, expected: 400, tolerance: 1e-9, source: practice });
    }
  });
});

describe('a plate among boiling points', () => {
  const list = 'CYCLOTETRASILOXANE, CYCLOPENTASILOXANE, CYCLOHEXASILOXANE';
  it.each([
    [200, ['above', 'below', 'below']],
    [210, ['above', 'at', 'below']],
    [215, ['above', 'above', 'below']],
  ])('of %d °C', (plateC, expected) => {
    const got = (['d4Boils', 'd5Boils', 'd6Boils'] as const).map((id) => find(list, id, plateC)?.plate);
    const source = 'published: GisChem; ECHA registration dossiers 14807, 15811';
    checkAnswer({ input: `D4, D5, D6 at ${plateC} °C`, got, expected, source });
  });

  it('says beside each that it leaves far below it, and gives none to what stays', () => {
    const source = 'from memory: general physical chemistry, vapour pressure below the boiling point';
    for (const name of list.split(', ')) {
      checkAnswer({ input: name, got: find(name, 'boilingIsNotLeaving')?.names, expected: [name], source });
    }
    const got = tell('DIMETHICONE').some(({ id }) => id.endsWith('Boils'));
    checkAnswer({ input: 'DIMETHICONE boils', got, expected: false, source });
  });
});

describe('what was measured', () => {
  it('is 10 to 20 % less loss of tryptophan', () => {
    const { from, to } = filmFormersLessLossPercent;
    checkFigure({ input: 'less loss, from', got: from, expected: 10, tolerance: 0, source: filmFormers });
    checkFigure({ input: 'less loss, to', got: to, expected: 20, tolerance: 0, source: filmFormers });
  });

  it('is so of three names, and of no other that the station knows to stay', () => {
    const measured = ['QUATERNIUM-70', 'PVP/DMAPA ACRYLATES COPOLYMER', 'HYDROLYZED WHEAT PROTEIN'];
    const others = ['POLYQUATERNIUM-70', 'POLYQUATERNIUM-7', 'PVP', 'HYDROLYZED KERATIN', 'DIMETHICONE'];
    const got = find([...measured, ...others].join(', '), 'filmFormersMeasured')?.names;
    checkAnswer({ input: 'measured', got, expected: measured, source: filmFormers });
  });
});

describe('formaldehyde', () => {
  it.each([
    'formaldehyde',
    'methylene glycol',
    'formalin',
    'methylene oxide',
    'paraform',
    'formic aldehyde',
    'methanal',
    'oxomethane',
    'oxymethylene',
    'CAS 50-00-0',
    '50-00-0',
  ])('is told of %s', (name) => {
    const got = find(name, 'formaldehyde')?.mark;
    checkAnswer({ input: name, got, expected: osha, source: osha });
  });

  it('may be in the air up to 0.75 ppm for 8 hours and 2 ppm for 15 minutes', () => {
    const { eightHours, fifteenMinutes } = formaldehydeLimitsPpm;
    checkFigure({ input: '8 h', got: eightHours, expected: 0.75, tolerance: 0, source: osha });
    checkFigure({ input: '15 min', got: fifteenMinutes, expected: 2, tolerance: 0, source: osha });
  });

  it.each([
    'DMDM HYDANTOIN',
    'IMIDAZOLIDINYL UREA',
    'DIAZOLIDINYL UREA',
    'QUATERNIUM-15',
    'BRONOPOL',
    '2-BROMO-2-NITROPROPANE-1,3-DIOL',
    'SODIUM HYDROXYMETHYLGLYCINATE',
    'METHENAMINE',
  ])('is given off by %s', (name) => {
    const source = 'from memory: de Groot et al., Formaldehyde-releasers, Contact Dermatitis 61:63–85, 2009';
    const got = find(name, 'formaldehydeReleaser')?.mark;
    checkAnswer({ input: name, got, expected: source, source });
  });
});

describe('what burns, scorches or harms', () => {
  it('flashes at 26 °C with 40 % of alcohol by weight, and at 21 °C with 70 %', () => {
    const got = ethanolFlashPoints.map(({ weightPercent, flashPoint }) => [weightPercent, flashPoint]);
    const expected = [
      [40, 26],
      [70, 21],
    ];
    checkAnswer({ input: 'flash points', got, expected, source: flashPoints });
    const mark = find('ALCOHOL DENAT.', 'alcoholBurns')?.mark;
    checkAnswer({ input: 'ALCOHOL DENAT.', got: mark, expected: flashPoints, source: flashPoints });
  });

  it('flashes at 12 °C if it is isopropyl alcohol, undiluted', () => {
    const source = 'from memory: NFPA 325, 53 °F';
    checkFigure({
      input: '53 °F',
      got: toFahrenheit(isopropylFlashPoint),
      expected: 53,
      tolerance: 1,
      source,
    });
  });

  it('is sucrose, which browns with protein only once it is split', () => {
    const source = 'published: Kroh 1994; common practice, no source';
    const expected = ['sugarCaramelises', 'sucroseBrownsOnceSplit', 'sugarScorches'];
    checkAnswer({ input: 'SUCROSE', got: tell('SUCROSE').map(({ id }) => id), expected, source });
  });

  it('is trehalose by practice alone: it does not reduce, and the source names it nowhere', () => {
    const got = tell('TREHALOSE').map(({ mark }) => mark);
    checkAnswer({ input: 'TREHALOSE', got, expected: [practice], source: practice });
  });

  it.each(['GLUCOSE', 'FRUCTOSE', 'HONEY', 'MEL', 'MALTOSE', 'LACTOSE'])('is %s, a sugar', (name) => {
    const ids = tell(name).map(({ id }) => id);
    const expected = ['sugarCaramelises', 'sugarBrownsWithProtein', 'sugarScorches'];
    checkAnswer({
      input: name,
      got: ids,
      expected,
      source: 'published: Kroh 1994; common practice, no source',
    });
  });

  it('is glyoxylic acid', () => {
    const source = 'published: N. Engl. J. Med. 2024';
    checkAnswer({
      input: 'GLYOXYLIC ACID',
      got: find('GLYOXYLIC ACID', 'glyoxylicAcid')?.mark,
      expected: source,
      source,
    });
  });
});

describe('water', () => {
  const source =
    'published: Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III';

  it('takes 23.5 % of the break stress before an iron, where ethanol takes 11.8 %', () => {
    const check = (input: 'waterBased' | 'ethanolBased', expected: number) =>
      checkFigure({ input, got: findStressLossPercent(input), expected, tolerance: 1e-9, source });
    check('waterBased', 23.5);
    check('ethanolBased', 11.8);
  });

  it('is told to wet the hair, and alcohol is not', () => {
    const got = find('AQUA, ALCOHOL DENAT.', 'waterWets');
    checkAnswer({ input: 'AQUA', got: [got?.names, got?.mark], expected: [['AQUA'], source], source });
  });
});

describe('rules of thumb', () => {
  it('are marked as such', () => {
    const got = findingTable.filter(({ mark }) => mark === practice).map(({ id }) => id);
    const expected = [
      'propellantBurns',
      'sugarScorches',
      'siliconeSprayHelpsNoMore',
      'siliconeHoldsDryerHeat',
    ];
    checkAnswer({ input: 'common practice', got, expected, source: practice });
  });

  it('give a silicone spray 30 s in which a dryer is not felt', () => {
    const input = 'a good spray, s';
    checkFigure({ input, got: DRYER_HEAT_HELD_SECONDS, expected: 30, tolerance: 0, source: practice });
  });
});
