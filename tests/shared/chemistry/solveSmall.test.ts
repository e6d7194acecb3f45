import { describe, expect, it } from 'vitest';
import { solveSmall } from '../../../shared/chemistry/solveSmall';

describe('a few equations at once', () => {
  it('are solved, whatever the units of each are', () => {
    const solved = solveSmall(
      [
        [4e12, 2e6, 0],
        [2e6, 3, 1e-6],
        [0, 1e-6, 2e-12],
      ],
      [8e6, 9, 8e-6],
    );
    // By hand, with the units taken out: 4a + 2b = 8, 2a + 3b + c = 9, b + 2c = 8.
    const [a = 0, b = 0, c = 0] = solved ?? [];
    for (const [got, expected] of [
      [a * 1e6, 5 / 3],
      [b, 2 / 3],
      [c * 1e-6, 11 / 3],
    ] as const)
      expect(got).toBeCloseTo(expected, 9);
  });

  it.each([
    [
      'the second says what the first says',
      [
        [1, 2],
        [2, 4],
      ],
    ],
    [
      'one says nothing',
      [
        [1, 0],
        [0, 0],
      ],
    ],
    [
      'a number is none',
      [
        [1, Number.NaN],
        [Number.NaN, 1],
      ],
    ],
    [
      'a number is infinite',
      [
        [Number.POSITIVE_INFINITY, 0],
        [0, 1],
      ],
    ],
  ])('are left open where %s', (_why, matrix) => {
    expect(solveSmall(matrix, [1, 1])).toBeNull();
  });
});
