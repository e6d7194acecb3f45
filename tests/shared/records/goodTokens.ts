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
    restores: ['ends'],
    planned: ['lengths', 'ends'],
    incompatibility: 'notNeeded',
  },
  STEP_CONFIRMED: { step: 'client' },
  REOPENED: { step: 'decision' },
  SKIN_TEST_NOTED: { isPositive: false },
  OVERRIDDEN: { rule: 'judgement.tingled', isRaised: true },
  CORRECTED: { answer: 'skinTest', voids: false },
  INCOMPATIBILITY_READ: { reacted: false },
  STRAND_STARTED: { zone, mix, closedBy: [mix] },
  LOOKED: { zone, of: 'strand', stings: false },
  STRAND_TAKEN_OFF: { zone },
  STRAND_DISCARDED: { zone },
  STRAND_BROKE: { zone, mix },
  OUTCOME_RECORDED: { zone, mix, fibre: 'sound' },
  OUTCOME_CARRIED: { isAsLastTime: true, sound: ['lengths'], rough: ['ends'] },
  OUTCOME_RETRACTED: { zone, mix },
  DECIDED: { decision: 'asPlanned', suggested: 'gentler', isFreer: true },
  BOWL_WEIGHED: { zone, maxMinutes: 25 },
  BOWL_THROWN: { zone, asksSkin: false },
  BOWL_APPLIED: { zone },
  BOWL_ALL_ON: { zone },
  BOWL_RINSED: { zone },
  STRETCH_NOTED: { zone, springsBack: true, corrects: false },
  TONER_WEIGHED: { zone },
  RESUMED: { asksAnew: true },
  CLOCK_EXTENDED: { isWithinLimit: true, isOnHead: false, hasWeakened: false },
};

/** Words that a stored entry may lack, since an older model did not say them; a log that should have them is refused. */
export const laterWords: readonly string[] = ['asksSkin', 'hasWeakened', 'isRaised', 'maxMinutes'];

/** Good tokens for this type of event, with those that every event has. */
export const tokensOf = (type: string): Readonly<Record<string, unknown>> => ({
  ...own[type],
  skinTest: 'clear',
  lapsed: ['ends'],
  isAnotherDay: false,
});
