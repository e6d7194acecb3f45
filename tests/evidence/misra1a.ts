/** NIST StRD, Nonlinear Regression, Misra1a: y, then x, as texts, so that they can be read to any number of digits. */
const texts = [
  ['10.07', '77.6'],
  ['14.73', '114.9'],
  ['17.94', '141.1'],
  ['23.93', '190.8'],
  ['29.61', '239.9'],
  ['35.18', '289.0'],
  ['40.02', '332.8'],
  ['44.82', '378.4'],
  ['50.76', '434.8'],
  ['55.05', '477.3'],
  ['61.01', '536.8'],
  ['66.40', '593.1'],
  ['75.47', '689.1'],
  ['81.78', '760.0'],
] as const;

/** The fourteen points, y shifted by so much. */
export const listMisra1a = (by = 0) => texts.map(([y, t]) => ({ t: Number(t), y: Number(y) + by }));

/** Fixed-point numbers of sixty decimal places, so that nothing of what is compared is rounding. */
const one = 10n ** 60n;
const times = (a: bigint, b: bigint): bigint => (a * b) / one;
const over = (a: bigint, b: bigint): bigint => (a * one) / b;
const sum = (values: readonly bigint[]): bigint => values.reduce((total, value) => total + value, 0n);
const read = (text: string): bigint => {
  const [whole = '', part = ''] = text.split('.');
  return BigInt(whole + part.padEnd(60, '0'));
};
/** e to the power of x, by its series; x is small here. */
const exp = (x: bigint): bigint => {
  let term = one;
  let total = one;
  for (let n = 1n; term !== 0n; n += 1n) {
    term = times(term, x) / n;
    total += term;
  }
  return total;
};

/** The moves that solve three equations, by determinants. */
function solve(rows: readonly (readonly bigint[])[], right: readonly bigint[]): readonly bigint[] {
  const det = (m: readonly (readonly bigint[])[]): bigint => {
    const at = (row: number, column: number): bigint => m[row]?.[column % 3] ?? 0n;
    return sum(
      [0, 1, 2].map((c) =>
        times(at(0, c), times(at(1, c + 1), at(2, c + 2)) - times(at(1, c + 2), at(2, c + 1))),
      ),
    );
  };
  const whole = det(rows);
  return [0, 1, 2].map((column) =>
    over(
      det(rows.map((row, index) => row.map((cell, at) => (at === column ? (right[index] ?? 0n) : cell)))),
      whole,
    ),
  );
}

/**
 * Which L₀ + A(1 − e^(−kt)) runs closest to Misra1a, all three free? Nothing certified says so: NIST holds L₀ at none.
 * Gauss and Newton, undamped, in sixty decimal places, until no step moves the fiftieth. `k` is carried as a thousandth.
 */
export function fitMisra1aFree(): { readonly [name in 'base' | 'rise' | 'rate' | 'residualSum']: number } {
  const points = texts.map(([y, t]) => ({ y: read(y), t: read(t) / 1000n }));
  let [base, rise, rate] = [read('0.3'), read('250'), read('0.5')];
  for (let step = 0; step < 100; step += 1) {
    const lines = points.map(({ y, t }) => {
      const left = exp(-times(rate, t));
      return {
        slopes: [one, one - left, times(times(rise, t), left)],
        miss: y - base - times(rise, one - left),
      };
    });
    const at = (row: readonly bigint[], index: number): bigint => row[index] ?? 0n;
    const rows = [0, 1, 2].map((r) =>
      [0, 1, 2].map((c) => sum(lines.map(({ slopes }) => times(at(slopes, r), at(slopes, c))))),
    );
    const moves = solve(
      rows,
      [0, 1, 2].map((r) => sum(lines.map(({ slopes, miss }) => times(at(slopes, r), miss)))),
    );
    base += at(moves, 0);
    rise += at(moves, 1);
    rate += at(moves, 2);
    if (moves.every((move) => move < 10n ** 10n && move > -(10n ** 10n))) {
      const residualSum = sum(lines.map(({ miss }) => times(miss, miss)));
      const write = (value: bigint): number => Number(value) / Number(one);
      return {
        base: write(base),
        rise: write(rise),
        rate: write(rate) / 1000,
        residualSum: write(residualSum),
      };
    }
  }
  throw new Error('comes to no end');
}
