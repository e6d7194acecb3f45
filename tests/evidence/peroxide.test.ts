import { describe, it } from 'vitest';
import {
  computeExactPercent,
  computeExactVolumes,
  computeMolarity,
  isWithinCeiling,
  LEGAL_CEILING_PERCENT,
  type PeroxidePercent,
  toPercent,
  toVolumes,
  type Volume,
} from '../../shared/chemistry/peroxide';
import { computeBowlPercent, splitByParts } from '../../shared/chemistry/ratio';
import { computeStrongShare, thinDeveloper } from '../../shared/chemistry/thinning';
import { brand } from '../../shared/units/brand';
import { checkAnswer, checkFigure } from './check';

const percent = (value: number) => brand<PeroxidePercent>(value);
const volume = (value: number) => brand<Volume>(value);

describe('exact volumes', () => {
  const source = 'stoichiometry of 2 H₂O₂ → 2 H₂O + O₂, M 34.0147, 0 °C, 1 atm';

  it.each([
    [10, 3.035],
    [20, 6.07],
    [30, 9.105],
    [40, 12.141],
  ])('%d vol are %d %% w/v', (vol, expected) => {
    const got = computeExactPercent(volume(vol));
    checkFigure({ input: `${vol} vol in % w/v`, got, expected, tolerance: 0.0005, source });
    const back = computeExactVolumes(percent(expected));
    checkFigure({ input: `${expected} % w/v in vol`, got: back, expected: vol, tolerance: 0.002, source });
  });

  it('are 11.207 to one mole a litre, and 20 vol are 1.785 mol/L', () => {
    const oneMolar = percent(3.40147);
    checkFigure({
      input: '3.40147 % w/v in mol/L',
      got: computeMolarity(oneMolar),
      expected: 1,
      tolerance: 1e-12,
      source,
    });
    checkFigure({
      input: '1 mol/L in vol',
      got: computeExactVolumes(oneMolar),
      expected: 11.207,
      tolerance: 1e-9,
      source,
    });
    const got = computeMolarity(computeExactPercent(volume(20)));
    checkFigure({ input: '20 vol in mol/L', got, expected: 1.785, tolerance: 0.0005, source });
  });

  it('differ from the label: 12 % is nearly half a volume short of 40', () => {
    const got = computeExactVolumes(percent(12));
    checkFigure({ input: '12 % w/v in exact vol', got, expected: 39.54, tolerance: 0.005, source });
  });
});

describe('the trade’s table', () => {
  it.each([
    [10, 3],
    [20, 6],
    [30, 9],
    [40, 12],
  ])('%d vol is labelled %d %%', (vol, label) => {
    const source =
      vol === 40
        ? 'published: Reg. (EC) 1223/2009 Annex III entry 12, as replaced by Reg. (EU) 2019/831'
        : 'common practice, no source';
    const input = `${vol} vol and ${label} %`;
    checkFigure({ input, got: toPercent(volume(vol)), expected: label, tolerance: 0, source });
    checkFigure({ input, got: toVolumes(percent(label)), expected: vol, tolerance: 0, source });
  });
});

describe('the ceiling', () => {
  const source = 'published: Reg. (EC) 1223/2009 Annex III entry 12, as replaced by Reg. (EU) 2019/831';

  it('is 12 %, or 40 volumes', () => {
    const input = 'the ceiling in %';
    checkFigure({ input, got: LEGAL_CEILING_PERCENT, expected: 12, tolerance: 0, source });
    const got = toVolumes(percent(LEGAL_CEILING_PERCENT));
    checkFigure({ input: 'the ceiling in vol', got, expected: 40, tolerance: 0, source });
  });

  it.each([
    [12.0, true],
    [12.1, false],
    [12.000_001, false],
    [11.9, true],
    [0, true],
    [-0.1, false],
    [50, false],
    [Number.NaN, false],
    [Number.POSITIVE_INFINITY, false],
  ])('for a bottle of %d %% answers %s', (value, expected) => {
    checkAnswer({ input: `may ${value} % be used`, got: isWithinCeiling(percent(value)), expected, source });
  });

  it('allows 40 vol by its label though not a bottle of 40 exact volumes', () => {
    const nominal = isWithinCeiling(toPercent(volume(40)));
    checkAnswer({ input: 'may nominal 40 vol be used', got: nominal, expected: true, source });
    const exact = isWithinCeiling(computeExactPercent(volume(40)));
    checkAnswer({ input: 'may 12.141 % be used', got: exact, expected: false, source });
  });

  it('holds for the strong bottle of a thinning: 12.0 % is taken, 12.1 % is not', () => {
    const thin = (strongPercent: number) =>
      thinDeveloper({ strongPercent, weakPercent: 6, wantedPercent: 9, totalG: 100 });
    checkAnswer({ input: 'thin 12.0 %', got: thin(12).ok, expected: true, source });
    const expected = { ok: false, error: 'overCeiling' };
    checkAnswer({ input: 'thin 12.1 %', got: thin(12.1), expected, source });
  });
});

describe('mass balance', () => {
  const source = 'exact mass balance';

  it.each([
    ['12 % bottle, one to one', 12, 1, 6],
    ['9 % bottle, one to two', 9, 2, 6],
    ['12 % bottle, one to three', 12, 3, 9],
  ])('of a %s', (input, bottle, ratio, expected) => {
    const got = computeBowlPercent(percent(bottle), ratio);
    checkAnswer({ input: `${input}: is it accepted`, got: got.ok, expected: true, source });
    checkFigure({ input, got: got.ok ? got.value : Number.NaN, expected, tolerance: 1e-12, source });
  });

  it('makes 30 vol of 40 and 20, one to one', () => {
    const got = thinDeveloper({
      strongPercent: toPercent(volume(40)),
      weakPercent: toPercent(volume(20)),
      wantedPercent: toPercent(volume(30)),
      totalG: 100,
    });
    const expected = { ok: true, value: { strongG: 50, weakG: 50 } };
    checkAnswer({
      input: '100 g of 30 vol from 40 and 20',
      got,
      expected,
      source: `${source}; common practice`,
    });
  });

  it('makes 100 g of 9 % from 75 g of 12 % and 25 g of a base of none, and the station refuses that base', () => {
    const wish = { strongPercent: 12, weakPercent: 0, wantedPercent: 9 };
    const share = computeStrongShare(wish);
    checkFigure({ input: 'share of 12 % in 9 %', got: share, expected: 0.75, tolerance: 1e-12, source });
    const split = splitByParts(100, [share, 1 - share], 0.1);
    const expected = { ok: true, value: { amountsG: [75, 25], remainderG: 0 } };
    checkAnswer({ input: '100 g in those shares', got: split, expected, source });
    checkAnswer({
      input: 'thin with 0 %',
      got: thinDeveloper({ ...wish, totalG: 100 }),
      expected: { ok: false, error: 'notADeveloper' },
      source: 'published chemistry: traces of copper and iron in tap water decompose peroxide',
    });
  });
});
