import { decisions } from '../../../../shared/judgement/decisions';
import type { RawEvent } from '../../../../shared/records/classify';
import { askSteps, backSteps, correctables } from '../../../../shared/records/steps';
import type { Zone } from '../../../../shared/records/zones';
import { type Scene, testedOf } from './onward';
import {
  absoluteAnswers,
  correct,
  cream,
  dayMs,
  findAnswers,
  hourMs,
  noteSkinTest,
  otherAnswers,
  override,
  recordOutcome,
  retract,
  say,
  startStrand,
  tap,
  weighBowl,
} from './rawTaps';

const pick = <T>(list: readonly T[], detail: number): T => list[detail % list.length] as T;
const zoneAt = (detail: number): Zone =>
  pick(['lengths', 'ends', 'lengths', 'ends', 'roots'] as const, detail);

const weigh = (scene: Scene, detail: number, change: Record<string, string> = {}): RawEvent => {
  const zone = zoneAt(detail);
  const { developerPercent, minutes, line, heat } = testedOf(scene, zone);
  return weighBowl(zone, developerPercent, minutes, { line, heat, ...change });
};

const findOn = ({ consultation }: Scene): Zone | undefined =>
  consultation.record.bowls.find(({ state }) => state === 'on')?.zone;

/** The step that is asked just now; any other would be refused there. */
const stepOf = ({ consultation }: Scene, detail: number) => {
  const here = askSteps.find((step) => JSON.stringify(consultation.state.value).includes(`"way":"${step}"`));
  return here ?? pick(askSteps, detail);
};

/** What people do besides going onward, by name; `detail` chooses among alike. Most of it is refused most times. */
export const deviations = {
  reopen: (_scene, detail) => tap('REOPENED', { step: pick(backSteps, detail) }),
  answerOtherwise: (scene, detail) => {
    const here = stepOf(scene, detail);
    const fitting = otherAnswers.filter(([step]) => step === here);
    const [step, change] = pick(fitting, detail);
    return say(step, { ...findAnswers(scene.consultation.record)[step], ...change });
  },
  answerTheSame: (scene, detail) => {
    const step = stepOf(scene, detail);
    return say(step, findAnswers(scene.consultation.record)[step]);
  },
  answerAbsolutely: ({ consultation }, detail) =>
    say('client', { ...findAnswers(consultation.record).client, ...pick(absoluteAnswers, detail) }),
  answerNothing: (scene, detail) => say(stepOf(scene, detail), {}),
  answerPart: (scene, detail) => {
    const step = stepOf(scene, detail);
    return say(
      step,
      Object.fromEntries(Object.entries(findAnswers(scene.consultation.record)[step]).slice(detail % 3)),
    );
  },
  confirm: (_scene, detail) => tap('STEP_CONFIRMED', { step: pick(askSteps, detail) }),
  putSkinTestOn: ({ atMs }) => noteSkinTest(atMs, 0, 'notReadYet'),
  readSkinTestEarly: ({ atMs }) => noteSkinTest(atMs, hourMs, 'nothing'),
  readSkinTest: ({ atMs }, detail) => noteSkinTest(atMs, (25 + 24 * (detail % 3)) * hourMs, 'nothing'),
  readOldSkinTest: ({ atMs }) => noteSkinTest(atMs, 30 * dayMs, 'nothing'),
  skinTestReacted: ({ atMs }) => noteSkinTest(atMs, 20 * hourMs, 'reaction'),
  correct: (_scene, detail) => correct(pick(correctables, detail)),
  lift: (_scene, detail) =>
    override(pick(['judgement.freerThanSuggested', 'judgement.tingled', 'judgement.snapsWhenWet'], detail)),
  startIncompatibility: () => tap('INCOMPATIBILITY_STARTED'),
  incompatibilityReacted: () => tap('INCOMPATIBILITY_READ', { seen: 'reacted' }),
  startWeaker: (_scene, detail) => startStrand(zoneAt(detail), '6', '20'),
  startLightener: (_scene, detail) => startStrand(zoneAt(detail), '6', '20', { line: 'sandbar  POWDER' }),
  discard: (_scene, detail) =>
    tap('STRAND_DISCARDED', { zone: zoneAt(detail), why: pick(['wrongTap', 'lost'], detail) }),
  lookWeak: (_scene, detail) =>
    tap('LOOKED', { of: 'strand', zone: zoneAt(detail), level: '6', feel: 'stretchy' }),
  lookStinging: (scene, detail) =>
    tap('LOOKED', { of: 'head', zone: findOn(scene) ?? zoneAt(detail), stinging: 'yes' }),
  startStronger: (_scene, detail) => startStrand(zoneAt(detail), '12', '40'),
  lookAtStrand: (_scene, detail) =>
    tap('LOOKED', { of: 'strand', zone: zoneAt(detail), level: '6', feel: 'sound' }),
  lookAtHead: (_scene, detail) => tap('LOOKED', { of: 'head', zone: zoneAt(detail), stinging: 'no' }),
  takeOff: (_scene, detail) =>
    tap('STRAND_TAKEN_OFF', {
      zone: zoneAt(detail),
      why: pick(['timeIsUp', 'levelReached', 'clientLeaves'], detail),
    }),
  breakStrand: (_scene, detail) => tap('STRAND_BROKE', { zone: zoneAt(detail) }),
  recordWorse: (_scene, detail) =>
    recordOutcome(
      zoneAt(detail),
      ...pick(
        [
          ['rough', 'springsBack'],
          ['sound', 'staysLong'],
          ['gummy', 'staysLong'],
          ['sound', 'snaps'],
        ] as const,
        detail,
      ),
    ),
  carryOutcome: () => tap('OUTCOME_CARRIED'),
  keepOutcome: () => tap('OUTCOME_KEPT'),
  retract: (_scene, detail) => retract(zoneAt(detail)),
  decide: (_scene, detail) => tap('DECIDED', { decision: pick(decisions, detail) }),
  changePlan: () => tap('PLAN_CHANGED'),
  weigh: (scene, detail) => weigh(scene, detail),
  weighAsMeant: (scene, detail) => weigh(scene, detail, { minutes: testedOf(scene, zoneAt(detail)).planned }),
  weighShort: (scene, detail) => weigh(scene, detail, { minutes: '2' }),
  weighStronger: (scene, detail) => weigh(scene, detail, { developerPercent: '12' }),
  weighLonger: (scene, detail) => weigh(scene, detail, { minutes: '40' }),
  weighHotter: (scene, detail) => weigh(scene, detail, { heat: 'dryHeat' }),
  weighOnScalp: (scene, detail) => weigh(scene, detail, { heat: 'none' }),
  weighAnotherLine: (scene, detail) =>
    weigh(scene, detail, { line: detail % 2 === 0 ? cream : 'Sandbar\u200b powder' }),
  weighAnotherRatio: (scene, detail) => weigh(scene, detail, { ratio: '1' }),
  throwBowl: (_scene, detail) => tap('BOWL_THROWN', { zone: zoneAt(detail) }),
  applyBowl: (_scene, detail) => tap('BOWL_APPLIED', { zone: zoneAt(detail), skinFirst: 'calm' }),
  rinse: (_scene, detail) => tap('BOWL_RINSED', { zone: zoneAt(detail) }),
  finish: () => tap('FINISHED'),
  park: ({ atMs }) => tap('PARKED', { untilAtMs: atMs + 2 * dayMs }),
  resume: () => tap('RESUMED'),
  suspectReaction: () => tap('REACTION_SUSPECTED'),
  noReaction: () => tap('NO_REACTION'),
  extendClock: ({ consultation }, detail) =>
    tap('CLOCK_EXTENDED', {
      clock: consultation.record.clocks.findLast(({ endedAtMs }) => endedAtMs === null)?.id ?? 'none',
      minutes: pick(['1', '5', '30'], detail),
      reason: 'liftIsSlow',
    }),
  acknowledge: ({ consultation }) =>
    tap('ALARM_ACKNOWLEDGED', { clock: consultation.record.clocks.at(-1)?.id ?? 'none' }),
  callOff: (_scene, detail) =>
    detail < 9 ? tap('RESUMED') : tap('CALLED_OFF', { reason: pick(['noTime', 'other'], detail) }),
} as const satisfies Record<string, (scene: Scene, detail: number) => RawEvent>;

export type Deviation = keyof typeof deviations;
export const deviationNames = Object.keys(deviations) as readonly Deviation[];
