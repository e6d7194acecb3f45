import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { advance, beginConsultation, type Consultation } from '../../../machines/consultation/consultation';
import { decisions } from '../../../shared/judgement/decisions';
import { type RuleId, ruleIds, rules } from '../../../shared/judgement/rules';
import { classify, type RawEvent } from '../../../shared/records/classify';
import type { RawForm } from '../../../shared/records/readForm';
import { askSteps, backSteps, correctables } from '../../../shared/records/steps';
import {
  correct,
  dayMs,
  findSettings,
  hourMs,
  minuteMs,
  noteSkinTest,
  override,
  recordOutcome,
  retract,
  say,
  startAtMs,
  startStrand,
  tap,
} from './walks/rawTaps';
import { answersOf, ask, confirm, decide, opened, reopen, type Told, tested } from './walks/story';
import { apply, asked, lengths, takeOff, whole } from './walks/wayToBowl';

const settings = findSettings(0);
type Scene = Consultation & { readonly atMs: number };

/** One tap after so much time: what it leads to, or the same as before where it is refused. */
function send(scene: Scene, raw: RawEvent, afterMs: number, inheritsStop: boolean): Scene {
  const atMs = scene.atMs + afterMs;
  const context = { settings, settingsId: 0, atMs, by: 'Opal', inheritsStop };
  const event = classify(scene.record, raw, context);
  const next = event.ok ? advance(scene, event.value) : event;
  return next.ok ? { ...next.value, atMs } : { ...scene, atMs };
}
function tell(taps: readonly Told[], inheritsStop = false): Scene {
  let scene: Scene = { ...beginConsultation('stopped'), atMs: startAtMs };
  for (const told of taps) {
    scene =
      typeof told === 'number'
        ? { ...scene, atMs: scene.atMs + told }
        : send(scene, told, 3 * minuteMs, inheritsStop);
  }
  return scene;
}
const countBowls = ({ log }: Consultation) =>
  log.filter(({ type }) => type === 'BOWL_WEIGHED' || type === 'BOWL_APPLIED').length;

type AbsoluteId = Extract<RuleId, `stop.${string}`>;
interface Stopped {
  /** The tap that raises it, wherever she is before the head. */
  readonly by: readonly RawEvent[];
  /** What she has told by then, where it takes more than the usual. */
  readonly before?: readonly Told[];
  readonly inherits?: true;
  readonly answer: (typeof correctables)[number];
}
const client = (change: RawForm): RawEvent => say('client', { ...answersOf().client, ...change });
const box = ask({ hotTools: { history: ['unknownBoxColour'] } });

/** How each absolute stop comes about; a new one has to be told here, or it does not compile. */
const stopped: Readonly<Record<AbsoluteId, Stopped>> = {
  'stop.reactionEver': { by: [client({ reactions: ['swelling'] })], answer: 'client' },
  'stop.anyReaction': { by: [client({ reactions: ['tingledStops'] })], answer: 'client' },
  'stop.persulfateReaction': { by: [client({ reactions: ['hives'] })], answer: 'client' },
  'stop.blackTattoo': { by: [client({ reactions: ['blackTattoo'] })], answer: 'client' },
  'stop.scalpBroken': { by: [client({ scalp: 'broken' })], answer: 'client' },
  'stop.faceRash': { by: [client({ scalp: 'faceRash' })], answer: 'client' },
  'stop.underAge': { by: [client({ ageBand: 'under' })], answer: 'client' },
  'stop.skinTestPositive': { by: [noteSkinTest(startAtMs, 49 * hourMs, 'reaction')], answer: 'skinTest' },
  'stop.incompatibilityReacted': {
    before: [...opened, ...box, tap('INCOMPATIBILITY_STARTED')],
    by: [tap('INCOMPATIBILITY_READ', { seen: 'reacted' })],
    answer: 'incompatibility',
  },
  'stop.inherited': { by: [], inherits: true, answer: 'inherited' },
};
const absolute = Object.keys(stopped) as AbsoluteId[];

/** Everything anybody might tap after it, but for the named correction of the answer that stopped her. */
const taps = (except: Stopped['answer']): readonly RawEvent[] => [
  ...askSteps.flatMap((step) => [say(step, answersOf()[step]), confirm(step)]),
  ...backSteps.map(reopen),
  ...ruleIds.map(override),
  ...correctables.filter((answer) => answer !== except).map(correct),
  ...decisions.map(decide),
  ...['asPlanned', 'asPlanned', 'endsOut'].map(decide),
  noteSkinTest(startAtMs, 49 * hourMs, 'nothing'),
  startStrand('lengths', '9'),
  startStrand('lengths', '3'),
  takeOff,
  recordOutcome('lengths'),
  retract('lengths'),
  tap('INCOMPATIBILITY_STARTED'),
  tap('INCOMPATIBILITY_READ', { seen: 'nothing' }),
  tap('OUTCOME_KEPT'),
  tap('OUTCOME_CARRIED'),
  tap('PLAN_CHANGED'),
  tap('PARKED', { untilAtMs: startAtMs + 60 * dayMs }),
  tap('RESUMED'),
  tap('REACTION_SUSPECTED'),
  tap('NO_REACTION'),
  whole,
  whole,
  apply,
];

/** Where she is when it is told: all said, her strand tested, and decided. */
const places: readonly (readonly Told[])[] = [
  asked,
  [...asked, ...tested('lengths')],
  [...asked, ...tested('lengths'), decide('asPlanned')],
];
const waits = [0, minuteMs, 31 * minuteMs, 49 * hourMs];

describe('an absolute stop', () => {
  it('is told here for each there is', () =>
    expect([...absolute].sort()).toEqual(ruleIds.filter((id) => rules[id].kind === 'absolute').sort()));

  it.each(absolute)('%s is passed by no order of taps, a named correction aside', (id) => {
    const { by, before, inherits = false, answer } = stopped[id];
    const starts = (before === undefined ? places : [before]).map((place) =>
      tell([...place, ...by], inherits),
    );
    for (const { log } of starts) expect(log.length).toBeGreaterThan(8 - (inherits ? 8 : 0));
    const after = fc.array(fc.tuple(fc.constantFrom(...taps(answer)), fc.constantFrom(...waits)), {
      maxLength: 40,
    });
    fc.assert(
      fc.property(fc.constantFrom(...starts), after, (start, drawn) => {
        const end = drawn.reduce((scene, [raw, afterMs]) => send(scene, raw, afterMs, inherits), start);
        expect(countBowls(end)).toBe(0);
      }),
      { seed: 20_260_303, numRuns: 60 },
    );
  });

  test.each(absolute)('%s is what holds her: the same taps lead to the bowl once it is corrected', (id) => {
    const { by, before, inherits = false, answer } = stopped[id];
    const redo = [...ask(), ...tested('lengths'), decide('asPlanned'), whole];
    const told = [...(before ?? (inherits ? opened : asked)), ...by];
    expect(countBowls(tell([...told, ...redo], inherits))).toBe(0);
    const skinTest = answer === 'skinTest' ? [noteSkinTest(startAtMs, 49 * hourMs, 'nothing')] : [];
    const back = [...told, correct(answer), ...skinTest, reopen('client'), ...redo];
    expect(countBowls(tell(back, inherits))).toBe(1);
  });

  it('is not what refuses a tap that anybody may make', () => {
    const free = tell([
      ...asked,
      ...tested('lengths'),
      decide('asPlanned'),
      whole,
      tap('BOWL_APPLIED', { ...lengths, skinFirst: 'calm' }),
    ]);
    expect(countBowls(free)).toBe(2);
  });
});
