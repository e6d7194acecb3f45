import { MODEL_VERSION, type Said } from '../records/event';
import { type Answers, askForms } from '../records/forms/asked';
import { listUnanswered } from '../records/isAsked';
import { listIncompatible } from '../records/planKey';
import type { ConsultationRecord } from '../records/record';
import type { Settings } from '../records/settings';
import { type AskStep, askSteps } from '../records/steps';
import { isAbsoluteRule, isKnownTo, type RuleId, rules } from './rules';

const byReaction: Readonly<Record<string, RuleId>> = {
  tingled: 'judgement.tingled',
  tingledStops: 'stop.anyReaction',
  swelling: 'stop.reactionEver',
  blisters: 'stop.reactionEver',
  weeping: 'stop.reactionEver',
  rash: 'stop.reactionEver',
  hives: 'stop.persulfateReaction',
  tightChest: 'stop.persulfateReaction',
  blackTattoo: 'stop.blackTattoo',
};

const byScalp: Readonly<Record<string, RuleId | null>> = {
  sound: null,
  tight: 'judgement.scalpTight',
  irritated: 'stop.scalpBroken',
  broken: 'stop.scalpBroken',
  faceRash: 'stop.faceRash',
};

const liftingServices: readonly string[] = ['lighten', 'liftAndDeposit'];

/** Does this service take hair lighter than it is? */
export const isLifting = (service: string): boolean => liftingServices.includes(service);

/**
 * Which stops do the answers raise, all steps together?
 * A rule may look at several steps (a relaxer matters once she wants to go lighter), so they are judged as one. An older
 * model raises none that came after it.
 * Checked in tests/shared/judgement/stops.test.ts, beside and across every edge.
 */
export function listStops(
  answers: Answers,
  settings: Settings,
  modelVersion = MODEL_VERSION,
): readonly RuleId[] {
  const { client, hotTools, feelHair } = answers;
  const raised = new Set<RuleId | null | undefined>();
  for (const reaction of client?.reactions ?? []) raised.add(byReaction[reaction]);
  if (client?.scalp !== undefined) raised.add(byScalp[client.scalp]);
  if (settings.profile.ageLine !== null && client?.ageBand === 'under') raised.add('stop.underAge');
  if ((hotTools?.relaxedWithinTwoWeeks ?? 'no') !== 'no') {
    raised.add('judgement.relaxedRecently');
  }
  if (hotTools?.history?.includes('relaxer') === true && isLifting(client?.service ?? '')) {
    raised.add('judgement.relaxerThenLightener');
  }
  if (['relaxer', 'perm'].every((each) => hotTools?.history?.some((told) => told === each))) {
    raised.add('judgement.relaxerAndPerm');
  }
  if (feelHair?.wetStretch === 'snaps') raised.add('judgement.snapsWhenWet');
  return [...raised]
    .filter((rule) => rule !== null && rule !== undefined)
    .filter((rule) => isKnownTo(modelVersion, rule))
    .sort();
}

/**
 * Which stops stand in this record? Those the answers raise, but for the judgement stops a named person lifted, those
 * that were read off a test, and one handed on by an earlier record. No override lifts an absolute one.
 */
export function listOpenStops(record: ConsultationRecord, settings: Settings): readonly RuleId[] {
  const lifted = new Set<RuleId>(record.overrides.map(({ rule }) => rule));
  const open = listStops(record.answers, settings, record.modelVersion).filter(
    (rule) => isAbsoluteRule(rule) || !lifted.has(rule),
  );
  if (record.skinTest?.seen === 'reaction') open.push('stop.skinTestPositive');
  if (record.incompatibility?.seen === 'reacted') open.push('stop.incompatibilityReacted');
  if (record.inheritedStop) open.push('stop.inherited');
  return open;
}

/** Did a named person answer for deciding more freely than the table suggests? */
export const isFreerLifted = ({ overrides }: Pick<ConsultationRecord, 'overrides'>): boolean =>
  overrides.some(({ rule }) => rule === 'judgement.freerThanSuggested');

/** Has everything this step asks been said? Damp hair has to be dried and felt again. */
const isSaid = (step: AskStep, answers: Answers, settings: Settings): boolean => {
  const said = answers[step];
  const context = { hasAgeLine: settings.profile.ageLine !== null };
  if (said === undefined || listUnanswered(askForms[step], said, context).length > 0) return false;
  if (step !== 'feelHair') return true;
  const { nape, mid, ends } = answers.feelHair ?? {};
  return [nape, mid, ends].every((touch) => touch === 'dry');
};

/** How does this step stand: unsaid, clean, for a judgement, or stopped for good? */
export function judgeStep(
  step: AskStep,
  answers: Answers,
  settings: Settings,
  modelVersion = MODEL_VERSION,
): Said {
  const own = listStops(answers, settings, modelVersion).filter((rule) => rules[rule].step === step);
  if (own.some(isAbsoluteRule)) return 'absolute';
  if (!isSaid(step, answers, settings)) return 'unsaid';
  return own.length > 0 ? 'judgement' : 'clean';
}

/** Which steps still have to be said before a strand may be tested? */
export const listUnsaid = (answers: Answers, settings: Settings): readonly AskStep[] =>
  askSteps.filter((step) => judgeStep(step, answers, settings) === 'unsaid');

/** Must a cutting meet peroxide in a glass first? */
export const isIncompatibilityDue = (answers: Answers): boolean => listIncompatible(answers).length > 0;
