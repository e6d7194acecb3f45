import type { AskStep } from '../steps';
import { type ClientAnswers, clientForm } from './client';
import { type FeelHairAnswers, feelHairForm } from './feelHair';
import { type HeatSprayAnswers, heatSprayForm } from './heatSpray';
import { type HotToolsAnswers, hotToolsForm } from './hotTools';

/** What each step asks. A new question is one line in one of these tables and its words. */
export const askForms = {
  client: clientForm,
  hotTools: hotToolsForm,
  feelHair: feelHairForm,
  heatSpray: heatSprayForm,
} as const;

export interface AnswersByStep {
  readonly client: ClientAnswers;
  readonly hotTools: HotToolsAnswers;
  readonly feelHair: FeelHairAnswers;
  readonly heatSpray: HeatSprayAnswers;
}

/** Everything said so far; a step not yet said is absent. */
export type Answers = { readonly [S in AskStep]?: AnswersByStep[S] };
