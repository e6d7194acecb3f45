import { accept, type Result } from '../../../shared/result';
import type { AskFailure } from './ask';

/**
 * Works through items, so many at one go, and through halves of a piece that proves too large. A single one that is too
 * large alone is named to `onTooLarge` and passed over; anything else that fails ends it.
 */
export async function inPieces<T>(
  items: readonly T[],
  most: number,
  work: (piece: readonly T[]) => Promise<Result<void, AskFailure>>,
  onTooLarge: (item: T) => void,
): Promise<Result<void, AskFailure>> {
  for (let from = 0; from < items.length; from += most) {
    const piece = items.slice(from, from + most);
    const done = await work(piece);
    if (done.ok) continue;
    if (done.error !== 'tooLarge') return done;
    const [only] = piece;
    if (piece.length === 1 && only !== undefined) onTooLarge(only);
    else {
      const halves = await inPieces(piece, Math.ceil(piece.length / 2), work, onTooLarge);
      if (!halves.ok) return halves;
    }
  }
  return accept(undefined);
}
