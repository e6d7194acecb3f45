import { describe, expect, it } from 'vitest';
import type { Lesson } from '../../../machines/practice/lesson';
import { checkLesson, readLesson } from '../../../machines/practice/readLesson';
import { findLesson } from './findLesson';

const lesson = findLesson('neverChemical');
const told = (changes: object): string => JSON.stringify({ ...lesson, ...changes });

describe('a lesson that a trainer wrote', () => {
  it('is read from JSON as it was written', () => {
    expect(readLesson(JSON.stringify(lesson))).toEqual({ ok: true, value: lesson });
  });

  it('is refused where it is no text of JSON', () => {
    expect(readLesson('{"id":')).toEqual({ ok: false, error: [{ path: '', code: 'notJson' }] });
  });

  it('is refused at the place that is not of its shape', () => {
    expect(readLesson('[]')).toMatchObject({ ok: false });
    const seat = { ...lesson.seat, chair: 31 };
    expect(readLesson(told({ seat }))).toEqual({
      ok: false,
      error: [{ path: 'seat.chair', code: 'malformed' }],
    });
    expect(readLesson(told({ more: 1 }))).toEqual({
      ok: false,
      error: [{ path: 'more', code: 'malformed' }],
    });
  });

  it('is refused at a flag whose mark is none of the four', () => {
    const flags = lesson.flags.map((flag) => ({ ...flag, mark: 'everybody knows' }));
    expect(readLesson(told({ flags }))).toEqual({
      ok: false,
      error: [{ path: 'flags.0.mark', code: 'malformed' }],
    });
  });

  it('is refused at an answer that the forms do not take', () => {
    const client = { ...lesson.truth.client, targetLevel: '14' };
    const { texture: _texture, reach: _reach, ...less } = lesson.truth.client;
    expect(readLesson(told({ truth: { ...lesson.truth, client } }))).toEqual({
      ok: false,
      error: [{ path: 'truth.client.targetLevel', code: 'notTrueAnswer' }],
    });
    expect(readLesson(told({ truth: { ...lesson.truth, client: less } }))).toEqual({
      ok: false,
      error: [{ path: 'truth.client.reach', code: 'notTrueAnswer' }],
    });
  });

  it('is refused where she speaks of something that nobody asks', () => {
    const says: Lesson['says'] = { 'client.shoeSize': { first: { words: 'Six.', means: '6' } } };
    expect(checkLesson({ ...lesson, says })).toEqual({
      ok: false,
      error: [{ path: 'says.client.shoeSize', code: 'noSuchQuestion' }],
    });
  });

  it('is refused where even asked closer she does not say what is true', () => {
    const says: Lesson['says'] = {
      'hotTools.history': { first: { words: 'Nothing.', means: ['none'] } },
    };
    expect(checkLesson({ ...lesson, says })).toEqual({
      ok: false,
      error: [{ path: 'says.hotTools.history', code: 'neverTrue' }],
    });
  });
});
