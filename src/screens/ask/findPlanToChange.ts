import type { Consultation } from '../../../machines/consultation/consultation';
import type { Decision } from '../../../shared/judgement/decisions';

/** Which answer is changed first, by what was decided. */
const byDecision: Readonly<Partial<Record<Decision, 'length' | 'service'>>> = {
  cutFirst: 'length',
  depositOnly: 'service',
};

/**
 * The plan is to be changed, and nothing of it was yet: at which question does she begin? At any, where nothing decided
 * says which; null where no plan waits. Checked in tests/src/screens/decision/cutFirst.test.tsx.
 */
export function findPlanToChange({ log }: Pick<Consultation, 'log'>): 'length' | 'service' | 'any' | null {
  if (log.at(-1)?.type !== 'PLAN_CHANGED') return null;
  const before = log.at(-2);
  return (before?.type === 'DECIDED' && byDecision[before.tokens.decision]) || 'any';
}
