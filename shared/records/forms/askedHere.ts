import type { RawForm } from '../readForm';
import type { LocalProfile } from '../settings';
import type { AskStep } from '../steps';
import { askForms } from './asked';

type Reading = Pick<LocalProfile, 'isAnyReactionAbsolute'>;
type Options = readonly string[];

/** Of the two readings of a tingle, which does this house not ask? That one is no answer here. */
export const findUnasked = ({ isAnyReactionAbsolute }: Reading) =>
  isAnyReactionAbsolute ? 'tingled' : 'tingledStops';

/**
 * What does this step ask in this house? A tingle that stopped on rinsing is one answer, and under the stricter reading it
 * is held, because it stops at once. Checked in tests/shared/judgement/houseRules.test.ts.
 */
export function findAskForm(step: AskStep, profile: Reading) {
  const form = askForms[step];
  if (!('reactions' in form)) return form;
  const options: Options = form.reactions.options.filter((option) => option !== findUnasked(profile));
  return { ...form, reactions: { ...form.reactions, options } };
}

/** What was tapped, as this house reads it: under the stricter reading a tingle is always the answer that stops. */
export function readStrictly(answers: RawForm, profile: Reading): RawForm {
  const { reactions } = answers;
  if (!profile.isAnyReactionAbsolute || !Array.isArray(reactions)) return answers;
  const told = reactions.map((option: unknown) => (option === 'tingled' ? 'tingledStops' : option));
  return { ...answers, reactions: [...new Set(told)] as Options };
}
