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

/** Each tap is kept as it is made, so any answer of a step may still be absent. */
export interface AnswersByStep {
  readonly client: Partial<ClientAnswers>;
  readonly hotTools: Partial<HotToolsAnswers>;
  readonly feelHair: Partial<FeelHairAnswers>;
  readonly heatSpray: Partial<HeatSprayAnswers>;
}

/** Everything said so far; a step not yet said is absent. */
export type Answers = { readonly [S in AskStep]?: AnswersByStep[S] };
