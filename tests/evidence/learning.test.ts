import { describe, it } from 'vitest';
import { fitLessons } from '../../shared/learning/fit';
import { countShare } from '../../shared/learning/wilson';
import { checkFigure } from './check';

const flights =
  'Dalal, Fowlkes, Hoadley, J. Am. Stat. Assoc. 84:945–957, 1989: 23 flights before 1986, any distress';
const fahrenheit = [
  66, 70, 69, 68, 67, 72, 73, 70, 57, 63, 70, 78, 67, 53, 67, 75, 70, 81, 76, 79, 75, 76, 58,
];
const distress = '01000000111001000000101';

describe('a logistic regression without any belief', () => {
  const fitted = fitLessons(
    fahrenheit.map((degrees, at) => ({ x: [1, degrees], hasBroken: distress[at] === '1' })),
    { means: [0, 0], precisions: [0, 0] },
  );
  const means = fitted.ok ? fitted.value.means : [];

  it.each([
    ['intercept', 0, 15.0429],
    ['slope, a °F', 1, -0.2322],
  ] as const)('is that of the O-ring flights (published): %s', (input, at, expected) =>
    checkFigure({ input, got: means[at] ?? Number.NaN, expected, tolerance: 5e-5, source: flights }),
  );
});

describe('the interval of a share', () => {
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ] as const)('of %i in %i is Wilson’s score interval (published)', (count, of, low, high) => {
    const source = 'Newcombe, Stat. Med. 17:857–872, 1998';
    const found = countShare(count, of);
    const figures = { tolerance: 5e-5, source };
    checkFigure({ input: `${count}/${of}, low`, got: found.low, expected: low, ...figures });
    checkFigure({ input: `${count}/${of}, high`, got: found.high, expected: high, ...figures });
  });
});
