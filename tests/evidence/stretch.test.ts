import { describe, it } from 'vitest';
import {
  ASSUMED_LIGHT_PULL_LIMIT_PERCENT,
  computeExtensionPercent,
  computeReturnPercent,
  judgeStretch,
  MEAN_BREAK_PERCENT,
  POST_YIELD_FROM_PERCENT,
} from '../../shared/hair/stretch';
import { checkAnswer, checkFigure } from './check';

const sample1966 =
  'published: Caucasian hair, Negro hair, and wool: similarities and differences, J. Soc. Cosmet. Chem. 17:769–787, 1966, Table I';
const assumed = 'assumed: a light pull ends between 20 and 30 %';

const readValue = (result: ReturnType<typeof computeExtensionPercent>) =>
  result.ok ? result.value : Number.NaN;

describe('wet stretch', () => {
  it.each([
    [100, 127, POST_YIELD_FROM_PERCENT, 27],
    [100, 151, MEAN_BREAK_PERCENT, 51],
  ])('of %d mm to %d mm is what the table gives', (restMm, pulledMm, constant, expected) => {
    const got = readValue(computeExtensionPercent(restMm, pulledMm));
    checkFigure({ input: `${restMm} to ${pulledMm} mm`, got, expected, tolerance: 1e-9, source: sample1966 });
    checkFigure({ input: 'the constant', got: constant, expected, tolerance: 0, source: sample1966 });
  });

  it('gives back all of 15 % when it was not pulled past its yield', () => {
    const source = 'published: cited in Practical Modern Hair Science (2012), ch. 7 p. 229';
    const got = readValue(computeReturnPercent(100, 115, 100));
    checkFigure({ input: '100 → 115 → 100 mm', got, expected: 100, tolerance: 1e-9, source });
    const extension = readValue(computeExtensionPercent(100, 115));
    const input = '15 % lies below the yield';
    checkAnswer({ input, got: extension < POST_YIELD_FROM_PERCENT, expected: true, source: sample1966 });
  });

  it('asks for a light pull that stays far from where hair breaks', () => {
    const got = ASSUMED_LIGHT_PULL_LIMIT_PERCENT;
    checkAnswer({ input: '30 % of 51 %', got: got < MEAN_BREAK_PERCENT, expected: true, source: sample1966 });
    checkFigure({ input: 'limit of a light pull, %', got, expected: 30, tolerance: 0, source: assumed });
  });

  it.each([
    [29.9, 'springsBack', 'sound'],
    [30, 'springsBack', 'sound'],
    [30.1, 'springsBack', 'gummy'],
    [30, 'staysLong', 'slow'],
    [30.1, 'staysLong', 'gummy'],
    [51, 'springsBack', 'gummy'],
    [300, 'staysLong', 'gummy'],
    [5, 'snaps', 'broken'],
    [51, 'snaps', 'broken'],
  ] as const)('of %d %% that %s is %s, and is never refused', (extensionPercent, returned, expected) => {
    const got = judgeStretch({ returned, extensionPercent });
    const input = `${extensionPercent} % on a light pull, ${returned}`;
    checkAnswer({ input, got, expected: { ok: true, value: expected }, source: assumed });
  });
});
