import type { Form } from './form';
import { type Answers, askForms } from './forms/asked';
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

/** What an incompatibility test was made for: what has been on the hair. */
export const formHistoryKey = (answers: Answers): string =>
  JSON.stringify([...(answers.hotTools?.history ?? [])].sort());
