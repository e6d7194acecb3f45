/**
 * What can be decided, from the least to the most that is done to the hair.
 * The order is the measure of "freer": ASSUMED, our own ranking; the table is monotone in it.
 */
export const decisions = [
  'weSayNo',
  'testAgain',
  'cutFirst',
  'severalVisits',
  'endsOut',
  'depositOnly',
  'smallerLift',
  'gentler',
  'asPlanned',
] as const;
export type Decision = (typeof decisions)[number];

/**
 * Decisions under which a bowl may be weighed at all. Deposit only is another mix than the one tested: the plan is
 * changed to it, and a strand of its own follows.
 */
export const mixingDecisions = ['endsOut', 'smallerLift', 'gentler', 'asPlanned'] as const;

export type MixingDecision = (typeof mixingDecisions)[number];

/** May anything be mixed under this decision? */
export const isMixingDecision = (decision: Decision): decision is MixingDecision =>
  (mixingDecisions as readonly Decision[]).includes(decision);

/** Is `one` freer than `other`? */
export const isFreer = (one: Decision, other: Decision): boolean =>
  decisions.indexOf(one) > decisions.indexOf(other);

/**
 * Must a named person answer for it? Only for what goes on her further than suggested: what mixes nothing is as careful
 * as any suggestion. Checked in tests/shared/judgement/decisionTable.test.ts.
 */
export const isToBeSigned = (decision: Decision, suggested: Decision): boolean =>
  isMixingDecision(decision) && isFreer(decision, suggested);

/** The more careful of two decisions. */
export const chooseMoreCareful = (one: Decision, other: Decision): Decision =>
  isFreer(one, other) ? other : one;
