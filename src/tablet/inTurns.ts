/** So long one goes on before the others have a turn, ms. Assumed because a tap that waits no longer is not felt to wait. */
const ASSUMED_TURN_MS = 12;

/**
 * Long work that comes in pieces, so that taps, clocks and the sound have their turn in between: each piece is taken as it
 * comes; answers what the work comes to. Checked in tests/src/tablet/inTurns.test.ts.
 */
export async function inTurns<P, T>(
  pieces: Iterator<P, T>,
  take: (piece: P) => void = () => undefined,
): Promise<T> {
  let sinceMs = performance.now();
  for (let next = pieces.next(); ; next = pieces.next()) {
    if (next.done === true) return next.value;
    take(next.value);
    if (performance.now() - sinceMs < ASSUMED_TURN_MS) continue;
    await new Promise((resolve) => setTimeout(resolve));
    sinceMs = performance.now();
  }
}
