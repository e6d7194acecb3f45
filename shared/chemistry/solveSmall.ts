/**
 * Of a diagonal of ones, so little left is nothing. Assumed because it is about what rounding leaves of a row that is the
 * same as another: a hundred times the gap between doubles at one.
 */
const ASSUMED_NOTHING_LEFT = 1e-14;

/**
 * Which numbers solve these few equations at once? Gauss with the largest pivot of each column, after every row and
 * column of the symmetric matrix was brought to a diagonal of ones, so that units do not matter; null where they leave
 * it open. Checked in tests/shared/chemistry/solveSmall.test.ts.
 */
export function solveSmall(
  symmetric: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | null {
  const scale = symmetric.map((row, index) => Math.sqrt(row[index] ?? 0));
  if (scale.some((each) => !(each > 0 && Number.isFinite(each)))) return null;
  const at = (index: number): number => scale[index] ?? 1;
  const rows = symmetric.map((row, index) => [
    ...row.map((cell, column) => cell / (at(index) * at(column))),
    (right[index] ?? 0) / at(index),
  ]);
  for (let column = 0; column < rows.length; column += 1) {
    const pivot = rows.slice(column).sort((one, other) => sizeAt(other, column) - sizeAt(one, column))[0];
    if (pivot === undefined || !(sizeAt(pivot, column) > ASSUMED_NOTHING_LEFT)) return null;
    rows.splice(rows.indexOf(pivot), 1);
    rows.splice(column, 0, pivot);
    for (const [index, row] of rows.entries()) {
      if (index === column) continue;
      const share = (row[column] ?? 0) / (pivot[column] ?? 1);
      rows[index] = row.map((cell, place) => cell - share * (pivot[place] ?? 0));
    }
  }
  const solved = rows.map((row, index) => (row[rows.length] ?? 0) / (row[index] ?? 1) / at(index));
  return solved.every(Number.isFinite) ? solved : null;
}

const sizeAt = (row: readonly number[], column: number): number => Math.abs(row[column] ?? 0);
