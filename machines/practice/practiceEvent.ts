import * as v from 'valibot';
import { digest } from '../../shared/records/documents/canonical';
import { BY_MAX_LENGTH } from '../../shared/records/event';
import { flagIds, type Lesson } from './lesson';

/** Raised with a migration n → n+1 whenever a stored practice event changes its shape. */
export const PRACTICE_VERSION = 1;

/** How much faster than the wall may the lesson's clock run? Real, slow enough to watch, and half an hour in half a minute: ASSUMED. */
export const speeds = [1, 10, 60] as const;
export type Speed = (typeof speeds)[number];

/** `finished`: she was sent home or away; `leftOff`: nobody went on with it. */
export const lessonEndings = ['finished', 'leftOff'] as const;

/** Lengths of texts here: ASSUMED, wide enough that only rubbish lies outside. */
const path = v.pipe(v.string(), v.minLength(1), v.maxLength(80));
const payloads = {
  LESSON_BEGUN: v.strictObject({
    lessonId: v.pipe(v.string(), v.minLength(1), v.maxLength(40)),
    /** What is drawn in this sitting is drawn from it. */
    seed: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
    isExam: v.boolean(),
    /** `digestLesson`: a lesson that was changed since is another one. */
    digest: v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/)),
  }),
  ASKED_CLOSER: v.strictObject({ path }),
  SPEED_SET: v.strictObject({ times: v.picklist(speeds) }),
  HINT_SHOWN: v.strictObject({ flag: v.picklist(flagIds) }),
  LESSON_ENDED: v.strictObject({ how: v.picklist(lessonEndings) }),
  /** A lesson of this salon's own; whether it can be played is judged when it is read. */
  LESSON_KEPT: v.strictObject({ lesson: v.unknown() }),
  LESSON_REMOVED: v.strictObject({ lessonId: v.pipe(v.string(), v.minLength(1), v.maxLength(40)) }),
};

const eventOf = <T extends keyof typeof payloads>(type: T) =>
  v.strictObject({
    v: v.literal(PRACTICE_VERSION),
    type: v.literal(type),
    payload: payloads[type],
    atMs: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
    by: v.pipe(v.string(), v.minLength(1), v.maxLength(BY_MAX_LENGTH)),
  });

/** One thing a trainee did beside the consultation, as it is stored. Its types are none of a consultation's. */
export const practiceEventSchema = v.variant('type', [
  eventOf('LESSON_BEGUN'),
  eventOf('ASKED_CLOSER'),
  eventOf('SPEED_SET'),
  eventOf('HINT_SHOWN'),
  eventOf('LESSON_ENDED'),
  eventOf('LESSON_KEPT'),
  eventOf('LESSON_REMOVED'),
]);
export type PracticeEvent = v.InferOutput<typeof practiceEventSchema>;
type Begun = Extract<PracticeEvent, { type: 'LESSON_BEGUN' }>['payload'];

/** A lesson as it was sat: the fold of its practice log. */
export interface PracticeRecord extends Begun {
  readonly beganAtMs: number;
  readonly by: string;
  readonly askedCloser: readonly string[];
  readonly hints: readonly (typeof flagIds)[number][];
  readonly speed: Speed;
  readonly ended: { readonly how: (typeof lessonEndings)[number]; readonly atMs: number } | null;
}

/** By this a lesson is known as the very one that was sat. */
export const digestLesson = (lesson: Lesson): string => digest(lesson);

const withMember = <T>(members: readonly T[], member: T): readonly T[] =>
  members.includes(member) ? members : [...members, member];

function reducePractice(record: PracticeRecord, event: PracticeEvent): PracticeRecord {
  switch (event.type) {
    case 'LESSON_BEGUN':
    case 'LESSON_KEPT':
    case 'LESSON_REMOVED':
      return record;
    case 'ASKED_CLOSER':
      return { ...record, askedCloser: withMember(record.askedCloser, event.payload.path) };
    case 'SPEED_SET':
      return { ...record, speed: event.payload.times };
    case 'HINT_SHOWN':
      return { ...record, hints: withMember(record.hints, event.payload.flag) };
    case 'LESSON_ENDED':
      return record.ended === null
        ? { ...record, ended: { how: event.payload.how, atMs: event.atMs } }
        : record;
  }
}

/** What does this practice log come to? null where it does not begin with a lesson. Checked in tests/machines/practice/practiceEvent.test.ts. */
export function foldPractice(log: readonly PracticeEvent[]): PracticeRecord | null {
  const [first, ...more] = log;
  if (first?.type !== 'LESSON_BEGUN') return null;
  const begun: PracticeRecord = {
    ...first.payload,
    beganAtMs: first.atMs,
    by: first.by,
    askedCloser: [],
    hints: [],
    speed: 1,
    ended: null,
  };
  return more.reduce(reducePractice, begun);
}
