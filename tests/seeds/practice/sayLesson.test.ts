import { describe, expect, it } from 'vitest';
import { es } from '../../../seeds/practice/es/es';
import { lessons } from '../../../seeds/practice/lessons';
import { sayLesson } from '../../../seeds/practice/sayLesson';
import { readMark } from '../../../src/words/marks';

const marks = [...new Set(lessons.flatMap(({ lesson }) => lesson.flags.map(({ mark }) => mark)))];
const sentences = [
  ...new Set(
    lessons.flatMap(({ lesson: { title, wants, says, flags, agreesTo } }) => [
      title,
      wants,
      agreesTo?.words ?? wants,
      ...Object.values(says).flatMap(({ first, closer }) => [first.words, closer?.words ?? first.words]),
      ...flags.map(({ why }) => why),
    ]),
  ),
];

/** Every number in it, in order of size: "23,5" and "23.5" are one. */
const findNumbers = (text: string): readonly number[] =>
  (text.match(/\d+(?:[.,]\d+)?/g) ?? [])
    .map((each) => Number(each.replace(',', '.')))
    .sort((one, other) => one - other);

/** A mark that says more than a bare citation says it in English words. */
const isSaid = (mark: string): boolean => mark.includes(' · ') || /label text|training texts/.test(mark);

describe('a lesson in Spanish', () => {
  it('has a twin of every sentence', () => {
    expect(sentences.filter((each) => !Object.hasOwn(es, each))).toEqual([]);
  });

  it('has a twin of every mark that says something beside its citation', () => {
    expect(marks.filter((each) => isSaid(each) && !Object.hasOwn(es, each))).toEqual([]);
  });

  it('has no twin of what no lesson says', () => {
    const said = new Set([...sentences, ...marks]);
    expect(Object.keys(es).filter((each) => !said.has(each))).toEqual([]);
  });

  it.each(Object.entries(es))('tells the figures of “%s”', (english, spanish) => {
    expect(findNumbers(spanish)).toEqual(findNumbers(english));
  });

  it('leaves the kind of a mark as it is read', () => {
    for (const mark of marks) expect(readMark(sayLesson(mark, 'es')).kind).toBe(readMark(mark).kind);
  });

  it('says what has no twin as it was written', () => {
    expect(sayLesson('A sentence of a trainer’s own.', 'es')).toBe('A sentence of a trainer’s own.');
    expect(sayLesson('toString', 'es')).toBe('toString');
    expect(sayLesson('No. Never.', 'en')).toBe('No. Never.');
    expect(sayLesson('No. Never.', 'es')).toBe('No. Nunca.');
  });
});
