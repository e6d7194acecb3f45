import * as v from 'valibot';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { advance, beginConsultation } from '../../../machines/consultation/consultation';
import { replay } from '../../../machines/consultation/replay';
import {
  digestLesson,
  foldPractice,
  PRACTICE_VERSION,
  type PracticeEvent,
  practiceEventSchema,
} from '../../../machines/practice/practiceEvent';
import { sitThrough as sit } from '../../../machines/practice/sitThrough';
import { parseClosedLog } from '../../../shared/records/closedRecord';
import type { ConsultationEvent } from '../../../shared/records/event';
import { eventForms } from '../../../shared/records/forms/byEvent';
import { parseEvent } from '../../../shared/records/parseEvent';
import { defaultSettings } from '../../../shared/records/settings';
import { findLesson } from './findLesson';
import { perfect } from './trainee';

const lesson = findLesson('safeClient');
const stamp = { v: PRACTICE_VERSION, by: 'Wren' } as const;
const begun: PracticeEvent = {
  ...stamp,
  type: 'LESSON_BEGUN',
  payload: { lessonId: lesson.id, seed: 7, isExam: false, digest: digestLesson(lesson) },
  atMs: 1000,
};
const log: readonly PracticeEvent[] = [
  begun,
  { ...stamp, type: 'ASKED_CLOSER', payload: { path: 'client.scalp' }, atMs: 2000 },
  { ...stamp, type: 'ASKED_CLOSER', payload: { path: 'client.scalp' }, atMs: 2500 },
  { ...stamp, type: 'SPEED_SET', payload: { times: 60 }, atMs: 3000 },
  { ...stamp, type: 'HINT_SHOWN', payload: { flag: 'ironedWet' }, atMs: 4000 },
  { ...stamp, type: 'LESSON_ENDED', payload: { how: 'finished' }, atMs: 5000 },
  { ...stamp, type: 'LESSON_ENDED', payload: { how: 'leftOff' }, atMs: 6000 },
];

describe('a practice log', () => {
  it('comes to what was asked, hinted, how fast it ran and how it ended first', () => {
    expect(foldPractice(log)).toEqual({
      ...begun.payload,
      beganAtMs: 1000,
      by: 'Wren',
      askedCloser: ['client.scalp'],
      hints: ['ironedWet'],
      speed: 60,
      ended: { how: 'finished', atMs: 5000 },
    });
  });

  it('comes to nothing where it does not begin with a lesson', () => {
    expect(foldPractice([])).toBeNull();
    expect(foldPractice(log.slice(1))).toBeNull();
  });

  it('is read back from its bytes, and nothing else is', () => {
    for (const event of log)
      expect(v.is(practiceEventSchema, JSON.parse(JSON.stringify(event))), event.type).toBe(true);
    const wrong = [
      { ...begun, v: 2 },
      { ...begun, type: 'LESSON_DREAMT' },
      { ...log[3], payload: { times: 100 } },
      { ...log[4], payload: { flag: 'noSuchFlag' } },
      { ...begun, payload: { ...begun.payload, digest: 'short' } },
      { ...begun, by: '' },
      { ...begun, tokens: {} },
    ];
    for (const event of wrong) expect(v.is(practiceEventSchema, event), JSON.stringify(event)).toBe(false);
  });

  it('names the very lesson: a word more is another one', () => {
    expect(digestLesson(lesson)).toBe(digestLesson(structuredClone(lesson)));
    expect(digestLesson({ ...lesson, title: `${lesson.title}.` })).not.toBe(digestLesson(lesson));
  });
});

/**
 * What has to hold, so that practice stands in no export: no practice event is one of a consultation, so a log with one in it
 * is taken up by no station, is no closed record, and comes in from no file. That a sitting's own consultation stays out too
 * is for its name to say, which the station gives it.
 */
describe('nothing of a practice log is a consultation’s', () => {
  const { consultation } = sit(lesson, perfect, 1);

  it('by the names of its events', () => {
    expectTypeOf<PracticeEvent['type'] & ConsultationEvent['type']>().toBeNever();
    expectTypeOf<PracticeEvent>().not.toExtend<ConsultationEvent>();
    const names: readonly string[] = ['ANSWERED', ...Object.keys(eventForms)];
    expect(log.filter(({ type }) => names.includes(type))).toEqual([]);
  });

  it('by the door that every stored or imported entry passes', () => {
    for (const event of log) expect(parseEvent(event).ok, event.type).toBe(false);
    const dressed = log.map((event) => ({ ...event, tokens: {}, settingsId: 0, modelVersion: 1 }));
    for (const event of dressed)
      expect(parseEvent(event), event.type).toEqual({ ok: false, error: 'unknownType' });
    expect(v.is(practiceEventSchema, consultation.log[0])).toBe(false);
  });

  it('by the log as a whole: one such entry, and none of it is taken up', () => {
    const find = () => defaultSettings;
    for (const [at, event] of log.entries()) {
      const mixed = [...consultation.log.slice(0, at), event, ...consultation.log.slice(at)];
      expect(replay('abcd1234', mixed, find), event.type).toMatchObject({ ok: false, error: { seq: at } });
      expect(parseClosedLog({ log: mixed }), event.type).toBeNull();
    }
    expect(parseClosedLog({ log: consultation.log })).toHaveLength(consultation.log.length);
  });

  it('by the chart, were one ever handed to it', () => {
    const forged = { ...begun, tokens: {}, settingsId: 0, modelVersion: 1 } as unknown as ConsultationEvent;
    expect(advance(beginConsultation('abcd1234'), forged)).toEqual({ ok: false, error: 'notNow' });
  });
});
