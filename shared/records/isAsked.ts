import type { Form, Question } from './form';

/** What decides, beside her answers, whether a question is asked: does the local profile draw an age line? */
export interface AskContext {
  readonly hasAgeLine: boolean;
}

/** What an answer says, as options: each of several choices, and of a list only whether it has a row. */
const listGiven = (said: unknown): readonly unknown[] => {
  if (!Array.isArray(said)) return [said];
  return said.some((one) => typeof one === 'object') ? ['some'] : said;
};

/** Is this question asked, given what was said before it in the same form? */
export function isAsked(
  question: Question,
  answers: Readonly<Record<string, unknown>>,
  context: AskContext,
): boolean {
  if (question.whenAgeLine === true && !context.hasAgeLine) return false;
  if (question.when === undefined) return true;
  const given = listGiven(answers[question.when.question]);
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
