import type { Answers } from '../../../shared/records/forms/asked';
import { askForms } from '../../../shared/records/forms/asked';
import { listUnanswered } from '../../../shared/records/isAsked';
import type { Settings } from '../../../shared/records/settings';
import { askSteps } from '../../../shared/records/steps';

/** The questions that these answers leave open, each with its step: `client.scalp`. */
export const listOpenQuestions = (answers: Answers, { profile }: Settings): readonly string[] =>
  askSteps.flatMap((step) =>
    listUnanswered(askForms[step], answers[step] ?? {}, { hasAgeLine: profile.ageLine !== null }).map(
      (name) => `${step}.${name}`,
    ),
  );

/** What a refusal adds for whoever reads it: a step is not said while a question of it is open. */
export const tellOpenQuestions = (answers: Answers, settings: Settings): string =>
  `still unanswered: ${listOpenQuestions(answers, settings).join(', ') || 'nothing'}`;
