const zone = 'ends';
const mix = 'sandbar powder|6|1:2|none|25';

/** Good tokens of each event that has any of its own. */
const own: Readonly<Record<string, object>> = {
  OPENED: { inherits: false },
  ANSWERED: {
    step: 'client',
    said: 'clean',
    rules: ['judgement.tingled'],
    bearsOnPlan: true,
    planned: ['lengths', 'ends'],
    incompatibility: 'notNeeded',
  },
  STEP_CONFIRMED: { step: 'client' },
  REOPENED: { step: 'decision' },
  SKIN_TEST_NOTED: { isPositive: false },
  OVERRIDDEN: { rule: 'judgement.tingled' },
  CORRECTED: { answer: 'skinTest' },
  INCOMPATIBILITY_READ: { reacted: false },
  STRAND_STARTED: { zone, mix, closedBy: [mix] },
  LOOKED: { zone, of: 'strand' },
  STRAND_TAKEN_OFF: { zone },
  STRAND_BROKE: { zone, mix },
  OUTCOME_RECORDED: { zone, mix, fibre: 'sound' },
  OUTCOME_RETRACTED: { zone, mix },
  DECIDED: { decision: 'asPlanned', suggested: 'gentler', isFreer: true },
  BOWL_WEIGHED: { zone },
  BOWL_THROWN: { zone },
  BOWL_APPLIED: { zone },
  BOWL_RINSED: { zone },
  CLOCK_EXTENDED: { isWithinLimit: true },
};

/** Good tokens for this type of event, with those that every event has. */
export const tokensOf = (type: string): Readonly<Record<string, unknown>> => ({
  ...own[type],
  skinTest: 'clear',
  lapsed: ['ends'],
});
