import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { classify, type RawEvent } from '../../../shared/records/classify';
import type { ConsultationEvent, EventOf, EventType } from '../../../shared/records/event';
import type { RawForm } from '../../../shared/records/readForm';
import { beginRecord, type ConsultationRecord } from '../../../shared/records/record';
import { reduce } from '../../../shared/records/reduce';
import type { Settings } from '../../../shared/records/settings';
import { tellOpenQuestions } from './openQuestions';

/** What a story has made so far. Told through `classify` and `reduce` alone: no chart stands in between. */
export interface Told {
  readonly record: ConsultationRecord;
  readonly log: readonly ConsultationEvent[];
  readonly atMs: number;
}

export const minute = 60_000;
export const hour = 60 * minute;
export const day = 24 * hour;

export const startAtMs = endsIronedWet.startAtMs;
export const story: readonly StoryStep[] = endsIronedWet.steps;

/** Nothing told yet, on the morning of the story. */
export const nothing: Told = { record: beginRecord('told'), log: [], atMs: startAtMs };

/** The first tap of the story that matches. */
export function find(matches: (raw: RawEvent) => boolean): RawEvent {
  const step = story.find(({ raw }) => matches(raw));
  if (step === undefined) throw new Error('no such tap in this story');
  return step.raw;
}

/** The same story up to, and without, the first step that matches. */
export const until = (type: EventType, steps: readonly StoryStep[] = story): readonly StoryStep[] => {
  const end = steps.findIndex(({ raw }) => raw.type === type);
  if (end < 0) throw new Error(`no ${type} in this story`);
  return steps.slice(0, end);
};

/** The same story with some answers of the matching steps changed. At least one step has to match. */
export function change(
  steps: readonly StoryStep[],
  matches: (raw: RawEvent) => boolean,
  answers: RawForm,
): readonly StoryStep[] {
  if (!steps.some(({ raw }) => matches(raw))) throw new Error('nothing to change in this story');
  return steps.map((step) =>
    matches(step.raw)
      ? { ...step, raw: { ...step.raw, answers: { ...step.raw.answers, ...answers } } as RawEvent }
      : step,
  );
}

/** Is it an answer to this step? Is it this event, of this zone? */
export const ofStep = (step: string) => (raw: RawEvent) => 'step' in raw && raw.step === step;
export const ofType = (type: EventType, zone?: string) => (raw: RawEvent) =>
  raw.type === type && (zone === undefined || raw.answers?.zone === zone);

/** The story with both strands left on for their whole time, the ends taken off right after the lengths. */
const bothStay: readonly StoryStep[] = story.flatMap((step, index): readonly StoryStep[] => {
  if (step.raw.type === 'STRAND_BROKE') return [];
  const before = story[index - 1];
  const afterMs = step.afterMs + (before?.raw.type === 'STRAND_BROKE' ? before.afterMs : 0);
  const here = { ...step, afterMs };
  if (step.raw.type !== 'STRAND_TAKEN_OFF') return [here];
  return [
    here,
    {
      afterMs: 1000,
      by: step.by,
      raw: { type: 'STRAND_TAKEN_OFF', answers: { zone: 'ends', why: 'levelReached' } },
    },
  ];
});

/** The same story in which the ends hold as well: no strand breaks, and both are sound. */
export const bothHold: readonly StoryStep[] = change(bothStay, ofType('OUTCOME_RECORDED', 'ends'), {
  fibre: 'sound',
  stretch: 'springsBack',
  level: '7',
  evenness: 'even',
});

/** Both hold, on hair that is ironed dry: nothing speaks against the plan as it is. */
export const lowRisk: readonly StoryStep[] = change(
  change(bothHold, ofStep('hotTools'), { habits: [] }),
  ofType('DECIDED'),
  { decision: 'asPlanned' },
);

/** One step more, so long after the one before. Throws what the refusal says: a story has to be allowed. */
export function andThen(told: Told, raw: RawEvent, afterMs = 1000, settings: Settings = salon): Told {
  const atMs = told.atMs + afterMs;
  const event = tryRaw(told, raw, atMs, settings);
  if (!event.ok) {
    const open = tellOpenQuestions(told.record.answers, settings);
    throw new Error(`${raw.type}: ${JSON.stringify(event.error)}; ${open}`);
  }
  return { record: reduce(told.record, event.value), log: [...told.log, event.value], atMs };
}

export const tryRaw = (told: Told, raw: RawEvent, atMs: number, settings: Settings = salon) =>
  classify(told.record, raw, { settings, settingsId: 1, atMs, by: 'Opal', inheritsStop: false });

/** The record that these steps make. */
export const tell = (steps: readonly StoryStep[], settings: Settings = salon, from: Told = nothing): Told =>
  steps.reduce((told, { afterMs, raw }) => andThen(told, raw, afterMs, settings), from);

/** The first event of this type in what was told. */
export function findEvent<T extends EventType>({ log }: Told, type: T): EventOf<T> {
  const event = log.find((each) => each.type === type);
  if (event === undefined) throw new Error(`no ${type} in this log`);
  return event as EventOf<T>;
}
