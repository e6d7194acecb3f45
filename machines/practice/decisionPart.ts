import type { Decision } from '../../shared/judgement/decisions';
import { isAbsoluteRule, type RuleId, rules } from '../../shared/judgement/rules';
import type { ConsultationEvent } from '../../shared/records/event';
import type { Answers } from '../../shared/records/forms/asked';
import type { ConsultationRecord } from '../../shared/records/record';
import type { Settings } from '../../shared/records/settings';
import { askSteps } from '../../shared/records/steps';
import type { Zone } from '../../shared/records/zones';
import type { Lesson } from './lesson';
import { listMissedStops, listSigned, listToldStops } from './passing';
import type { PracticeRecord } from './practiceEvent';
import { findDecided, listRight } from './rightDecision';
import { hasSeenFail } from './strandsTold';
import type { Sitting } from './strength';
import type { TrueCourse } from './trueCourse';

/** What was decided against what the truth would have suggested. */
export interface DecisionPart {
  /** null: nothing was decided, or the client did. */
  readonly decided: Decision | null;
  /** What the table says of the true answers, with strands that came out as they truly do. */
  readonly suggested: Decision;
  /** That, or what puts no more on her. */
  readonly right: readonly Decision[];
  /** Stops that truly stand. */
  readonly stops: readonly RuleId[];
  /** Those of them that the record does not tell of. */
  readonly missedStops: readonly RuleId[];
  /** Those of them that were signed away. */
  readonly signedStops: readonly RuleId[];
  /** Zones for which a permit would truly be issued. */
  readonly mayMix: readonly Zone[];
  /** Decided so, for a true reason; whether a stop was signed away on the way there is told apart. */
  readonly isRight: boolean;
}

/** Everything that both logs come to, before it is judged. */
export interface Sat {
  readonly lesson: Lesson;
  readonly sitting: Sitting;
  readonly practice: PracticeRecord;
  readonly record: ConsultationRecord;
  readonly truth: Answers;
  readonly course: TrueCourse;
  readonly settings: Settings;
}

/** Up to which step did anything have to be asked? All of them, but where she was rightly stopped for good before. */
export function findLastAsked({ stops }: TrueCourse, isRight: boolean): number {
  const last = askSteps.length - 1;
  if (!isRight) return last;
  const at = stops.filter(isAbsoluteRule).map((rule) => {
    // A skin test is read with the first step; a cutting only after the last.
    if (rule === 'stop.skinTestPositive') return 0;
    const { step } = rules[rule];
    return step === null ? last : askSteps.indexOf(step);
  });
  return Math.min(last, ...at);
}

/**
 * A no is right for a true reason alone: a stop that truly stands and was told, or a strand that was seen to fail. Whoever
 * refuses her for something else was lucky.
 */
const isFounded = ({ record, course, settings }: Sat, hasFailed: boolean): boolean =>
  hasFailed || listToldStops(record, settings).some((rule) => course.stops.includes(rule));

/** Was it decided rightly, and which stops were missed or signed away? Checked in tests/machines/practice/debrief.test.ts. */
export function judgeDecision(sat: Sat, log: readonly ConsultationEvent[]): DecisionPart {
  const { sitting, record, course, settings } = sat;
  const { suggested, stops, mayMix } = course;
  const decided = findDecided(record, log, settings);
  const hasFailed = hasSeenFail(sitting, record);
  const right = listRight(suggested, hasFailed, stops.length > 0);
  const signedStops = listSigned(record, stops);
  const isRight =
    decided !== null && right.includes(decided) && (decided !== 'weSayNo' || isFounded(sat, hasFailed));
  const lastAsked = findLastAsked(course, isRight);
  return {
    decided,
    suggested,
    right,
    stops,
    missedStops: listMissedStops(record, stops, settings, lastAsked),
    signedStops,
    mayMix,
    isRight,
  };
}
