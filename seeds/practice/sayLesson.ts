import { es } from './es/es';
import type { Sentences } from './es/sentences';

const byLocale: Readonly<Record<string, Sentences | undefined>> = { es };

/**
 * A sentence of a lesson in this language; as it was written where it has no twin, as those of a trainer's own lesson.
 * Lessons, logs and digests hold what was written, so that a language changes nothing that is stored. Of a mark the kind in
 * front stays as it is: `readMark` reads it. Checked in tests/seeds/practice/sayLesson.test.ts.
 */
export function sayLesson(sentence: string, locale: string): string {
  const sentences = byLocale[locale];
  return sentences !== undefined && Object.hasOwn(sentences, sentence)
    ? (sentences[sentence] ?? sentence)
    : sentence;
}
