import type { Form } from './form';
import { type Answers, askForms } from './forms/asked';
import type { ConsultationRecord } from './record';
import { type AskStep, askSteps } from './steps';

const hasAbsolute = (form: Form, said: Readonly<Record<string, unknown>>): boolean =>
  Object.entries(form).some(([name, question]) => {
    const absolute = 'absolute' in question ? (question.absolute ?? []) : [];
    const answer = said[name];
    const given: readonly unknown[] = Array.isArray(answer) ? answer : [answer];
    return given.some((option) => (absolute as readonly unknown[]).includes(option));
  });

/** Is this step answered with something that stops for good, whatever the settings are today? */
export const isStoppedBy = (step: AskStep, answers: Answers): boolean => {
  const said = answers[step];
  return said !== undefined && hasAbsolute(askForms[step], said);
};

/**
 * Does an absolute stop of this record still stand, so that a new consultation for the same ticket inherits it?
 * A corrected one does not. What has changed since (a scalp that healed) is said by name, as a correction.
 */
export function hasStandingStop(record: ConsultationRecord): boolean {
  if (record.inheritedStop || record.skinTest?.seen === 'reaction') return true;
  if (record.incompatibility?.seen === 'reacted') return true;
  // The label asks for "any reaction ever"; what was a splash or a burn is said by name at the next visit.
  if (record.ended?.how === 'reaction') return true;
  return askSteps.some((step) => isStoppedBy(step, record.answers));
}
