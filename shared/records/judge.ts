import { findCarryRefusal, listCarried } from '../judgement/carried';
import { type Decision, isFreer } from '../judgement/decisions';
import { listStanding, suggestFor } from '../judgement/findings';
import { ASSUMED_SAME_DAY_MS, findCarriedHold, isLapsed } from '../judgement/lapse';
import { findLimits } from '../judgement/limits';
import { formMixKey, listClosedMixes } from '../judgement/mixes';
import { listPlannedZones } from '../judgement/plannedZones';
import { isAbsoluteRule } from '../judgement/rules';
import { judgeSkinTest } from '../judgement/skinTest';
import { isIncompatibilityDue, judgeStep, listStops } from '../judgement/stops';
import { msPerMinute } from '../units/time';
import type { EventType, PayloadOf, TimeTokens, TokensByType } from './event';
import type { Answers } from './forms/asked';
import { findSigns, gradeOutcome } from './gradeOutcome';
import { hasWeakenedOnHead } from './headLooks';
import type { LastTime } from './lastTime';
import { isAnotherDay } from './passedDay';
import { formHistoryKey, formPlanKey } from './planKey';
import { type ConsultationRecord, findStrand } from './record';
import { listRinsedSinceTold } from './rinsedSinceTold';
import type { Settings } from './settings';
import { isStoppedBy } from './standingStop';
import { type Zone, zones } from './zones';

/** Under what an event is judged: the settings of that moment, the moment, and what an earlier record hands on. */
export interface JudgingContext {
  readonly settings: Settings;
  readonly atMs: number;
  readonly inheritsStop: boolean;
  /** What the station found of last time, for the id that a person named; never what a screen sent. */
  readonly lastTime?: LastTime | null;
}

type Judges = {
  readonly [T in EventType]: (
    record: ConsultationRecord,
    payload: PayloadOf<T>,
    context: JudgingContext,
  ) => TokensByType[T];
};

const nothing = () => ({});
const zoneOnly = (_record: ConsultationRecord, { zone }: { readonly zone: Zone }) => ({ zone });

const mixOf = (record: ConsultationRecord, zone: Zone): string => {
  const strand = findStrand(record, zone);
  return strand === undefined ? '' : formMixKey(strand);
};

const bySeen = { running: 'running', nothing: 'clear', reacted: 'reacted' } as const;

/** How the incompatibility test stands for this history: one for another counts only if it reacted. */
const judgeIncompatibility = (record: ConsultationRecord, said: Answers) => {
  if (record.incompatibility?.seen === 'reacted') return 'reacted';
  if (!isIncompatibilityDue(said)) return 'notNeeded';
  const { incompatibility } = record;
  return incompatibility?.historyKey === formHistoryKey(said) ? bySeen[incompatibility.seen] : 'due';
};

/** One judge for each event: what its payload means in small tokens. Numbers are judged here and nowhere later. */
const judges: Judges = {
  OPENED: (_record, _payload, { inheritsStop }) => ({ inherits: inheritsStop }),
  ANSWERED: (record, { step, answers }, { settings, atMs }) => {
    const said = { ...record.answers, [step]: answers };
    return {
      step,
      said: judgeStep(step, said, settings, record.modelVersion),
      rules: listStops(said, settings, record.modelVersion).filter((rule) => !isAbsoluteRule(rule)),
      bearsOnPlan: formPlanKey(said) !== formPlanKey(record.answers),
      restores: listStanding({ ...record, answers: said }, atMs),
      planned: listPlannedZones(said.client?.reach),
      incompatibility: step === 'hotTools' ? judgeIncompatibility(record, said) : 'asBefore',
    };
  },
  STEP_CONFIRMED: (_record, { step }) => ({ step }),
  REOPENED: (_record, { step }) => ({ step }),
  SKIN_TEST_NOTED: (_record, { seen }) => ({ isPositive: seen === 'reaction' }),
  OVERRIDDEN: ({ answers, modelVersion }, { rule }, { settings }) => ({
    rule,
    isRaised: !isAbsoluteRule(rule) && listStops(answers, settings, modelVersion).includes(rule),
  }),
  CORRECTED: (record, { answer }) => ({
    answer,
    voids: answer !== 'skinTest' || record.skinTest?.seen === 'reaction',
  }),
  INCOMPATIBILITY_STARTED: nothing,
  INCOMPATIBILITY_READ: (_record, { seen }) => ({ reacted: seen === 'reacted' }),
  STRAND_STARTED: (record, payload) => ({
    zone: payload.zone,
    mix: formMixKey(payload),
    closedBy: listClosedMixes(record, payload),
  }),
  LOOKED: (_record, { of, zone, stinging, hair }) => ({
    of,
    zone,
    stings: stinging === 'yes',
    breaks: hair === 'breaking',
  }),
  STRAND_TAKEN_OFF: zoneOnly,
  STRAND_DISCARDED: zoneOnly,
  STRAND_BROKE: (record, { zone }) => ({ zone, mix: mixOf(record, zone) }),
  OUTCOME_RECORDED: (record, payload) => ({
    zone: payload.zone,
    fibre: gradeOutcome(payload, findSigns(findStrand(record, payload.zone))),
    mix: mixOf(record, payload.zone),
  }),
  OUTCOME_CARRIED: (record, _payload, { settings, atMs }) => {
    const carried = listCarried(record);
    const ofGrade = (grade: 'sound' | 'rough') =>
      carried.filter((last) => last.grade === grade).map(({ bowl }) => bowl.zone);
    return {
      isAsLastTime: findCarryRefusal(record, settings, atMs) === null,
      sound: ofGrade('sound'),
      rough: ofGrade('rough'),
    };
  },
  OUTCOME_KEPT: nothing,
  OUTCOME_RETRACTED: (record, { zone }) => ({ zone, mix: mixOf(record, zone) }),
  DECIDED: (record, { decision }, { settings, atMs }) => {
    const suggested: Decision = suggestFor(record, settings, atMs);
    return { decision, suggested, isFreer: isFreer(decision, suggested) };
  },
  PLAN_CHANGED: nothing,
  BOWL_WEIGHED: (record, { zone }, { atMs }) => {
    const strand = findStrand(record, zone);
    return { zone, maxMinutes: strand === undefined ? 0 : findLimits(record, strand, atMs).maxMinutes };
  },
  BOWL_THROWN: ({ answers }, { zone, why }) => ({
    zone,
    asksSkin: why === 'skinNotCalm' && !isStoppedBy('client', answers),
  }),
  BOWL_APPLIED: zoneOnly,
  BOWL_ALL_ON: zoneOnly,
  BOWL_RINSED: zoneOnly,
  STRETCH_NOTED: (_record, { zone, stretch, before }) => ({
    zone,
    springsBack: stretch === 'springsBack',
    corrects: before === 'wrongTap',
  }),
  TONER_WEIGHED: zoneOnly,
  FINISHED: nothing,
  PLAN_GIVEN: nothing,
  PARKED: nothing,
  // What stops for good is never asked again: only a named correction takes it back.
  RESUMED: ({ parked, answers }, _payload, { atMs }) => ({
    asksAnew: parked !== null && atMs - parked.atMs > ASSUMED_SAME_DAY_MS && !isStoppedBy('client', answers),
  }),
  REACTION_SUSPECTED: nothing,
  NO_REACTION: (record, { stillOn }) => ({ stillOn: stillOn === 'yes' ? listRinsedSinceTold(record) : [] }),
  REACTION_RECORDED: nothing,
  CARE_GIVEN: nothing,
  CALLED_OFF: nothing,
  WE_SAID_NO: nothing,
  CLIENT_SAID_NO: nothing,
  CLOCK_EXTENDED: (record, { clock, minutes }, { atMs }) => {
    const running = record.clocks.find(({ id, endedAtMs }) => id === clock && endedAtMs === null);
    const strand = record.strands.find((each) => each.clock === running?.id);
    return {
      isOnHead: running?.kind === 'head',
      hasWeakened: findSigns(strand).hasWeakened || hasWeakenedOnHead(record, clock),
      isWithinLimit:
        running !== undefined &&
        atMs < running.limitAtMs &&
        running.dueAtMs + minutes * msPerMinute <= running.limitAtMs,
    };
  },
  CLOCK_CORRECTED: nothing,
  ALARM_ACKNOWLEDGED: nothing,
};

/** What does this payload mean, in the small words the chart's guards read? */
export const judge = <T extends EventType>(
  record: ConsultationRecord,
  type: T,
  payload: PayloadOf<T>,
  context: JudgingContext,
): TokensByType[T] => judges[type](record, payload, context);

/** What depends on the moment alone: the day on the record before the event, the rest on the record after it. */
export const judgeTime = (
  before: ConsultationRecord,
  record: ConsultationRecord,
  settings: Settings,
  atMs: number,
): TimeTokens => ({
  isAnotherDay: isAnotherDay(before, atMs),
  skinTest: judgeSkinTest(record, settings.profile, atMs),
  lapsed: zones.filter((zone) => {
    const strand = findStrand(record, zone);
    return (
      strand !== undefined &&
      (isLapsed(strand, atMs) || findCarriedHold(strand, record, settings, atMs) !== null)
    );
  }),
});
