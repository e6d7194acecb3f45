/** Room of the drawing, in its own units: about one to a pixel on a tablet. */
export const room = {
  width: 720,
  left: 78,
  right: 494,
  /** Names of lines and bars. */
  named: 508,
  top: 12,
  bottom: 222,
  timesY: 246,
  barsFrom: 256,
  barHeight: 28,
  bars: 3,
} as const;

/** No two names stand nearer than this. */
const APART = 24;

/**
 * Where do the names of lines stand, so that none lies over another? Those of the highest lines first, from what would
 * be right for each. Checked in tests/src/screens/practice/press/viewPress.test.tsx.
 */
export function spreadNames(wished: readonly number[]): readonly number[] {
  const order = wished.map((y, index) => ({ y, index })).sort((one, other) => one.y - other.y);
  const placed: number[] = [];
  let least = Number.NEGATIVE_INFINITY;
  for (const { y, index } of order) {
    placed[index] = Math.max(y, least);
    least = (placed[index] as number) + APART;
  }
  return placed;
}
