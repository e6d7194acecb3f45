/**
 * What could it be, at least, most likely and at most?
 * Never negative, and low ≤ typical ≤ high: sums and products of such ranges keep that order, because each of
 * their ends moves with its own end. Checked by tests/shared/units/range.test.ts.
 */
export interface Range<N extends number = number> {
  readonly low: N;
  readonly typical: N;
  readonly high: N;
}

/**
 * A range from its three figures. Out of order, negative or not a number is a mistake in the code, not something a
 * person can cause: it throws.
 */
export function makeRange<N extends number>(low: N, typical: N, high: N): Range<N> {
  if (!(0 <= low && low <= typical && typical <= high)) {
    throw new RangeError(`not a range: ${low}, ${typical}, ${high}`);
  }
  return { low, typical, high };
}

/** A range without doubt: what was told or measured. Negative or NaN throws. */
export const exactly = <N extends number>(value: N): Range<N> => makeRange(value, value, value);

/** The range so many times over, in the same unit. A negative factor would turn the ends round: it throws. */
export function scale<N extends number>(range: Range<N>, factor: number): Range<N> {
  const times = (value: N) => (value * factor) as N;
  return makeRange(times(range.low), times(range.typical), times(range.high));
}

/** Both together, in the same unit: least with least, most with most. */
export const add = <N extends number>(a: Range<N>, b: Range<N>): Range<N> =>
  makeRange((a.low + b.low) as N, (a.typical + b.typical) as N, (a.high + b.high) as N);

/** One times the other. The unit of a product is another one, so it comes back as plain numbers. */
export const multiply = (a: Range, b: Range): Range =>
  makeRange(a.low * b.low, a.typical * b.typical, a.high * b.high);
