import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { shelfForm } from '../../../shared/records/forms/shelf';
import { defaultSettings, type Settings, settingsSchema } from '../../../shared/records/settings';

const takes = (skinTestWaitH: number): boolean =>
  v.is(settingsSchema, { ...defaultSettings, profile: { ...defaultSettings.profile, skinTestWaitH } });

it('a new station’s own settings are among those it takes', () =>
  expect(v.is(settingsSchema, defaultSettings)).toBe(true));

// Half an hour: makers’ open-application protocols (published: Cosmetics Europe 2023); four days: ASSUMED range.
it('a skin test waits for at least half an hour and at most four days', () => {
  expect(takes(0.5)).toBe(true);
  expect(takes(0.49)).toBe(false);
  expect(takes(0)).toBe(false);
  expect(takes(Number.NaN)).toBe(false);
  expect(takes(96)).toBe(true);
  expect(takes(96.1)).toBe(false);
});

describe('the shelf', () => {
  const read = (entry: object) => v.safeParse(settingsSchema, { ...defaultSettings, shelf: [entry] });
  const mist = { name: 'Cove mist', kind: 'spray' };
  const trial = { atMs: 1_794_500_000_000, bareS: 12, sprayedS: null };

  it('of an earlier edition, which knew a name and a kind only, is read as it was written', () => {
    for (const kind of ['spray', 'colour', 'lightener']) {
      const old = { name: 'Cove mist', kind };
      const taken = read(old);
      expect(taken.success && taken.output.shelf).toStrictEqual([old]);
    }
  });

  it('keeps a list as it was typed, the maker’s figure and a trial', () => {
    const whole = { ...mist, ingredients: 'Aqua,\n dimethicon;', makerSaysUpToC: 230, trial };
    expect(read(whole)).toMatchObject({ success: true, output: { shelf: [whole] } });
  });

  it.each([
    ['a list of too many letters', { ingredients: 'x'.repeat(100_001) }],
    ['a maker’s figure that nothing made of metal is set to', { makerSaysUpToC: 1001 }],
    ['a run of more than an hour', { trial: { ...trial, bareS: 3601 } }],
    ['a run below nothing', { trial: { ...trial, bareS: -1 } }],
    ['a run of half a second', { trial: { ...trial, sprayedS: 0.5 } }],
    ['a trial without its second run', { trial: { atMs: trial.atMs, bareS: 12 } }],
    ['a trial that says who', { trial: { ...trial, by: 'Opal' } }],
    ['a trial at no time', { trial: { ...trial, atMs: Number.NaN } }],
  ])('takes no %s', (_what, more) => {
    expect(read({ ...mist, ...more }).success).toBe(false);
  });

  const since5 = { coverAfterMin: 5 };
  const since4 = { figuresByStylist: false, learns: true, ...since5 };
  const kept = { keepMonths: 36, erasesByItself: false, ...since4 };
  const asBefore = { ...kept, contact: '', house: { ceilingPercent: 12, isAnyReactionAbsolute: false } };
  // Of an edition as it was written: never changed, and another one is added when the shape changes.
  it.each([
    ['settingsEdition.json', 'sprays had lists', { spoken: false, ...asBefore }],
    ['settingsEdition2.json', 'a line may be spoken', asBefore],
    ['settingsEdition3.json', 'a house may draw its own ceiling', { ...kept, house: {} }],
    ['settingsEdition4.json', 'an owner says how long records are kept', { ...since4, house: {} }],
    ['settingsEdition5.json', 'figures may name people and a station may learn', { ...since5, house: {} }],
    ['settingsEdition6.json', 'an idle tablet covers what it shows', { house: {} }],
  ])(
    'of the edition in %s, kept since %s, is read as it was written',
    (name, _since, { house, ...since }) => {
      const file = join(import.meta.dirname, 'fixtures', name);
      const edition = JSON.parse(readFileSync(file, 'utf8')) as Settings;
      const taken = v.safeParse(settingsSchema, edition);
      expect(taken.success && taken.output).toStrictEqual({
        ...since,
        ...edition,
        profile: { ...house, ...edition.profile },
      });
    },
  );

  it('takes all that today’s form takes, and more', () => {
    const { ingredients, makerSaysUpToC, trial: tried } = shelfForm;
    const { bareS, sprayedS } = tried.of;
    const at = (end: 'min' | 'max', by: number) => ({
      ...mist,
      makerSaysUpToC: makerSaysUpToC.field[end] + by,
      trial: { atMs: 0, bareS: bareS.field[end] + Math.max(by, 0), sprayedS: sprayedS.field[end] },
    });
    const list = { ...mist, ingredients: 'x'.repeat(ingredients.maxLength + 1) };
    for (const entry of [at('min', 0), at('max', 0), at('min', -1), at('max', 1), list])
      expect(read(entry).success, JSON.stringify(entry).slice(0, 160)).toBe(true);
  });
});
