import { and, assign, setup } from 'xstate';
import type { ConsultationEvent } from '../../shared/records/event';
import { type BackStep, backSteps, isEarlierStep } from '../../shared/records/steps';
import { advanceFacts } from './advanceFacts';
import type { Facts } from './facts';
import { guards } from './guards';

/** What every part of the chart is made with: the facts, the guards, and the one action. */
export const chart = setup({
  types: {} as { context: { facts: Facts }; events: ConsultationEvent },
  guards,
  actions: {
    /** Every accepted event moves the facts; an edge without it would look like a refusal. */
    note: assign(({ context, event }) => ({ facts: advanceFacts(context.facts, event) })),
  },
});

/** Nothing goes onward while a reaction is looked into or the client is away. */
export const onward = ['isCalm', 'isAtBar'] as const;

/** Edges back to each of the steps that lie before this one. */
export const reopenBefore = (here: BackStep | 'mix', ...also: readonly 'isNothingWeighed'[]) =>
  backSteps
    .filter((step) => isEarlierStep(step, here))
    .map((step) => ({
      guard: and([...onward, ...also, { type: 'isStep', params: { step } } as const]),
      target: `#${step}` as const,
      actions: 'note' as const,
    }));

/** An absolute answer stops at once, unless something is on a head: then it is rinsed first. */
export const stop = {
  guard: and(['isAbsoluteAnswer', 'isNothingOn']),
  target: '#stopped',
  actions: 'note',
} as const;
