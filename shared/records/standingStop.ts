import type { Form, Question } from './form';
import { type Answers, askForms } from './forms/asked';
import type { ConsultationRecord } from './record';
import { type AskStep, askSteps } from './steps';

/** Which of these options, given to this question, stop for good? */
export const listAbsoluteOptions = (question: Question, answer: unknown): readonly unknown[] => {
  const absolute: readonly unknown[] = 'absolute' in question ? (question.absolute ?? []) : [];
  const given: readonly unknown[] = Array.isArray(answer) ? answer : [answer];
  return given.filter((option) => absolute.includes(option));
};

/** Which answers of this step stop for good, whatever the settings are today? By name, in order. */
export const listAbsoluteAnswers = (step: AskStep, answers: Answers): readonly string[] => {
  const form: Form = askForms[step];
  const said: Readonly<Record<string, unknown>> = answers[step] ?? {};
  return Object.entries(form)
    .filter(([name, question]) => listAbsoluteOptions(question, said[name]).length > 0)
    .map(([name]) => name);
};

/** Is this step answered with something that stops for good, whatever the settings are today? */
export const isStoppedBy = (step: AskStep, answers: Answers): boolean =>
  listAbsoluteAnswers(step, answers).length > 0;

/**
 * Does an absolute stop of this record still stand, so that a new consultation for the same ticket inherits it?
 * A corrected one does not. What has changed since (a scalp that healed) is said by name, as a correction.
 */
export function hasStandingStop(record: ConsultationRecord): boolean {
  if (record.inheritedStop || record.skinTest?.seen === 'reaction') return true;
  if (record.incompatibility?.seen === 'reacted') return true;
  // The label asks for "any reaction ever", one that is told just now too; what was a splash is said by name later.
  if (record.reaction !== null) return true;
  return askSteps.some((step) => isStoppedBy(step, record.answers));
}
