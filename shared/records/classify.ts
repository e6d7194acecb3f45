import { type MixtureRefusal, mixture } from '../judgement/mixture';
import { issuePermit, issueTestPermit } from '../judgement/permit';
import type { PermitRefusal } from '../judgement/permitRefusal';
import { findReadableAtMs } from '../judgement/skinTest';
import { accept, type Result, refuse } from '../result';
import {
  BY_MAX_LENGTH,
  type ConsultationEvent,
  EVENT_VERSION,
  type EventType,
  MODEL_VERSION,
  type PayloadOf,
} from './event';
import type { Form } from './form';
import { askForms } from './forms/asked';
import { eventForms } from './forms/byEvent';
import { type JudgingContext, judge, judgeTime } from './judge';
import { type FieldRefusal, type RawForm, readForm } from './readForm';
import type { ConsultationRecord } from './record';
import { reduce } from './reduce';
import { INCOMPATIBILITY_MS } from './reduce/answers';
import { type AskStep, askSteps } from './steps';

/** What was tapped or typed, before anything is judged. */
export type RawEvent =
  | { readonly type: 'ANSWERED'; readonly step: AskStep; readonly answers: RawForm }
  | { readonly type: Exclude<EventType, 'ANSWERED'>; readonly answers?: RawForm };

export interface ClassifyContext extends JudgingContext {
  readonly settingsId: number;
  readonly by: string;
}

/** Why a tap did not become an event. `fields` are said at the field; the rest on the screen. */
export type ClassifyRefusal =
  | { readonly kind: 'fields'; readonly fields: readonly FieldRefusal[] }
  | { readonly kind: 'permit'; readonly permit: PermitRefusal }
  | { readonly kind: 'mixture'; readonly mixture: MixtureRefusal }
  | { readonly kind: 'clockWentBack'; readonly newestAtMs: number }
  | { readonly kind: 'nobody' }
  | { readonly kind: 'unknownEvent' };

const atField = (path: string, code: 'overLimit' | 'readTooEarly'): ClassifyRefusal => ({
  kind: 'fields',
  fields: [{ path, code }],
});

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
  };
  const isAnswered = raw.type === 'ANSWERED';
  const form: Form = isAnswered ? askForms[raw.step] : eventForms[raw.type];
  const read = readForm(form, raw.answers ?? {}, reading);
  if (!read.ok) return refuse({ kind: 'fields', fields: read.error });
  return accept(isAnswered ? { step: raw.step, answers: read.value } : read.value);
}

/** What one event asks of the record beyond its own fields: times, limits, a permit and a mixture within it. */
export function findConflict(
  record: ConsultationRecord,
  event: ConsultationEvent,
  context: Pick<JudgingContext, 'settings' | 'atMs'>,
): ClassifyRefusal | null {
  const { settings, atMs } = context;
  switch (event.type) {
    case 'SKIN_TEST_NOTED': {
      const isEarly = atMs < findReadableAtMs(event.payload.putOnAtMs, settings.profile);
      return event.payload.seen === 'nothing' && isEarly ? atField('seen', 'readTooEarly') : null;
    }
    case 'INCOMPATIBILITY_READ': {
      const running = record.clocks.find(
        ({ kind, endedAtMs }) => kind === 'incompatibility' && endedAtMs === null,
      );
      const isEarly = atMs - (running?.startedAtMs ?? atMs) < INCOMPATIBILITY_MS;
      return event.payload.seen === 'nothing' && isEarly ? atField('seen', 'readTooEarly') : null;
    }
    case 'STRAND_STARTED': {
      if (event.payload.minutes > event.payload.makersLimitMin) return atField('minutes', 'overLimit');
      const permit = issueTestPermit(record, settings);
      if (!permit.ok) return { kind: 'permit', permit: permit.error };
      const { testG, ratio } = event.payload;
      const order = { ...event.payload, shades: [{ shade: '', parts: 1 }], colourG: testG / (1 + ratio) };
      const made = mixture(permit.value, order, settings.scaleStepG);
      return made.ok ? null : { kind: 'mixture', mixture: made.error };
    }
    case 'BOWL_WEIGHED': {
      const permit = issuePermit(record, event.payload.zone, settings, atMs);
      if (!permit.ok) return { kind: 'permit', permit: permit.error };
      const made = mixture(permit.value, event.payload, settings.scaleStepG);
      return made.ok ? null : { kind: 'mixture', mixture: made.error };
    }
    default:
      return null;
  }
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
  const event = stampEvent(record, raw.type, payload.value as PayloadOf<EventType>, context);
  const conflict = findConflict(record, event, context);
  if (conflict !== null) return refuse(conflict);
  const time = judgeTime(reduce(record, event), settings, atMs);
  return accept({ ...event, by, settingsId, tokens: { ...event.tokens, ...time } } as ConsultationEvent);
}

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
