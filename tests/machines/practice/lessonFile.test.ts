import { describe, expect, it } from 'vitest';
import { readLessonFile, writeLessonFile, writeLessonSchema } from '../../../machines/practice/lessonFile';
import { ASSUMED_LONGEST_LESSON_FILE } from '../../../machines/practice/longestLessonFile';
import { lessons } from '../../../seeds/practice/lessons';
import { defaultSettings } from '../../../shared/records/settings';
import { findLesson } from './findLesson';

const all = lessons.map(({ lesson }) => lesson);
const read = (text: string, here = all) => readLessonFile(text, here, defaultSettings);
const own = { ...findLesson('wetIronedCurls'), id: 'ourOwn', title: 'One of our own' };
const refusal = (lesson: object) => read(writeLessonFile(lesson as never));

describe('a file of a lesson', () => {
  it('comes back as it was written, the same once more too', () => {
    expect(read(writeLessonFile(own))).toEqual({ ok: true, value: own });
    expect(read(writeLessonFile(own), [...all, own])).toEqual({ ok: true, value: own });
  });

  it('is refused by its reason: cut off, of another program, of a newer edition', () => {
    const text = writeLessonFile(own);
    expect(read(text.slice(0, -20))).toMatchObject({ error: { code: 'notJson' } });
    for (const other of ['{}', '[]', '7', '{"format":"elsewhere","version":1}'])
      expect(read(other), other).toMatchObject({ error: { code: 'otherFile' } });
    expect(read(text.replace('"version": 1', '"version": 2'))).toMatchObject({
      error: { code: 'newerVersion', version: 2 },
    });
  });

  it('is refused with a claim that has no source or mark, and with what is not true', () => {
    const [flag] = own.flags;
    expect(refusal({ ...own, flags: [{ ...flag, mark: 'everybody knows' }] })).toMatchObject({
      error: { code: 'unmarked', paths: ['flags.0.mark'] },
    });
    expect(refusal({ ...own, flags: [{ ...flag, why: '' }] })).toMatchObject({
      error: { code: 'unmarked', paths: ['flags.0.why'] },
    });
    expect(refusal({ ...own, wants: '' })).toMatchObject({
      error: { code: 'faults', faults: [{ path: 'wants', code: 'malformed' }] },
    });
  });

  it('is refused nested deeper than anybody looks, and longer than any lesson', () => {
    const deep = '{"a":['.repeat(9000) + ']}'.repeat(9000);
    const nested = `{"format":"strandproof.lesson","version":1,"lesson":{"says":{"client.service":{"first":{"words":"x","means":${deep}}}}}}`;
    expect(read(nested)).toMatchObject({ error: { code: 'faults' } });
    expect(read(' '.repeat(ASSUMED_LONGEST_LESSON_FILE + 1))).toMatchObject({ error: { code: 'otherFile' } });
  });

  it('is refused with the id of a lesson that says something else', () => {
    expect(refusal({ ...findLesson('safeClient'), wants: 'Something else.' })).toMatchObject({
      error: { code: 'sameId', id: 'safeClient' },
    });
  });

  it('is refused where not even whoever does everything right could pass', () => {
    const flag = { id: 'scorched', asks: [], why: 'It is not so.', mark: 'common practice, no source' };
    const safe = { ...findLesson('safeClient'), id: 'ourSafe' };
    expect(refusal({ ...safe, flags: [flag] })).toMatchObject({
      error: { code: 'cannotBePassed', failedBy: ['flagMissed'] },
    });
  });

  it('has a key that says what stands in it', () => {
    const schema = JSON.parse(writeLessonSchema());
    expect(schema.$schema).toContain('2020-12');
    expect(Object.keys(schema.properties)).toEqual(['format', 'version', 'lesson']);
    expect(Object.keys(schema.properties.lesson.properties)).toContain('truth');
  });
});
