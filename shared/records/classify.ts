import { accept, type Result, refuse } from '../result';
import { type ClassifyRefusal, findConflict } from './conflict';
import {
  BY_MAX_LENGTH,
  type ConsultationEvent,
  EVENT_VERSION,
  type EventType,
  MODEL_VERSION,
  type OpenedPayload,
  type PayloadOf,
} from './event';
import type { Form } from './form';
import { askForms } from './forms/asked';
import { readStrictly } from './forms/askedHere';
import { eventForms } from './forms/byEvent';
import { type JudgingContext, judge, judgeTime } from './judge';
import type { LastTime } from './lastTime';
import { passDay } from './passedDay';
import { type RawForm, readForm } from './readForm';
import type { ConsultationRecord } from './record';
import { reduce } from './reduce';
import { type AskStep, askSteps } from './steps';

/** What was tapped or typed, before anything is judged. */
export type RawEvent =
  | { readonly type: 'ANSWERED'; readonly step: AskStep; readonly answers: RawForm }
  | { readonly type: Exclude<EventType, 'ANSWERED'>; readonly answers?: RawForm };

export interface ClassifyContext extends JudgingContext {
  readonly settingsId: number;
  readonly by: string;
  /** The station itself says it: it may give what no screen gives. */
  readonly isStation?: boolean;
}

/** A screen can only send what there is; a wrong caller is told so too, and never by an exception. */
function isKnown(raw: RawEvent | null | undefined): boolean {
  if (raw?.type === 'ANSWERED') return askSteps.includes(raw.step);
  return typeof raw?.type === 'string' && Object.hasOwn(eventForms, raw.type);
}

function readPayload(raw: RawEvent, context: ClassifyContext): Result<unknown, ClassifyRefusal> {
  const reading = {
    units: context.settings.units,
    hasAgeLine: context.settings.profile.ageLine !== null,
    nowMs: context.atMs,
    isPartial: raw.type === 'ANSWERED',
    isStation: context.isStation === true,
  };
  const isAnswered = raw.type === 'ANSWERED';
  const form: Form = isAnswered ? askForms[raw.step] : eventForms[raw.type];
  const answers = raw.answers ?? {};
  const told = isAnswered ? readStrictly(answers, context.settings.profile) : answers;
  const read = readForm(form, told, reading);
  if (!read.ok) return refuse({ kind: 'fields', fields: read.error });
  if (raw.type === 'OPENED')
    return attachLastTime(read.value as unknown as OpenedPayload, context.lastTime ?? null);
  return accept(isAnswered ? { step: raw.step, answers: read.value } : read.value);
}

/** Last time is what the station found, or the client is not opened on the strength of it. */
function attachLastTime(
  payload: OpenedPayload,
  lastTime: LastTime | null,
): Result<OpenedPayload, ClassifyRefusal> {
  if (payload.lastTimeId === '') return accept(payload);
  return lastTime?.id === payload.lastTimeId
    ? accept({ ...payload, lastTime })
    : refuse({ kind: 'notLastTime' });
}

/**
 * What does this tap mean, or what is wrong with it?
 * The one door from taps and texts to events: fields are read, numbers judged, permits and mixtures tried.
 * Refuses by value, keeps nothing, writes nothing. Checked in tests/shared/records/classify.test.ts.
 */
export function classify(
  record: ConsultationRecord,
  raw: RawEvent,
  context: ClassifyContext,
): Result<ConsultationEvent, ClassifyRefusal> {
  const { atMs, by, settingsId, settings } = context;
  if (!isKnown(raw)) return refuse({ kind: 'unknownEvent' });
  if (by.trim() === '' || by.length > BY_MAX_LENGTH) return refuse({ kind: 'nobody' });
  if (atMs < record.newestAtMs && raw.type !== 'CLOCK_CORRECTED') {
    return refuse({ kind: 'clockWentBack', newestAtMs: record.newestAtMs });
  }
  const payload = readPayload(raw, context);
  if (!payload.ok) return payload;
  const today = passDay(record, atMs);
  const event = stampEvent(today, raw.type, payload.value as PayloadOf<EventType>, context);
  const conflict = findConflict(today, event, context);
  if (conflict !== null) return refuse(today === record ? conflict : sayDay(conflict));
  const time = judgeTime(record, reduce(record, event), settings, atMs);
  return accept({ ...event, by, settingsId, tokens: { ...event.tokens, ...time } } as ConsultationEvent);
}

/** What was told of another day is not just unsaid: it is to be asked anew. */
const sayDay = (conflict: ClassifyRefusal): ClassifyRefusal =>
  conflict.kind === 'permit' && conflict.permit.code === 'stepUnsaid'
    ? { kind: 'permit', permit: { code: 'anotherDay' } }
    : conflict;

/** The event as it will be stored, all but what depends on the moment. */
function stampEvent(
  record: ConsultationRecord,
  type: EventType,
  payload: PayloadOf<EventType>,
  { atMs, by, settingsId, ...context }: ClassifyContext,
): ConsultationEvent {
  const tokens = judge(record, type, payload, { ...context, atMs });
  return {
    v: EVENT_VERSION,
    type,
    payload,
    tokens,
    atMs,
    by,
    settingsId,
    modelVersion: MODEL_VERSION,
  } as ConsultationEvent;
}
