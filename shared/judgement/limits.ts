import { readHistory } from '../hair/readHistory';
import { placeZone } from '../hair/zonePlaces';
import { MODEL_VERSION } from '../records/event';
import type { Answers } from '../records/forms/asked';
import type { ConsultationRecord, StrandRecord } from '../records/record';
import type { Settings } from '../records/settings';
import { chooseMoreCareful, type Decision } from './decisions';
import { suggestForZone } from './findings';
import { type Mix, nameTested } from './mixes';
import { limitOnScalp } from './onScalp';
import { findLookEveryMin, judgeRisk } from './risk';
import { isFreerLifted } from './stops';

/** How strong, and for how long, under a decision. Never above what was tested. */
export interface Limits {
  /** The strongest developer, per cent. */
  readonly maxDeveloperPercent: number;
  readonly maxMinutes: number;
}

/** Developers there are bottles of, per cent: the trade's nominal table, and the 5 vol of glosses; common practice. */
const commonDevelopers = [1.5, 3, 6, 9, 12] as const;

/** The strongest that lifts one to two levels, per cent (20 vol): common practice, no source. */
const SMALLER_LIFT_PERCENT = 6;

/** Gentler is a step of the trade down, of which 40 to 30 vol, a quarter, is the smallest: common practice, no source. */
const GENTLER_STRENGTH = 0.75;

/**
 * When the developer cannot go down any further, a gentler mix stays this share of the time. Assumed because a quarter
 * less is the smallest cut a clock on the head makes sure of.
 */
export const ASSUMED_GENTLER_TIME = 0.75;

/** Before model 5 the next bottle below was gentler, however little: 6 % after 6.1 %. */
const findWeaker = (percent: number, modelVersion: number): number | undefined =>
  commonDevelopers.findLast((common) =>
    modelVersion < 5 ? common < percent : common <= percent * GENTLER_STRENGTH,
  );

/** In whole minutes, as a bowl's field takes them, and never none: before model 5 as it came out. */
const shorten = (minutes: number, modelVersion: number): number =>
  modelVersion < 5 ? minutes * ASSUMED_GENTLER_TIME : Math.max(1, Math.floor(minutes * ASSUMED_GENTLER_TIME));

/** How far does this decision go below what was tested? A decision that mixes nothing leaves nothing. */
export function limitBy(decision: Decision, tested: Mix, modelVersion = MODEL_VERSION): Limits {
  const weaker = findWeaker(tested.developerPercent, modelVersion);
  const gentler: Limits =
    weaker === undefined
      ? { maxDeveloperPercent: tested.developerPercent, maxMinutes: shorten(tested.minutes, modelVersion) }
      : { maxDeveloperPercent: weaker, maxMinutes: tested.minutes };
  switch (decision) {
    case 'asPlanned':
      return { maxDeveloperPercent: tested.developerPercent, maxMinutes: tested.minutes };
    case 'gentler':
      return gentler;
    case 'smallerLift':
      return { ...gentler, maxDeveloperPercent: Math.min(gentler.maxDeveloperPercent, SMALLER_LIFT_PERCENT) };
    default:
      return { maxDeveloperPercent: 0, maxMinutes: 0 };
  }
}

/**
 * How strong may a zone's bowl be, and for how long, by what was decided and what the table says of this zone?
 * The more careful of the two: leaving the ends out takes a zone away, it gives the others nothing.
 */
export const limitZone = (
  decided: Decision,
  suggested: Decision,
  tested: Mix,
  modelVersion = MODEL_VERSION,
): Limits =>
  limitBy(chooseMoreCareful(decided === 'endsOut' ? 'asPlanned' : decided, suggested), tested, modelVersion);

/**
 * How strong may the bowl of this strand's zone be, and for how long?
 * By what was decided and what the table says, unless a named person lifted that. On a carried outcome never more than
 * was on the head last time.
 * Checked in tests/shared/judgement/limits.test.ts.
 */
export function findLimits(
  record: ConsultationRecord,
  strand: StrandRecord,
  nowMs: number,
  decided: Decision = record.decision?.decision ?? 'weSayNo',
): Limits {
  const suggested = isFreerLifted(record) ? 'asPlanned' : suggestForZone(record, strand.zone, nowMs);
  const limits = limitZone(decided, suggested, nameTested(strand), record.modelVersion);
  if (strand.carried === null) return limits;
  return {
    maxDeveloperPercent: Math.min(limits.maxDeveloperPercent, strand.carried.maxDeveloperPercent),
    maxMinutes: Math.min(limits.maxMinutes, strand.carried.maxMinutes),
  };
}

/** The limits of one zone as they are said before anything is decided: what goes on, how it is watched, where it stops. */
export interface Course extends Limits {
  readonly heat: Mix['heat'];
  /** After how many minutes it is looked at again: findLookEveryMin. */
  readonly lookEveryMin: ReturnType<typeof findLookEveryMin>;
  /** How far from the tips the colour stays, cm; null where it goes on the ends, or on roots alone. */
  readonly fromTipsCm: number | null;
}

/** How far from the tips does the colour stay? The length of the ends (ASSUMED_ENDS_CM), where they are left out. */
export function findFromTips(answers: Answers, decided: Decision): number | null {
  const { reach } = answers.client ?? {};
  if (reach !== 'endsOut' && !(reach === 'fullHead' && decided === 'endsOut')) return null;
  const { fromCm, toCm } = placeZone('ends', readHistory(answers).lengthCm.typical);
  return toCm - fromCm;
}

/**
 * What would this decision leave of what the strand of a zone proved, were it made now?
 * Never above the strongest bottle of the house, nor above what the scalp takes. Checked in tests/shared/judgement/course.test.ts.
 */
export function foresee(
  record: ConsultationRecord,
  strand: StrandRecord,
  decided: Decision,
  settings: Settings,
  nowMs: number,
): Course {
  const limits = limitOnScalp(record, strand, settings, findLimits(record, strand, nowMs, decided));
  return {
    maxDeveloperPercent: Math.min(limits.maxDeveloperPercent, settings.profile.ceilingPercent),
    maxMinutes: limits.maxMinutes,
    heat: limits.maxHeat,
    lookEveryMin: findLookEveryMin(judgeRisk(record)),
    fromTipsCm: findFromTips(record.answers, decided),
  };
}
