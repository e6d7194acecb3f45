import type { Form, Question } from './form';

/** What decides, beside her answers, whether a question is asked: does the local profile draw an age line? */
export interface AskContext {
  readonly hasAgeLine: boolean;
}

/** Is this question asked, given what was said before it in the same form? */
export function isAsked(
  question: Question,
  answers: Readonly<Record<string, unknown>>,
  context: AskContext,
): boolean {
  if (question.whenAgeLine === true && !context.hasAgeLine) return false;
  if (question.when === undefined) return true;
  const said = answers[question.when.question];
  const given: readonly unknown[] = Array.isArray(said) ? said : [said];
  return question.when.is.some((option) => given.includes(option));
}

/** Which questions of this form are asked, and not answered yet? By name, in order. */
export const listUnanswered = (
  form: Form,
  answers: Readonly<Record<string, unknown>>,
  context: AskContext,
): readonly string[] =>
  Object.entries(form)
    .filter(([name, question]) => isAsked(question, answers, context) && answers[name] === undefined)
    .map(([name]) => name);
