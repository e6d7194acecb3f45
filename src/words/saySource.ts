import { readMark } from './marks';
import type { Words } from './words';

/** A source as it is said: its kind in words, then the citation as it stands. */
export function saySource(mark: string, words: Words): string {
  const { kind, source } = readMark(mark);
  return words.hair.source(words.hair.kinds[kind], source);
}
