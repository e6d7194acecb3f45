import type { Consultation } from '../../../../machines/consultation/consultation';
import { isMixingDecision } from '../../../../shared/judgement/decisions';
import { listPlannedZones, suggestFor } from '../../../../shared/judgement/findings';
import { issuePermit } from '../../../../shared/judgement/permit';
import { judgeSkinTest } from '../../../../shared/judgement/skinTest';
import { judgeStep, listUnsaid } from '../../../../shared/judgement/stops';
import { classify, type RawEvent } from '../../../../shared/records/classify';
import { findStrand } from '../../../../shared/records/record';
import type { Settings } from '../../../../shared/records/settings';
import type { AskStep } from '../../../../shared/records/steps';
import { askSteps } from '../../../../shared/records/steps';
import { type Zone, zones } from '../../../../shared/records/zones';
import { nameWay } from '../chartUnderTest';
import {
  cleanAnswers,
  correct,
  hourMs,
  noteSkinTest,
  override,
  recordOutcome,
  say,
  startStrand,
  strengths,
  tap,
  weighBowl,
} from './rawTaps';

/** Where a walk stands: what somebody at the bar can see. */
export interface Scene {
  readonly consultation: Consultation;
  readonly settings: Settings;
  readonly atMs: number;
  /** So many bowls are meant to be weighed before the finish. */
  readonly bowlsMeant: number;
}

const factsOf = ({ consultation }: Scene) => consultation.state.context.facts;
const listPlanned = ({ consultation: { record } }: Scene): readonly Zone[] =>
  record.answers.client === undefined ? [] : listPlannedZones(record.answers.client.reach);

const hasFailed = (scene: Scene, zone: Zone): boolean =>
  ['gummy', 'broken'].includes(factsOf(scene).fibres[zone]);

/** Would the door and the chart take this tap just now? */
const isTakenNow = ({ consultation, settings, atMs }: Scene, raw: RawEvent): boolean => {
  const context = { settings, settingsId: 0, atMs, by: 'Opal', inheritsStop: false };
  const event = classify(consultation.record, raw, context);
  return event.ok && consultation.state.can(event.value);
};

/** The strongest mix this zone was not closed to, weaker the more strands it had. */
const chooseStrand = (scene: Scene, zone: Zone): RawEvent => {
  const failed = scene.consultation.record.strands.filter(
    ({ zone: of, ended, outcome }) =>
      of === zone && (ended?.how === 'broke' || outcome?.grade === 'gummy' || outcome?.grade === 'broken'),
  );
  const strength = strengths[Math.min(failed.length, 2)] ?? '3';
  return startStrand(zone, strength, failed.length > 2 ? '3' : '25');
};

/** What is not said, by today's settings. */
const findUnsaid = ({ consultation, settings }: Scene): AskStep | undefined =>
  listUnsaid(consultation.record.answers, settings)[0];

const prepare = (scene: Scene): RawEvent => {
  const facts = factsOf(scene);
  const unsaid = findUnsaid(scene);
  if (unsaid !== undefined) return tap('REOPENED', { step: unsaid });
  const open = facts.raised.find((rule) => !facts.overridden.includes(rule));
  if (open !== undefined) return override(open);
  if (facts.incompatibility === 'due') return tap('INCOMPATIBILITY_STARTED');
  if (facts.incompatibility === 'running') return tap('INCOMPATIBILITY_READ', { seen: 'nothing' });
  const planned = listPlanned(scene);
  const untested = planned.find((zone) => facts.strands[zone] !== 'current' || hasFailed(scene, zone));
  const zone = untested ?? (facts.decided === 'testAgain' ? planned[0] : undefined);
  if (zone !== undefined) return chooseStrand(scene, zone);
  return planned.length === 0 ? tap('REOPENED', { step: 'client' }) : tap('OUTCOME_KEPT');
};

const process = (scene: Scene): RawEvent => {
  const { strands } = factsOf(scene);
  const next = listPlanned(scene).find((zone) => strands[zone] === 'none' || strands[zone] === 'stale');
  const started = next === undefined ? null : chooseStrand(scene, next);
  if (started !== null && isTakenNow(scene, started)) return started;
  return tap('STRAND_TAKEN_OFF', { zone: zones.find((zone) => strands[zone] === 'running') ?? 'roots' });
};

const decide = (scene: Scene): RawEvent => {
  const { consultation, settings, atMs } = scene;
  const suggested = suggestFor(consultation.record, settings, atMs);
  const failed = zones.some((zone) => ['gummy', 'broken'].includes(factsOf(scene).fibres[zone]));
  if (isMixingDecision(suggested) || suggested === 'testAgain')
    return tap('DECIDED', { decision: suggested });
  return failed ? tap('REOPENED', { step: 'strandTest' }) : tap('DECIDED', { decision: 'testAgain' });
};

const permitOf = ({ consultation, settings, atMs }: Scene, zone: Zone) =>
  issuePermit(consultation.record, zone, settings, atMs);

/** Weighs as strong and as long as the permit allows; shown skin tests are read first, and strands tested again. */
const atTheScale = (scene: Scene): RawEvent => {
  const { bowls } = factsOf(scene);
  const { record } = scene.consultation;
  const weighed = zones.find((zone) => bowls[zone] === 'weighed');
  const skinTest = judgeSkinTest(record, scene.settings.profile, scene.atMs);
  if (skinTest !== 'clear' && skinTest !== 'notNeeded')
    return noteSkinTest(scene.atMs, 49 * hourMs, 'nothing');
  const open = listPlanned(scene).find((zone) => bowls[zone] !== 'weighed' && permitOf(scene, zone).ok);
  if (open !== undefined && record.bowls.length < scene.bowlsMeant) return weighAllowed(scene, open);
  if (weighed !== undefined) return applyOrThrow(scene, weighed);
  if (record.bowls.length >= scene.bowlsMeant) return tap('FINISHED');
  return tap('REOPENED', { step: 'strandTest' });
};

const weighAllowed = (scene: Scene, zone: Zone): RawEvent => {
  const permit = permitOf(scene, zone);
  if (!permit.ok) throw new Error('asked for without a permit');
  return weighBowl(zone, String(permit.value.maxDeveloperPercent), String(permit.value.maxMinutes));
};

const onTheHead = (scene: Scene): RawEvent => {
  const { bowls } = factsOf(scene);
  const weighed = zones.find((zone) => bowls[zone] === 'weighed');
  if (weighed !== undefined) return applyOrThrow(scene, weighed);
  return tap('BOWL_RINSED', { zone: zones.find((zone) => bowls[zone] === 'on') ?? 'roots' });
};

/** Puts a bowl on while what it was weighed for still stands; else it is thrown away. */
const applyOrThrow = (scene: Scene, zone: Zone): RawEvent => {
  const applied = tap('BOWL_APPLIED', { zone });
  return isTakenNow(scene, applied) ? applied : tap('BOWL_THROWN', { zone });
};

const leaveStop = (scene: Scene): RawEvent => {
  const facts = factsOf(scene);
  if (facts.isInherited) return correct('inherited');
  if (facts.skinTest === 'positive') return correct('skinTest');
  if (facts.incompatibility === 'reacted') return correct('incompatibility');
  return correct(askSteps.find((step) => facts.said[step] === 'absolute') ?? 'client');
};

const ask = (scene: Scene, step: AskStep): RawEvent => {
  const { said } = factsOf(scene);
  const isUnsaid = judgeStep(step, scene.consultation.record.answers, scene.settings) === 'unsaid';
  if (said[step] === 'unsaid' || isUnsaid) return say(step, cleanAnswers[step]);
  if (scene.consultation.record.skinTest === null) return noteSkinTest(scene.atMs, 49 * hourMs, 'nothing');
  return tap('STEP_CONFIRMED', { step });
};

/** What a careful colourist would do next. May read whatever she can see: the oracle is the one that may not. */
export function goOnward(scene: Scene): RawEvent {
  const { care, place } = factsOf(scene);
  if (care === 'suspected') return tap('NO_REACTION');
  if (place === 'parked') return tap('RESUMED');
  const way = nameWay(scene.consultation.state);
  switch (way) {
    case 'unopened':
      return tap('OPENED', { ticket: 'Q.F.', chair: '3' });
    case 'strandTest.preparing':
      return prepare(scene);
    case 'strandTest.processing':
      return process(scene);
    case 'strandTest.takenOff': {
      const { strands } = factsOf(scene);
      return recordOutcome(zones.find((zone) => strands[zone] === 'takenOff') ?? 'roots');
    }
    case 'decision':
      return decide(scene);
    case 'mix':
      return atTheScale(scene);
    case 'colourOn':
      return onTheHead(scene);
    case 'finish':
      return tap('PLAN_GIVEN', { settingC: '320' });
    case 'stopped':
      return leaveStop(scene);
    default:
      return ask(scene, askSteps.find((step) => step === way) ?? 'client');
  }
}

/** The strength and minutes of this zone's newest strand, as they would be typed. */
export const testedOf = ({ consultation }: Scene, zone: Zone): readonly [string, string] => {
  const strand = findStrand(consultation.record, zone);
  return [String(strand?.developerPercent ?? 6), String(strand?.minutes ?? 25)];
};
