import type { Consultation } from '../../../../machines/consultation/consultation';
import { type Decision, isMixingDecision } from '../../../../shared/judgement/decisions';
import { suggestFor } from '../../../../shared/judgement/findings';
import { issuePermit } from '../../../../shared/judgement/permit';
import { listPlannedZones } from '../../../../shared/judgement/plannedZones';
import { judgeSkinTest } from '../../../../shared/judgement/skinTest';
import { isLifting, judgeStep, listUnsaid } from '../../../../shared/judgement/stops';
import { classify, type RawEvent } from '../../../../shared/records/classify';
import type { LastTime } from '../../../../shared/records/lastTime';
import { passDay } from '../../../../shared/records/passedDay';
import { findStrand } from '../../../../shared/records/record';
import type { Settings } from '../../../../shared/records/settings';
import type { AskStep } from '../../../../shared/records/steps';
import { askSteps } from '../../../../shared/records/steps';
import { type Zone, zones } from '../../../../shared/records/zones';
import { nameWay } from '../chartUnderTest';
import {
  correct,
  cream,
  findAnswers,
  hourMs,
  noteSkinTest,
  override,
  powder,
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
  /** Last time, of a client who is back. */
  readonly lastTime?: LastTime | null;
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

/** How many strands of this zone did not come out sound? */
const countWeak = ({ consultation: { record } }: Scene, zone: Zone): number =>
  record.strands.filter(
    ({ zone: of, ended, outcome }) =>
      of === zone && (ended?.how === 'broke' || (outcome !== null && outcome.grade !== 'sound')),
  ).length;

/** A mix for what she wants, weaker the more strands of this zone were weak. */
const chooseStrand = (scene: Scene, zone: Zone): RawEvent => {
  const weak = countWeak(scene, zone);
  const minutes = weak > 2 ? '3' : '25';
  const isForLift = isLifting(scene.consultation.record.answers.client?.service ?? '');
  const strength = strengths[Math.min(weak, 2)] ?? '3';
  return isForLift
    ? startStrand(zone, strength, minutes, { line: powder })
    : startStrand(zone, weak > 0 ? '3' : '6', minutes, { line: cream });
};

/** What is not said, by today's settings. */
const findUnsaid = ({ consultation, settings, atMs }: Scene): AskStep | undefined =>
  listUnsaid(passDay(consultation.record, atMs).answers, settings)[0];

const prepare = (scene: Scene): RawEvent => {
  const facts = factsOf(scene);
  const unsaid = findUnsaid(scene);
  if (unsaid !== undefined) return tap('REOPENED', { step: unsaid });
  const open = facts.raised.find((rule) => !facts.overridden.includes(rule));
  if (open !== undefined) return override(open);
  if (facts.incompatibility === 'due') return tap('INCOMPATIBILITY_STARTED');
  if (facts.incompatibility === 'running') return tap('INCOMPATIBILITY_READ', { seen: 'nothing' });
  const carried = tap('OUTCOME_CARRIED');
  if (isTakenNow(scene, carried)) return carried;
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
  const zone = zones.find((each) => strands[each] === 'running') ?? 'roots';
  const off = tap('STRAND_TAKEN_OFF', { zone });
  return isTakenNow(scene, off) ? off : tap('STRAND_TAKEN_OFF', { zone, why: 'levelReached' });
};

/** So many strands of a zone were weak: nobody snips a sixth one, the answer is no. */
const enoughStrands = 5;

const decide = (scene: Scene): RawEvent => {
  const { consultation, settings, atMs } = scene;
  const suggested = suggestFor(consultation.record, settings, atMs);
  const isOpened = zones.some((zone) => isOpenUnder(scene, zone, suggested));
  if (isMixingDecision(suggested) && isOpened) return tap('DECIDED', { decision: suggested });
  if (zones.some((zone) => countWeak(scene, zone) >= enoughStrands)) {
    return tap('WE_SAID_NO', { reason: 'hairTooWeak' });
  }
  const again = tap('DECIDED', { decision: 'testAgain' });
  return isTakenNow(scene, again) ? again : tap('REOPENED', { step: 'strandTest' });
};

/** Would a bowl of this zone be anything under this decision? */
const isOpenUnder = (scene: Scene, zone: Zone, decision: Decision): boolean => {
  const { strands, fibres } = factsOf(scene);
  const isGood = strands[zone] === 'current' && ['sound', 'rough'].includes(fibres[zone]);
  return isGood && !(decision === 'endsOut' && zone === 'ends');
};

const permitOf = ({ consultation, settings, atMs }: Scene, zone: Zone) =>
  issuePermit(consultation.record, zone, settings, atMs);

/** Weighs as strong and as long as the permit allows; shown skin tests are read first, and strands tested again. */
const atTheScale = (scene: Scene): RawEvent => {
  const { bowls } = factsOf(scene);
  const { record } = scene.consultation;
  const weighed = zones.find((zone) => bowls[zone] === 'weighed');
  const skinTest = judgeSkinTest(record, scene.settings.profile, scene.atMs);
  if (skinTest !== 'clear' && skinTest !== 'notNeeded') return readSkinTest(scene);
  const open = listPlanned(scene).find(
    (zone) => bowls[zone] !== 'weighed' && weighAllowed(scene, zone) !== null,
  );
  const bowl = open === undefined ? null : weighAllowed(scene, open);
  if (bowl !== null && record.bowls.length < scene.bowlsMeant) return bowl;
  if (weighed !== undefined) return applyOrThrow(scene, weighed);
  if (record.bowls.length >= scene.bowlsMeant) {
    const isRinsed = record.bowls.some(({ state }) => state === 'rinsed');
    return isRinsed ? tap('FINISHED') : tap('CALLED_OFF', { reason: 'noTime' });
  }
  return tap('REOPENED', { step: 'strandTest' });
};

/** As strong and about as long as the permit of this zone allows; null when that is nothing. */
const weighAllowed = (scene: Scene, zone: Zone): RawEvent | null => {
  const permit = permitOf(scene, zone);
  if (!permit.ok) return null;
  const { maxDeveloperPercent, maxMinutes, maxHeat, tested } = permit.value;
  // Every other bowl is meant to stay shorter than it might, so that there is time to give.
  const spare = scene.consultation.log.length % 2 === 0 && maxMinutes > 5 ? 2 : 0;
  const minutes = Math.floor(maxMinutes) - spare;
  if (minutes < 1 || maxDeveloperPercent <= 0) return null;
  return weighBowl(zone, String(maxDeveloperPercent), String(minutes), {
    line: tested.line,
    heat: maxHeat,
  });
};

const onTheHead = (scene: Scene): RawEvent => {
  const { bowls } = factsOf(scene);
  const weighed = zones.find((zone) => bowls[zone] === 'weighed');
  if (weighed !== undefined) return applyOrThrow(scene, weighed);
  return tap('BOWL_RINSED', { zone: zones.find((zone) => bowls[zone] === 'on') ?? 'roots' });
};

/** Puts a bowl on while what it was weighed for still stands; else it is thrown away. */
const applyOrThrow = (scene: Scene, zone: Zone): RawEvent => {
  const applied = tap('BOWL_APPLIED', { zone, skinFirst: 'calm' });
  return isTakenNow(scene, applied) ? applied : tap('BOWL_THROWN', { zone });
};

const leaveStop = (scene: Scene): RawEvent => {
  const facts = factsOf(scene);
  if (facts.isInherited) return correct('inherited');
  if (facts.skinTest === 'positive') return correct('skinTest');
  if (facts.incompatibility === 'reacted') return correct('incompatibility');
  return correct(askSteps.find((step) => facts.said[step] === 'absolute') ?? 'client');
};

/** Reads the test she shows; one that was noted as put on later was noted wrongly. */
const readSkinTest = (scene: Scene): RawEvent => {
  const read = noteSkinTest(scene.atMs, 49 * hourMs, 'nothing');
  return isTakenNow(scene, read) ? read : correct('skinTest');
};

const ask = (scene: Scene, step: AskStep): RawEvent => {
  const { said } = factsOf(scene);
  const isUnsaid = judgeStep(step, scene.consultation.record.answers, scene.settings) === 'unsaid';
  if (said[step] === 'unsaid' || isUnsaid) return say(step, findAnswers(scene.consultation.record)[step]);
  if (scene.consultation.record.skinTest === null) return readSkinTest(scene);
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
      return tap('OPENED', { ticket: 'Q.F.', chair: '3', lastTimeId: scene.lastTime?.id ?? '' });
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
      return tap('PLAN_GIVEN', {
        settingC: '320',
        back: 'weeks6',
        skinNow: 'calm',
        toolsNow: 'offCooling',
        cardNow: 'printed',
        lateItching: 'saidItBack',
      });
    case 'stopped':
      return leaveStop(scene);
    default:
      return ask(scene, askSteps.find((step) => step === way) ?? 'client');
  }
}

/** What this zone's newest strand was of, and for how long it was on, as they would be typed. */
export const testedOf = ({ consultation }: Scene, zone: Zone) => {
  const strand = findStrand(consultation.record, zone);
  return {
    developerPercent: String(strand?.developerPercent ?? 6),
    minutes: String(strand?.minutesOn ?? 25),
    planned: String(strand?.minutes ?? 25),
    line: strand?.line ?? powder,
    heat: strand?.heat ?? 'foil',
  };
};
