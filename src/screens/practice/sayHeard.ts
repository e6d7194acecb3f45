import { type Heard, writeHeard } from '../../../machines/practice/asking';
import { type Place, readRows } from '../../parts/form/sheet/places';
import { type Saying, sayAnswer, sayRow } from '../../parts/form/sheet/sayAnswer';

/** An answer as it would stand in the field, in the option's own plain words; a list row by row. */
export function sayWhole(
  { question, words: asked }: Pick<Place, 'question' | 'words'>,
  answer: Heard['means'],
  saying: Saying,
): string {
  if (answer === null || answer === undefined) return '';
  if (question.kind !== 'list') return sayAnswer(question, asked, answer, saying);
  const rows = readRows(answer);
  if (rows.length === 0) return asked.noRows ?? '';
  return rows.map((row) => sayRow(question.of, asked.rows ?? {}, row, saying)).join('; ');
}

/**
 * What is heard to the question at this path, in words and in the station's units; empty where she has nothing to say to it.
 * Checked in tests/src/screens/practice/heard.test.tsx.
 */
export const sayHeard = (
  path: string,
  heard: Heard,
  place: Pick<Place, 'question' | 'words'>,
  saying: Saying,
): string =>
  heard.words === null
    ? sayWhole(place, writeHeard(path, heard.means, saying.units), saying)
    : saying.words.practice.quote(heard.words);
