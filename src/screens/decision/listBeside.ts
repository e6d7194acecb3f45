import type { Decision } from '../../../shared/judgement/decisions';
import type { DecisionView } from './viewDecision';

/** Beside the suggestion so many stand at once; the rest is one tap away. */
const SHOWN_MOST = 3;

/** What stands beside the suggestion: the careful ones nearest to it that can be taken, "we say no" always among them. */
export function listBeside({ choices, suggested }: DecisionView, chosen: Decision): readonly Decision[] {
  const careful = choices
    .filter(({ kind, isOpen }) => kind === 'careful' && isOpen)
    .map(({ decision }) => decision);
  const nearest = careful.slice(0, SHOWN_MOST);
  const saysNo = suggested === 'weSayNo' || nearest.includes('weSayNo');
  const first = saysNo ? nearest : [...nearest.slice(0, SHOWN_MOST - 1), 'weSayNo' as const];
  if (chosen === suggested || first.includes(chosen)) return first;
  return [chosen, ...first.slice(0, SHOWN_MOST - 1)];
}
