/** Lower triangle of a factor, row by row: matrix = factor · factorᵀ. */
export type Factor = readonly (readonly number[])[];

/**
 * Of the largest of its diagonal, so little left is nothing. Assumed because it is some fifty times the gap between
 * doubles at one: what rounding leaves of a row that says nothing new.
 */
const ASSUMED_NO_PIVOT = 1e-14;

/**
 * The lower factor of a small symmetric matrix (A. L. Cholesky's method); null where the matrix leaves something open.
 * For the 14 × 14 of the chance; only the lower triangle is read. Checked in tests/shared/learning/cholesky.test.ts.
 */
export function factorise(matrix: readonly (readonly number[])[]): Factor | null {
  const least = Math.max(...matrix.map((row, at) => row[at] ?? 0)) * ASSUMED_NO_PIVOT;
  const factor: number[][] = [];
  for (const [at, row] of matrix.entries()) {
    const own: number[] = [];
    for (let column = 0; column < at; column += 1) {
      const other = factor[column] ?? [];
      own.push(((row[column] ?? 0) - dot(own, other, column)) / (other[column] ?? 1));
    }
    const pivot = (row[at] ?? 0) - dot(own, own, at);
    if (!(pivot > least && Number.isFinite(pivot))) return null;
    factor.push([...own, Math.sqrt(pivot)]);
  }
  return factor;
}

const dot = (one: readonly number[], other: readonly number[], count: number): number => {
  let sum = 0;
  for (let at = 0; at < count; at += 1) sum += (one[at] ?? 0) * (other[at] ?? 0);
  return sum;
};

/** Which x gives factor · factorᵀ · x = right? Down the factor first, then up. */
export function solveBy(factor: Factor, right: readonly number[]): readonly number[] {
  const down: number[] = [];
  for (const [at, row] of factor.entries()) {
    down.push(((right[at] ?? 0) - dot(row, down, at)) / (row[at] ?? 1));
  }
  const solved = [...down];
  for (let at = factor.length - 1; at >= 0; at -= 1) {
    let sum = down[at] ?? 0;
    for (let below = at + 1; below < factor.length; below += 1) {
      sum -= (factor[below]?.[at] ?? 0) * (solved[below] ?? 0);
    }
    solved[at] = sum / (factor[at]?.[at] ?? 1);
  }
  return solved;
}

/** The inverse of what was factorised, column by column. */
export const invertBy = (factor: Factor): readonly (readonly number[])[] =>
  factor.map((_, column) =>
    solveBy(
      factor,
      factor.map((_row, at) => (at === column ? 1 : 0)),
    ),
  );
