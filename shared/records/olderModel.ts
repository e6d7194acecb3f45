import { msPerMinute } from '../units/time';
import type { Clock } from './clock';
import type { ConsultationEvent } from './event';
import type { Form } from './form';
import { type Answers, askForms } from './forms/asked';
import type { ConsultationRecord, OverrideRecord } from './record';
import { askSteps } from './steps';

/** What this model did not ask yet counts as answered with nothing: null is no option, and part of no plan. */
function fillAdded(answers: Answers, modelVersion: number): Answers {
  const steps = askSteps.flatMap((step) => {
    const said: Readonly<Record<string, unknown>> | undefined = answers[step];
    if (said === undefined) return [];
    const form: Form = askForms[step];
    const added = Object.entries(form).filter(
      ([name, { addedIn }]) => addedIn !== undefined && addedIn > modelVersion && said[name] === undefined,
    );
    return [[step, { ...said, ...Object.fromEntries(added.map(([name]) => [name, null])) }]];
  });
  return Object.fromEntries(steps) as Answers;
}

const liftedTable: OverrideRecord = {
  rule: 'judgement.freerThanSuggested',
  code: 'olderModel',
  words: '',
  by: '',
  atMs: 0,
  seq: 0,
};

/** Its table left other times on the head: more time may have been given up to what the strand proved, and no further. */
const liftTimes = ({ clocks, bowls }: ConsultationRecord): readonly Clock[] =>
  clocks.map((clock) => {
    const proven = bowls.find((bowl) => bowl.clock === clock.id)?.proof?.tested.minutes;
    if (proven === undefined) return clock;
    return { ...clock, limitAtMs: Math.max(clock.limitAtMs, clock.startedAtMs + proven * msPerMinute) };
  });

/**
 * The record as an older model would have read it, so that what it let happen can be judged today.
 * Three things only were another model's own: which questions there were, which judgement stops it knew (listStops), and
 * what its table suggested and left of the time. Absolute stops, outcomes, the plan, the skin test, what a decision mixes and what was tested are judged as ever.
 * Checked in tests/machines/consultation/olderModel.test.ts.
 */
export const readAsOlder = (record: ConsultationRecord, modelVersion: number): ConsultationRecord => ({
  ...record,
  answers: fillAdded(record.answers, modelVersion),
  overrides: [...record.overrides, liftedTable],
  clocks: liftTimes(record),
  modelVersion,
});

/** The same for the event itself: a step that was whole then is whole. */
export const fillAsOlder = (event: ConsultationEvent): ConsultationEvent => {
  if (event.type !== 'ANSWERED') return event;
  const { step, answers } = event.payload;
  const filled = fillAdded({ [step]: answers }, event.modelVersion)[step] ?? answers;
  return { ...event, payload: { step, answers: filled } } as ConsultationEvent;
};
