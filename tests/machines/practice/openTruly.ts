import { advance, beginConsultation, type Consultation } from '../../../machines/consultation/consultation';
import type { Lesson } from '../../../machines/practice/lesson';
import { settleLesson } from '../../../machines/practice/practiceRoom';
import { lessonUnits, tellTruth } from '../../../machines/practice/readTruth';
import { beganAtMs } from '../../../machines/practice/sitThrough';
import { classify, type RawEvent } from '../../../shared/records/classify';
import { defaultSettings } from '../../../shared/records/settings';
import { askSteps } from '../../../shared/records/steps';

export const minute = 60_000;

/** One tap that has to be let through. */
export function tap(lesson: Lesson, consultation: Consultation, atMs: number, raw: RawEvent): Consultation {
  const settings = { ...settleLesson(lesson, defaultSettings), units: lessonUnits };
  const context = { settings, settingsId: 0, atMs, by: 'Trainee', inheritsStop: false };
  const event = classify(consultation.record, raw, context);
  if (!event.ok) throw new Error(`${raw.type}: ${JSON.stringify(event.error)}`);
  const next = advance(consultation, event.value);
  if (!next.ok) throw new Error(`${raw.type}: ${JSON.stringify(next.error)}`);
  return next.value;
}

/** She told the truth, and a strand may be started. */
export function openTruly(lesson: Lesson): Consultation {
  const { ticket, chair } = lesson.seat;
  const answers = { ticket, chair: String(chair) };
  let consultation = tap(lesson, beginConsultation('practice0truly'), beganAtMs, { type: 'OPENED', answers });
  for (const step of askSteps) {
    const said: RawEvent = { type: 'ANSWERED', step, answers: tellTruth(lesson, step) };
    consultation = tap(lesson, consultation, beganAtMs, said);
    consultation = tap(lesson, consultation, beganAtMs, { type: 'STEP_CONFIRMED', answers: { step } });
  }
  return consultation;
}

/** What a strand is tested in; its clock and the maker's limit are as long as they may be. */
export interface Tested {
  readonly zone: 'lengths' | 'ends';
  readonly place: 'crown' | 'nape';
  readonly developerPercent: number;
  readonly heat: 'none' | 'foil' | 'dryHeat';
}

export const startStrand = (lesson: Lesson, consultation: Consultation, tested: Tested): Consultation =>
  tap(lesson, consultation, beganAtMs, {
    type: 'STRAND_STARTED',
    answers: {
      ...tested,
      developerPercent: String(tested.developerPercent),
      ratio: '2',
      line: lesson.truth.client.service === 'lighten' ? 'Sandbar powder' : 'Sandbar cream',
      buildUp: 'washedOff',
      minutes: '60',
      makersLimitMin: '90',
      lookEveryMin: '3',
    },
  });
