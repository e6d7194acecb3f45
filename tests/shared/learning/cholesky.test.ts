import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factorise, invertBy, solveBy } from '../../../shared/learning/cholesky';
import { holds, numberBetween } from '../seeded';

/** Any rows times themselves, with a little on the diagonal: symmetric and positive. */
const anyMatrix = fc
  .integer({ min: 1, max: 14 })
  .chain((size) =>
    fc.array(fc.array(numberBetween(-2, 2), { minLength: size, maxLength: size }), {
      minLength: size,
      maxLength: size,
    }),
  )
  .map((rows) =>
    rows.map((one, at) =>
      rows.map((other, column) =>
        one.reduce((sum, each, place) => sum + each * (other[place] ?? 0), at === column ? 0.5 : 0),
      ),
    ),
  );
const times = (matrix: readonly (readonly number[])[], x: readonly number[]): readonly number[] =>
  matrix.map((row) => row.reduce((sum, cell, at) => sum + cell * (x[at] ?? 0), 0));

describe('a small symmetric matrix', () => {
  it('is factorised by hand', () => {
    expect(
      factorise([
        [4, 0, 0],
        [2, 5, 0],
        [2, 5, 11],
      ]),
    ).toEqual([[2], [1, 2], [1, 2, Math.sqrt(6)]]);
  });

  it('is solved and inverted', () =>
    holds(
      fc.property(anyMatrix, (matrix) => {
        const factor = factorise(matrix);
        if (factor === null) throw new Error('a positive matrix was refused');
        const right = matrix.map((_, at) => at + 1);
        for (const [at, each] of times(matrix, solveBy(factor, right)).entries()) {
          expect(Math.abs(each - at - 1)).toBeLessThan(1e-9);
        }
        for (const [at, row] of invertBy(factor).entries()) {
          for (const [column, each] of times(matrix, row).entries()) {
            expect(Math.abs(each - (at === column ? 1 : 0))).toBeLessThan(1e-9);
          }
        }
      }),
      200,
    ));

  it.each([
    ['of nothing', [[0]]],
    [
      'of two rows that say the same',
      [
        [1, 1],
        [1, 1],
      ],
    ],
    [
      'that is negative somewhere',
      [
        [1, 2],
        [2, 1],
      ],
    ],
    ['with something in it that is no number', [[Number.NaN]]],
    ['without an end', [[Number.POSITIVE_INFINITY]]],
  ])('%s is refused', (_, matrix) => {
    expect(factorise(matrix)).toBeNull();
  });
});
