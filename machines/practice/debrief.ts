import { readHistory } from '../../shared/hair/readHistory';
import type { HairHistory } from '../../shared/heat/hairHistory';
import { computeProfile, type HairAt } from '../../shared/heat/profile';
import type { ConsultationEvent } from '../../shared/records/event';
import type { Answers } from '../../shared/records/forms/asked';
import { listOverruns, type Overrun } from '../../shared/records/overruns';
import type { Raw, RawForm } from '../../shared/records/readForm';
import { type ConsultationRecord, findStrand } from '../../shared/records/record';
import { fold } from '../../shared/records/reduce';
import type { Settings } from '../../shared/records/settings';
import { askSteps, type WayStep } from '../../shared/records/steps';
import { findTrue } from './asking';
import { type LaterPart, listLater } from './comesLater';
import { type DecisionPart, findLastAsked, judgeDecision, type Sat } from './decisionPart';
import { type FinishPart, judgeFinish, listFindingsShown } from './finish';
import { type FlagPart, judgeFlags } from './flagsSeen';
import type { Flag, Lesson } from './lesson';
import { countMinutesAStep } from './minutesAStep';
import { listMixFaults, type MixFaultPart } from './mixFaults';
import { listOvershot, type OvershotPart } from './overshot';
import { type Failing, failings, isGlassMissed } from './passing';
import { digestLesson, foldPractice, type PracticeEvent } from './practiceEvent';
import { readTruth } from './readTruth';
import { ASSUMED_HINTED_COUNTS, countPoints, type ScorePart, shareOf } from './score';
import { readSettled } from './settled';
import { judgeStrands, listMissedLooks, listUnlooked, type MissedLook } from './strandsTold';
import { findStepOf, isToldTruly, showAt } from './toldTruly';
import { playTruth } from './trueCourse';

/** One question that she answers in her own words, or whose answer is wrong: was it asked closer, and is the truth written down? */
export interface AskedPart {
  readonly path: string;
  readonly wasAskedCloser: boolean;
  readonly isToldTruly: boolean;
  /** As it would stand in the field of this station. */
  readonly told: Raw;
  readonly true: Raw;
}

/** One head of hair as it was told, or as it is: what the strand map draws. */
export interface MapPart {
  readonly answers: Answers;
  readonly history: HairHistory;
  readonly profile: readonly HairAt[];
}

/** How a lesson went. Knowledge of the routine, not a licence. */
export interface Debrief {
  readonly asked: readonly AskedPart[];
  readonly flags: readonly FlagPart[];
  /** Those of them that there was any need to come to. */
  readonly flagsDue: readonly FlagPart[];
  readonly decision: DecisionPart;
  readonly map: { readonly told: MapPart; readonly true: MapPart };
  readonly minutes: readonly { readonly step: WayStep; readonly minutes: number }[];
  readonly missedLooks: readonly MissedLook[];
  /** Strands and heads that were left past their time. */
  readonly overruns: readonly Overrun[];
  readonly finish: FinishPart;
  /** Strands that were tested in a mix that no strand is to be tested in. */
  readonly mixFaults: readonly MixFaultPart[];
  readonly overshot: readonly OvershotPart[];
  /** Stops that truly stand and would have shown nothing on the head: no sting clears them. */
  readonly comesLater: readonly LaterPart[];
  readonly parts: readonly ScorePart[];
  /** The sum of the parts, 0 to 100. */
  readonly score: number;
  /** Why it is not passed; empty where it is. */
  readonly failedBy: readonly Failing[];
  readonly isPassed: boolean;
}

/** Both maps are reckoned every so many centimetres along the strand. Assumed because growth is not known to a centimetre. */
const ASSUMED_MAP_EVERY_CM = 1;

function drawMap(answers: Answers): MapPart {
  const history = readHistory(answers);
  const count = Math.floor(history.lengthCm.typical / ASSUMED_MAP_EVERY_CM) + 1;
  const places = Array.from({ length: count }, (_, index) => index * ASSUMED_MAP_EVERY_CM);
  return { answers, history, profile: computeProfile(history, places) };
}

/** What she wants is settled with her and is no hidden truth: the trainee's plan stands, once it was changed by name. */
function readPlan({ answers }: ConsultationRecord, log: readonly ConsultationEvent[]): RawForm {
  if (!log.some(({ type }) => type === 'PLAN_CHANGED')) return {};
  const { service, reach, targetLevel } = answers.client ?? {};
  const plan = { service, reach, targetLevel: targetLevel === undefined ? undefined : String(targetLevel) };
  return Object.fromEntries(Object.entries(plan).filter(([, answer]) => answer !== undefined)) as RawForm;
}

/** Every question of these steps, as far as its form asks it of this trainee. */
const listPaths = ({ answers }: ConsultationRecord, lastAsked: number): readonly string[] =>
  askSteps
    .slice(0, lastAsked + 1)
    .flatMap((step) => Object.keys(answers[step] ?? {}).map((name) => `${step}.${name}`));

/** What she told in her own words, and whatever else was written down wrongly. */
function listAsked(
  { lesson, practice, record, truth, settings }: Sat,
  lastAsked: number,
): readonly AskedPart[] {
  const scripted = Object.keys(lesson.says).filter((path) => {
    const step = findStepOf(path);
    return step !== null && step !== 'heatSpray' && askSteps.indexOf(step) <= lastAsked;
  });
  const wrong = listPaths(record, lastAsked).filter(
    (path) =>
      !scripted.some((each) => each === path || each.startsWith(`${path}.`)) &&
      findTrue(lesson, path) !== null &&
      !isToldTruly(record.answers, truth, path),
  );
  return [...scripted, ...wrong].map((path) => ({
    path,
    wasAskedCloser: practice.askedCloser.includes(path),
    isToldTruly: isToldTruly(record.answers, truth, path),
    told: showAt(record.answers, path, settings.units),
    true: showAt(truth, path, settings.units),
  }));
}

/** Was there any need to come as far as this flag? Not where she was rightly stopped for good before its questions. */
const isDue = ({ asks }: Flag, lastAsked: number): boolean =>
  asks.every((path) => {
    const step = findStepOf(path);
    return step === null || askSteps.indexOf(step) <= lastAsked;
  });

/** What takes the points of the decision: nothing of it is decided well that rests on a signature or on a test of nothing. */
const decidingWrong: readonly Failing[] = ['stopSigned', 'glassNotRead', 'decision', 'finish', 'mix'];

const flagCounts: Readonly<Record<FlagPart['how'], number>> = {
  seen: 1,
  hinted: ASSUMED_HINTED_COUNTS,
  missed: 0,
};

/**
 * How did it go? From the two logs of a sitting alone, under the settings it was judged by (`settleLesson`).
 * null where the practice log begins no lesson, or another edition of it. Checked in tests/machines/practice/debrief.test.ts.
 */
export function debrief(
  lesson: Lesson,
  practiceLog: readonly PracticeEvent[],
  consultationLog: readonly ConsultationEvent[],
  settings: Settings,
): Debrief | null {
  const practice = foldPractice(practiceLog);
  const read = readTruth(lesson);
  if (practice === null || practice.digest !== digestLesson(lesson) || !read.ok) return null;
  const truth = read.value;
  const record = fold('practice', consultationLog);
  const sitting = { lesson, seed: practice.seed };
  const settled = readSettled(record, readPlan(record, consultationLog));
  const course = playTruth(sitting, settings, practice.beganAtMs, settled);
  const sat: Sat = { lesson, sitting, practice, record, truth, course, settings };
  const decision = judgeDecision(sat, consultationLog);
  const lastAsked = findLastAsked(course, decision.isRight);
  const asked = listAsked(sat, lastAsked);
  const shown = listFindingsShown(consultationLog, settings);
  const flags = judgeFlags(lesson.flags, practice.hints, { record, truth, settings, shown });
  const flagsDue = flags.filter(({ flag }) => isDue(flag, lastAsked));
  const finish = judgeFinish(lesson, record, settings);
  const mixFaults = listMixFaults(record);
  const isFailing: Readonly<Record<Failing, boolean>> = {
    stopMissed: decision.missedStops.length > 0,
    stopSigned: decision.signedStops.length > 0,
    glassNotRead: isGlassMissed(record, truth, course.stops),
    flagMissed: flagsDue.some(({ how }) => how === 'missed'),
    decision: !decision.isRight,
    finish: !finish.isRight,
    mix: mixFaults.some(({ zone, strand }) => findStrand(record, zone)?.number === strand),
    noLook: listUnlooked(record).length > 0,
  };
  const failedBy = failings.filter((failing) => isFailing[failing]);
  const parts = countPoints({
    asked: shareOf(asked, (each) => (each.isToldTruly ? 1 : 0)),
    flags: shareOf(flagsDue, ({ how }) => flagCounts[how]),
    ...judgeStrands(sitting, record, decision.isRight),
    decision: failedBy.some((failing) => decidingWrong.includes(failing)) ? 0 : 1,
  });
  return {
    asked,
    flags,
    flagsDue,
    decision,
    map: { told: drawMap(record.answers), true: drawMap(truth) },
    minutes: countMinutesAStep(consultationLog),
    missedLooks: listMissedLooks(record),
    overruns: listOverruns(record, record.newestAtMs),
    finish,
    mixFaults,
    overshot: listOvershot(sitting, record),
    comesLater: listLater(course.stops),
    parts,
    score: parts.reduce((sum, { points }) => sum + points, 0),
    failedBy,
    isPassed: failedBy.length === 0,
  };
}
