import type { Answers } from '../../shared/records/forms/asked';
import { askForms } from '../../shared/records/forms/asked';
import { type FieldRefusal, type RawForm, readForm } from '../../shared/records/readForm';
import { type AskStep, askSteps } from '../../shared/records/steps';
import { accept, type Result, refuse } from '../../shared/result';
import type { UnitSettings } from '../../shared/units/quantity';
import type { Lesson } from './lesson';

/** In which a lesson is written, whatever the station shows. */
export const lessonUnits: UnitSettings = { temperature: 'C', mass: 'g', length: 'cm' };

/** How a practice client is finished where nobody plans otherwise: common practice after anything that lifts. */
const noHotTool: RawForm = { finish: 'noHotTool' };

/** How does she ask for it to be finished? A wish, which the salon need not follow. */
export const findWish = ({ finish }: Pick<Lesson, 'finish'>): RawForm => finish ?? noHotTool;

/** What is true of her at this step, as it would be tapped. Of how she is finished today nothing is true before it is planned. */
export const tellTruth = ({ truth }: Pick<Lesson, 'truth'>, step: AskStep): RawForm =>
  step === 'heatSpray' ? noHotTool : truth[step];

const reading = { units: lessonUnits, hasAgeLine: true, nowMs: 0 };

/** What of her wish does the form not take? Nothing where it is whole. */
export function checkWish(wish: RawForm): readonly FieldRefusal[] {
  const read = readForm(askForms.heatSpray, wish, reading);
  return read.ok ? [] : read.error;
}

/** What is true of her, as the forms of a consultation read it; or what of it they do not take. */
export function readTruth(lesson: Pick<Lesson, 'truth'>): Result<Answers, readonly FieldRefusal[]> {
  const read = askSteps.map(
    (step) => [step, readForm(askForms[step], tellTruth(lesson, step), reading)] as const,
  );
  const refusals = read.flatMap(([step, result]) =>
    result.ok ? [] : result.error.map((refusal) => ({ ...refusal, path: `${step}.${refusal.path}` })),
  );
  if (refusals.length > 0) return refuse(refusals);
  return accept(Object.fromEntries(read.map(([step, result]) => [step, result.ok ? result.value : {}])));
}
