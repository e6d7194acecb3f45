import type { Form } from './form';
import { type Answers, askForms } from './forms/asked';
import type { ClientAnswers } from './forms/client';
import { askSteps } from './steps';

/**
 * Everything that bears on the plan, as one comparable text: a strand stands for exactly this and nothing else.
 * Order is that of the forms, so equal answers give equal keys.
 */
export const formPlanKey = (answers: Answers): string =>
  JSON.stringify(
    askSteps.map((step) => {
      const form: Form = askForms[step];
      const said: Readonly<Record<string, unknown>> | undefined = answers[step];
      if (said === undefined) return null;
      const bearing = Object.entries(form).filter(([, question]) => question.aside !== true);
      return bearing.map(([name]) => said[name] ?? null);
    }),
  );

/** For which service, and to which level, was this key formed? As it was planned then, whatever the plan is now. */
export function readPlanned(planKey: string): Partial<Pick<ClientAnswers, 'service' | 'targetLevel'>> {
  const form: Form = askForms.client;
  const bearing = Object.keys(form).filter((name) => form[name]?.aside !== true);
  const said = (JSON.parse(planKey) as readonly (readonly unknown[] | null)[])[askSteps.indexOf('client')];
  const planned = bearing.flatMap((name, at) => {
    const answer = said?.[at] ?? null;
    return answer !== null && (name === 'service' || name === 'targetLevel') ? [[name, answer]] : [];
  });
  return Object.fromEntries(planned);
}

const asksForIncompatibilityTest: readonly string[] = [
  'unknown',
  'unknownBoxColour',
  'henna',
  'compoundHenna',
  'metallicColour',
];

/**
 * Which of what has been on the hair asks for an incompatibility test? Metallic salts, henna (few know whether theirs
 * was compound), gradual restorers and unknown home colour: training texts, not a regulator; the maker's method first.
 */
export const listIncompatible = (answers: Answers): readonly string[] =>
  (answers.hotTools?.history ?? []).filter((item) => asksForIncompatibilityTest.includes(item)).sort();

/** What an incompatibility test was made for; another history needs another one. */
export const formHistoryKey = (answers: Answers): string => JSON.stringify(listIncompatible(answers));
