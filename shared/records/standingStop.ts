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

/** Each option of this step that stops for good, by name: `client.reactions.hives`. */
const listStopsOf = (step: AskStep, answers: Answers): readonly string[] => {
  const form: Form = askForms[step];
  const said: Readonly<Record<string, unknown>> = answers[step] ?? {};
  return Object.entries(form).flatMap(([name, question]) =>
    listAbsoluteOptions(question, said[name]).map((option) => `${step}.${name}.${String(option)}`),
  );
};

/** A stop that stands, by its kind, and the place in the log of what told it, where the record keeps that. */
export interface StandingStop {
  readonly stop: string;
  readonly seq: number | null;
}

const listOfReaction = ({ reaction }: ConsultationRecord): readonly StandingStop[] =>
  reaction === null
    ? []
    : [
        { stop: 'reaction', seq: reaction.seq },
        ...reaction.signs.map((sign) => ({ stop: `reaction.${sign}`, seq: null })),
      ];

/**
 * Which absolute stops of this record still stand, each by a kind that means the same at every station?
 * The label asks for "any reaction ever", one that is told just now too; what was a splash is said by name later.
 */
export const listStandingStops = (record: ConsultationRecord): readonly StandingStop[] => {
  const { opened, inheritedStop, skinTest, incompatibility, answers } = record;
  const told = askSteps.flatMap((step) => listStopsOf(step, answers));
  return [
    ...(inheritedStop ? [{ stop: 'inherited', seq: opened?.seq ?? null }] : []),
    ...(skinTest?.seen === 'reaction'
      ? [{ stop: `skinTest.${skinTest.skinTestId ?? 'here'}`, seq: skinTest.seq }]
      : []),
    ...(incompatibility?.seen === 'reacted' ? [{ stop: 'incompatibility', seq: incompatibility.seq }] : []),
    ...listOfReaction(record),
    ...told.map((stop) => ({ stop, seq: null })),
  ];
};

/**
 * Does an absolute stop of this record still stand, so that a new consultation for the same ticket inherits it?
 * A corrected one does not. What has changed since (a scalp that healed) is said by name, as a correction.
 */
export const hasStandingStop = (record: ConsultationRecord): boolean => listStandingStops(record).length > 0;
