import { describe, expect, it } from 'vitest';
import { readIngredientList } from '../../../shared/chemistry/ingredients/readIngredientList';
import { brand } from '../../../shared/units/brand';
import type { UnitSettings } from '../../../shared/units/quantity';
import { pickChairLines } from '../../../src/screens/ask/chairLines';
import { sayFindings, sayMaker } from '../../../src/screens/sayIngredients';
import { findWords } from '../../../src/words/words';

const words = findWords('en');
const metric: UnitSettings = { temperature: 'C', mass: 'g', length: 'cm' };
const american: UnitSettings = { temperature: 'F', mass: 'oz', length: 'in' };
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const read = (text: string) => {
  const list = readIngredientList(text);
  if (!list.ok) throw new Error(list.error.code);
  return list.value;
};
const say = (text: string, plateC?: number, units = metric) =>
  sayFindings(read(text), words, units, plateC === undefined ? {} : { plate: brand(plateC) });
type Tool = Parameters<typeof pickChairLines>[2];
const chair = (text: string, plateC: number, makerSaysUpToC?: number, tool: Tool = 'flatIron') => {
  const list = sayFindings(read(text), words, metric, { plate: brand(plateC), isShort: true });
  const maker = sayMaker(makerSaysUpToC, brand(plateC), words, metric);
  return pickChairLines(list, maker, tool, words).map((line) => ({ ...line, says: plain(line.says) }));
};
/** Everything the table knows that harms, scorches, burns, leaves and stays. */
const everything =
  'FORMALIN, DMDM HYDANTOIN, GLYOXYLIC ACID, GLYOXYLOYL CARBOCYSTEINE, ALCOHOL DENAT., SUCROSE, DIMETHICONE, CYCLOPENTASILOXANE, AQUA, PARFUM';

describe('what a list tells, in words', () => {
  it('has a mark for each thing, and each name it is told of', () => {
    const told = say(everything);
    expect(told.length).toBeGreaterThan(10);
    for (const { mark, says } of told) {
      expect(mark).toMatch(/^(published: |common practice, no source|from memory: |assumed: )/);
      expect(says).not.toMatch(/undefined|NaN/);
    }
  });

  it('never says that anything is safe or protects', () => {
    const everySentence = [...say(everything), ...say(everything, 250), ...say('PARFUM', 200)]
      .flatMap(({ says, more }) => [says, more])
      .concat(Object.values(words.spray).filter((said) => typeof said === 'string'));
    for (const said of everySentence) expect(said).not.toMatch(/\bsafe|protect|harmless|\bgood up to/i);
  });

  it.each([
    [metric, 'boils at 210 °C'],
    [american, 'boils at 410 °F'],
  ])('is in the units of the station', (units, boils) => {
    const d5 = say('CYCLOPENTASILOXANE', undefined, units).find(({ id }) => id === 'd5Boils');
    expect(plain(d5?.says ?? '')).toContain(boils);
  });

  // published: GisChem (D4, 171–176 °C); ECHA registration dossiers 14807 (D5, 210 °C) and 15811 (D6, 245 °C).
  it.each([
    [200, ['d4Boils']],
    [215, ['d4Boils', 'd5Boils']],
    [250, ['d4Boils', 'd5Boils', 'd6Boils']],
  ])('says at %d °C which boiling points today’s setting is above', (plateC, above) => {
    const told = say('CYCLOTETRASILOXANE, CYCLOPENTASILOXANE, CYCLOHEXASILOXANE', plateC);
    const found = told.filter(
      ({ id, says }) => id.endsWith('Boils') && says.includes('Today’s setting is above that.'),
    );
    expect(found.map(({ id }) => id)).toEqual(above);
  });

  it('gives the maker’s figure as the maker’s own, and says when today is above it', () => {
    expect(sayMaker(undefined, brand(200), words, metric)).toBeNull();
    const { says = '', isAbove } = sayMaker(180, brand(180), words, metric) ?? {};
    expect([plain(says), isAbove]).toEqual(['The maker says up to 180 °C.', false]);
    expect(sayMaker(180, brand(181), words, metric)?.isAbove).toBe(true);
    expect(sayMaker(180, undefined, words, metric)?.isAbove).toBe(false);
  });
});

describe('at the chair', () => {
  it('four lines stand at the most where every name is known, worst first', () => {
    expect(chair(everything, 200, 180)).toEqual([
      { topic: 'formaldehyde', says: expect.stringContaining('heat frees formaldehyde'), isGrave: true },
      { topic: 'kidney', says: 'GLYOXYLIC ACID: kidney injury reported (published).', isGrave: true },
      { topic: 'tooHot', says: 'The maker says up to 180 °C. Today is above.', isGrave: true },
      { topic: 'fire', says: expect.stringContaining('ALCOHOL DENAT.'), isGrave: true },
    ]);
  });

  it('a maker’s figure that is not passed comes last, and is nothing grave', () => {
    expect(chair('AQUA, DIMETHICONE', 140, 230)).toEqual([
      {
        topic: 'wets',
        says: 'AQUA: dry the hair completely before a plate (published).',
        isGrave: false,
      },
      { topic: 'stays', says: 'DIMETHICONE: stays on the hair (common practice).', isGrave: false },
      { topic: 'leaves', says: 'AQUA: carrier, leaves (common practice).', isGrave: false },
      { topic: 'maker', says: 'The maker says up to 230 °C.', isGrave: false },
    ]);
  });

  it('a dryer’s heat is told of a dryer only, and of skin; wet hair under a plate of all but a dryer', () => {
    const topicsOf = (tool: Tool) =>
      chair('AQUA, DIMETHICONE', 140, undefined, tool).map(({ topic }) => topic);
    expect(topicsOf('dryer')).toEqual(['stays', 'leaves', 'dryer']);
    for (const tool of ['flatIron', 'curlingIron', 'hotBrush', undefined] as const)
      expect(topicsOf(tool)).toEqual(['wets', 'stays', 'leaves']);
    expect(chair('DIMETHICONE', 140, undefined, 'dryer').at(-1)?.says).toBe(
      'A good silicone spray keeps a dryer’s heat from being felt on skin for 30 s (common practice).',
    );
  });

  it('what begins only above today’s setting is not said', () => {
    // published: Timpe (149 °C); common practice, no source (400 °F).
    const silicone = (plateC: number) =>
      chair('DIMETHICONE', plateC).find(({ topic }) => topic === 'silicone')?.says;
    expect(silicone(148)).toBeUndefined();
    expect(silicone(150)).toContain('silicone rubber gives off formaldehyde');
    expect(silicone(210)).toContain('gives no help');
  });

  it('a list of names that tell nothing says that, and not that all is well', () => {
    expect(chair('PARFUM', 200)[0]).toMatchObject({
      topic: 'reading',
      says: expect.stringContaining('no better and no worse'),
    });
  });

  it('a name that is not known comes first, is never cut, and nothing is said of the list as a whole', () => {
    expect(chair('HARBOURIUM COVEATE', 200)).toEqual([
      {
        topic: 'unknown',
        says: 'Not known here: HARBOURIUM COVEATE, so the list cannot be judged as a whole.',
        isGrave: false,
      },
    ]);
    const whole = chair(`${everything}, HARBOURIUM COVEATE, SANDBAR EXTRACT`, 200, 180);
    expect(whole.map(({ topic }) => topic)).toEqual(['unknown', 'formaldehyde', 'kidney', 'tooHot', 'fire']);
    expect(whole[0]?.says).toContain(
      'HARBOURIUM COVEATE and 1 more, so the list cannot be judged as a whole.',
    );
  });

  it('where something breaks down without air is never said, at whatever setting', () => {
    for (const plateC of [140, 240, 249, 250])
      for (const { says } of chair('DIMETHICONE', plateC)) expect(says).not.toMatch(/without air|250/);
    const told = say('DIMETHICONE', 200).find(({ id }) => id === 'dimethiconeBreaksDown');
    expect(told?.says).toContain('in air sooner');
  });

  it('of many names the first stands, and how many more', () => {
    expect(chair('SUCROSE, GLUCOSE, FRUCTOSE', 200)[0]?.says).toContain('SUCROSE and 2 more');
  });
});
