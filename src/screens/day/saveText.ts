import { inTurns } from '../../tablet/inTurns';

/** After so long the memory is given back, ms. Assumed because a browser has read a day's text long before a minute. */
const ASSUMED_HANDED_OVER_MS = 60_000;

/**
 * Hands a text to the browser as a file of this name, as if a link to it had been followed. Its pieces are made in turns, so
 * that nothing waits for a long one.
 */
export async function saveText(name: string, text: string | Iterable<string>, type: string): Promise<void> {
  const pieces: string[] = [];
  await inTurns((typeof text === 'string' ? [text] : text)[Symbol.iterator](), (piece) => pieces.push(piece));
  const url = URL.createObjectURL(new Blob(pieces, { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), ASSUMED_HANDED_OVER_MS);
}
