import { writeCanonical } from '../documents/canonical';
import { asTold, type SkinTest } from './skinTest';

/**
 * How careful is what one station tells of a test: the first of these is the most. A reaction stands until whoever takes it
 * back has seen it, which then stands in the same log. Not read holds an older test of the ticket back. Taken back counts
 * for nothing. Nothing seen is the one that lets anything happen.
 */
const rank = ({ seen, takenBack }: SkinTest): number => {
  if (takenBack !== null) return 2;
  return seen === 'reaction' ? 0 : seen === 'notReadYet' ? 1 : 3;
};

const isMoreCareful = (one: SkinTest, other: SkinTest): boolean => {
  if (rank(one) !== rank(other)) return rank(one) < rank(other);
  if (one.putOnAtMs !== other.putOnAtMs) return one.putOnAtMs > other.putOnAtMs;
  const [readAtMs, otherAtMs] = [one.read?.atMs ?? 0, other.read?.atMs ?? 0];
  if (readAtMs !== otherAtMs) return readAtMs < otherAtMs;
  if (one.newestAtMs !== other.newestAtMs) return one.newestAtMs > other.newestAtMs;
  // Alike in all that counts: any order will do, as long as it is the same one everywhere.
  return writeCanonical(asTold(one)) < writeCanonical(asTold(other));
};

/** Which of several tellings of one test is gone on with? The most careful: whatever is said now is said of that one. */
export const findGoneOnWith = <T extends { readonly test: SkinTest }>(tellings: readonly [T, ...T[]]): T =>
  tellings.reduce((found, each) => (isMoreCareful(each.test, found.test) ? each : found));

/**
 * How does a skin test stand that several stations tell otherwise? As the most careful of them, waited for from the latest
 * time it was put on, and lapsing with the first: never freer than any of them, whatever the order they came in.
 * Checked in tests/shared/records/skinTest/tellings.test.ts.
 */
export function joinTellings(tellings: readonly [SkinTest, ...SkinTest[]]): SkinTest {
  const [first, ...rest] = tellings.map((test) => ({ test })) as [{ test: SkinTest }];
  const { test } = findGoneOnWith([first, ...(rest as { test: SkinTest }[])]);
  const putOnAtMs = Math.max(...tellings.map((each) => each.putOnAtMs));
  const oldestAtMs = Math.min(...tellings.map((each) => each.putOnAtMs - each.olderByMs));
  return { ...test, putOnAtMs, olderByMs: putOnAtMs - oldestAtMs };
}
