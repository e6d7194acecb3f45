import type { Decision } from '../judgement/decisions';
import type { RuleId } from '../judgement/rules';
import type { AnswersOf } from './form';
import type { AnswersByStep } from './forms/asked';
import type { eventForms } from './forms/byEvent';
import type { LastTime } from './lastTime';
import type { AskStep, BackStep, Correctable } from './steps';
import type { Zone } from './zones';

/** Raised whenever a computed result can change. */
export const MODEL_VERSION = 6;
/** Raised with a migration n → n+1 whenever a stored event changes its shape. */
export const EVENT_VERSION = 1;

/** A longer name than this could not be read again from the store; settings allow half of it. */
export const BY_MAX_LENGTH = 40;

export type Said = 'unsaid' | 'clean' | 'judgement' | 'absolute';
export type SkinTestToken = 'notNeeded' | 'missing' | 'waiting' | 'clear' | 'lapsed' | 'positive';
export type Fibre = 'unknown' | 'sound' | 'rough' | 'gummy' | 'broken';

/** What is judged anew from the time of every event. */
export interface TimeTokens {
  readonly skinTest: SkinTestToken;
  /** Zones whose outcome is older than it may be. */
  readonly lapsed: readonly Zone[];
  /** What holds for today was told on another day: it is asked anew, and nothing stands decided. */
  readonly isAnotherDay: boolean;
}

interface ZoneToken {
  readonly zone: Zone;
}
type None = Readonly<Record<never, never>>;

/** The small words each event carries; guards read these and the facts, never an answer. */
export interface TokensByType {
  OPENED: { readonly inherits: boolean };
  ANSWERED: {
    readonly step: AskStep;
    readonly said: Said;
    /** Every judgement stop the answers raise, all steps together. */
    readonly rules: readonly RuleId[];
    readonly bearsOnPlan: boolean;
    /** Zones whose tested strand stands for the plan as this answer makes it: an answer put back restores it. */
    readonly restores: readonly Zone[];
    /** Zones the plan colours, after this answer. */
    readonly planned: readonly Zone[];
    /** How the incompatibility test stands for the history as it is now told; as before where this step tells none. */
    readonly incompatibility: 'asBefore' | 'notNeeded' | 'due' | 'running' | 'clear' | 'reacted';
  };
  STEP_CONFIRMED: { readonly step: AskStep };
  REOPENED: { readonly step: BackStep };
  SKIN_TEST_NOTED: { readonly isPositive: boolean };
  OVERRIDDEN: {
    readonly rule: RuleId;
    /** The answers raise this stop, as it is judged now: one that came with an update is raised by no answer yet. */
    readonly isRaised?: boolean;
  };
  CORRECTED: {
    readonly answer: Correctable;
    /** A stop is taken back, and with it what was tested and decided; a skin test noted wrongly voids nothing. */
    readonly voids: boolean;
  };
  INCOMPATIBILITY_STARTED: None;
  INCOMPATIBILITY_READ: { readonly reacted: boolean };
  STRAND_STARTED: ZoneToken & {
    readonly mix: string;
    /** Closed mixes of this zone that this one is no gentler than. */
    readonly closedBy: readonly string[];
  };
  LOOKED: ZoneToken & {
    readonly of: 'strand' | 'head';
    readonly stings: boolean;
    /** The hair breaks on the head. Models before 5 did not ask it. */
    readonly breaks?: boolean;
  };
  STRAND_TAKEN_OFF: ZoneToken;
  STRAND_DISCARDED: ZoneToken;
  STRAND_BROKE: ZoneToken & { readonly mix: string };
  OUTCOME_RECORDED: ZoneToken & { readonly fibre: Fibre; readonly mix: string };
  OUTCOME_CARRIED: {
    /** Nothing of the record speaks against it. */
    readonly isAsLastTime: boolean;
    /** Zones carried, by how their hair was then. */
    readonly sound: readonly Zone[];
    readonly rough: readonly Zone[];
  };
  OUTCOME_KEPT: None;
  OUTCOME_RETRACTED: ZoneToken & { readonly mix: string };
  DECIDED: {
    readonly decision: Decision;
    readonly suggested: Decision;
    readonly isFreer: boolean;
  };
  PLAN_CHANGED: None;
  BOWL_WEIGHED: ZoneToken & {
    /** How long it may stay on, min, by what was known when it was weighed. Models before 5 did not keep it. */
    readonly maxMinutes?: number;
  };
  BOWL_THROWN: ZoneToken & {
    /** Her skin was not calm: scalp, face and reactions are asked anew. Models before 5 did not say it. */
    readonly asksSkin?: boolean;
  };
  BOWL_APPLIED: ZoneToken;
  /** The zone is covered; its clock runs since the first of it was put on. */
  BOWL_ALL_ON: ZoneToken;
  BOWL_RINSED: ZoneToken;
  STRETCH_NOTED: ZoneToken & { readonly springsBack: boolean; readonly corrects: boolean };
  TONER_WEIGHED: ZoneToken;
  FINISHED: None;
  PLAN_GIVEN: None;
  PARKED: None;
  RESUMED: { readonly asksAnew: boolean };
  REACTION_SUSPECTED: None;
  /** What was said to be rinsed since it was told, and is still on. Models before 5 did not ask it. */
  NO_REACTION: { readonly stillOn?: readonly Zone[] };
  REACTION_RECORDED: None;
  CARE_GIVEN: None;
  CALLED_OFF: None;
  WE_SAID_NO: None;
  CLIENT_SAID_NO: None;
  CLOCK_EXTENDED: {
    readonly isWithinLimit: boolean;
    readonly isOnHead: boolean;
    /** The hair of this clock was stretchy or breaking at a look. Models before 3 did not say it. */
    readonly hasWeakened?: boolean;
  };
  CLOCK_CORRECTED: None;
  ALARM_ACKNOWLEDGED: None;
}

export type EventType = keyof TokensByType;

/** What was said in an `ANSWERED`: all of one step that has been said so far. */
export type AnsweredPayload = {
  [S in AskStep]: { readonly step: S; readonly answers: AnswersByStep[S] };
}[AskStep];

/** What was asked at the start, and what the station found of last time where a person said "same client". */
export type OpenedPayload = AnswersOf<typeof eventForms.OPENED> & { readonly lastTime?: LastTime };

type PayloadOf<T extends EventType> = T extends 'ANSWERED'
  ? AnsweredPayload
  : T extends 'OPENED'
    ? OpenedPayload
    : T extends keyof typeof eventForms
      ? AnswersOf<(typeof eventForms)[T]>
      : never;

/** One thing a person did, as it is stored for ever. */
export interface EventOf<T extends EventType> {
  readonly v: typeof EVENT_VERSION;
  readonly type: T;
  readonly payload: PayloadOf<T>;
  readonly tokens: TokensByType[T] & TimeTokens;
  readonly atMs: number;
  readonly by: string;
  readonly settingsId: number;
  readonly modelVersion: number;
}

export type ConsultationEvent = { [T in EventType]: EventOf<T> }[EventType];
export type { PayloadOf };
