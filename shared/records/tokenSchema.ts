import * as v from 'valibot';
import { decisions } from '../judgement/decisions';
import { ruleIds } from '../judgement/rules';
import type { EventType, TimeTokens, TokensByType } from './event';
import { grades } from './gradeOutcome';
import { askSteps, backSteps, correctables } from './steps';
import { zones } from './zones';

const zone = v.picklist(zones);
const mix = v.string();
const decision = v.picklist(decisions);
const zoneOnly = { zone };
const nothing = {};

/** The small words of each event, by name. */
const entries = {
  OPENED: { inherits: v.boolean() },
  ANSWERED: {
    step: v.picklist(askSteps),
    said: v.picklist(['unsaid', 'clean', 'judgement', 'absolute']),
    rules: v.array(v.picklist(ruleIds)),
    bearsOnPlan: v.boolean(),
    restores: v.array(zone),
    planned: v.array(zone),
    incompatibility: v.picklist(['asBefore', 'notNeeded', 'due', 'running', 'clear', 'reacted']),
  },
  STEP_CONFIRMED: { step: v.picklist(askSteps) },
  REOPENED: { step: v.picklist(backSteps) },
  SKIN_TEST_NOTED: { isPositive: v.boolean() },
  OVERRIDDEN: { rule: v.picklist(ruleIds), isRaised: v.optional(v.boolean()) },
  CORRECTED: { answer: v.picklist(correctables), voids: v.boolean() },
  INCOMPATIBILITY_STARTED: nothing,
  INCOMPATIBILITY_READ: { reacted: v.boolean() },
  STRAND_STARTED: { zone, mix, closedBy: v.array(mix) },
  LOOKED: { zone, of: v.picklist(['strand', 'head']), stings: v.boolean(), breaks: v.optional(v.boolean()) },
  STRAND_TAKEN_OFF: zoneOnly,
  STRAND_DISCARDED: zoneOnly,
  STRAND_BROKE: { zone, mix },
  OUTCOME_RECORDED: { zone, mix, fibre: v.picklist(grades) },
  OUTCOME_CARRIED: { isAsLastTime: v.boolean(), sound: v.array(zone), rough: v.array(zone) },
  OUTCOME_KEPT: nothing,
  OUTCOME_RETRACTED: { zone, mix },
  DECIDED: { decision, suggested: decision, isFreer: v.boolean() },
  PLAN_CHANGED: nothing,
  BOWL_WEIGHED: { zone, maxMinutes: v.optional(v.pipe(v.number(), v.finite(), v.minValue(0))) },
  BOWL_THROWN: { zone, asksSkin: v.optional(v.boolean()) },
  BOWL_APPLIED: zoneOnly,
  BOWL_ALL_ON: zoneOnly,
  BOWL_RINSED: zoneOnly,
  STRETCH_NOTED: { zone, springsBack: v.boolean(), corrects: v.boolean() },
  TONER_WEIGHED: zoneOnly,
  FINISHED: nothing,
  PLAN_GIVEN: nothing,
  PARKED: nothing,
  RESUMED: { asksAnew: v.boolean() },
  REACTION_SUSPECTED: nothing,
  NO_REACTION: { stillOn: v.optional(v.array(zone)) },
  REACTION_RECORDED: nothing,
  CARE_GIVEN: nothing,
  CALLED_OFF: nothing,
  WE_SAID_NO: nothing,
  CLIENT_SAID_NO: nothing,
  CLOCK_EXTENDED: {
    isWithinLimit: v.boolean(),
    isOnHead: v.boolean(),
    hasWeakened: v.optional(v.boolean()),
  },
  CLOCK_CORRECTED: nothing,
  ALARM_ACKNOWLEDGED: nothing,
} as const satisfies {
  readonly [T in EventType]: { readonly [N in keyof TokensByType[T]]: v.GenericSchema };
};

const time = {
  skinTest: v.picklist(['notNeeded', 'missing', 'waiting', 'clear', 'lapsed', 'positive']),
  lapsed: v.array(zone),
  isAnotherDay: v.boolean(),
} as const satisfies { readonly [N in keyof TimeTokens]: v.GenericSchema };

/**
 * Which words may each stored event carry for the guards?
 * The chart reads them before anything judges them anew, so that none may be of a kind no guard knows.
 * Checked in tests/shared/records/parseEvent.test.ts.
 */
export const tokenSchemas: ReadonlyMap<string, v.GenericSchema> = new Map(
  Object.entries(entries).map(([type, own]) => [type, v.strictObject({ ...own, ...time })] as const),
);
