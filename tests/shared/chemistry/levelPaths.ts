import { type LevelSeen, refuseReadings } from '../../../shared/chemistry/liftReadings';

/**
 * Every way in half steps that a strand can be read at these looks and that is not refused as read, from its darkest
 * level at 1: lighter ones are the same, so much higher. Up to `rises` levels higher.
 */
export function* listLevelPaths(times: readonly number[], rises: number): Generator<readonly LevelSeen[]> {
  yield* goOn([], times, rises);
}

function* goOn(
  seen: readonly LevelSeen[],
  times: readonly number[],
  rises: number,
): Generator<readonly LevelSeen[]> {
  const atMin = times[seen.length];
  if (atMin === undefined) {
    if (seen.some(({ level }) => level === 1) && refuseReadings(seen) === null) yield seen;
    return;
  }
  const highest = Math.max(1, ...seen.map(({ level }) => level));
  // A fall by more than half a level is refused as read.
  for (let level = Math.max(1, highest - 0.5); level <= 1 + rises; level += 0.5) {
    yield* goOn([...seen, { atMin, level }], times, rises);
  }
}
