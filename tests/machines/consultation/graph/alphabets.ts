import type { ConsultationState } from '../../../../machines/consultation/consultation';
import type { ConsultationEvent } from '../../../../shared/records/event';
import type { AskStep } from '../../../../shared/records/steps';
import { askSteps, backSteps, correctables } from '../../../../shared/records/steps';
import type { Zone } from '../../../../shared/records/zones';
import { nameWay } from '../chartUnderTest';
import * as say from '../tokenEvents';

/** One traversal: what may be tried in a state. Together they take every edge; each alone stays small. */
export interface Alphabet {
  readonly name: string;
  readonly events: (state: ConsultationState) => readonly ConsultationEvent[];
}

const { strong, weak, plain } = say;
const one = { planned: ['lengths'] } as const;
const answerOne = (step: AskStep, tokens: Parameters<typeof say.answer>[1] = {}) =>
  say.answer(step, { ...one, ...tokens });
const steps = askSteps.map((step) => say.confirm(step));
const reopenings = backSteps.map((step) => say.reopen(step));
const asked = [say.open(), ...askSteps.map((step) => answerOne(step)), ...steps];
const tested = [say.startStrand('lengths'), say.takeOff('lengths'), say.record('lengths')];
const mixed = [say.decide(), say.weigh('lengths'), say.apply('lengths'), say.rinse('lengths')];
const finished = [plain('FINISHED'), plain('PLAN_GIVEN')];
const straight = [...asked, ...tested, ...mixed, ...finished];

/** The way of one zone with one mix: sound, rough or gummy, put aside, decided otherwise, answered otherwise, thrown. */
const shortGate: readonly ConsultationEvent[] = [
  ...straight,
  ...reopenings,
  answerOne('client', { bearsOnPlan: true }),
  say.discard('lengths'),
  say.record('lengths', 'gummy'),
  say.retract('lengths'),
  plain('OUTCOME_KEPT'),
  say.decide('asPlanned', true),
  say.decide('testAgain'),
  say.override('judgement.freerThanSuggested'),
  say.override('judgement.onScalp'),
  plain('PLAN_CHANGED'),
  say.weigh('lengths', { skinTest: 'waiting' }),
  say.apply('lengths', { skinTest: 'waiting' }),
  say.throwBowl('lengths'),
];

/**
 * The same as far as the gate is concerned: two mixes, every grade, freer decisions, lapsing, a fact over the head.
 * Left to the others: stops, rules, care, visits, two zones.
 */
const gate: readonly ConsultationEvent[] = [
  ...shortGate,
  say.startStrand('lengths', weak),
  say.startStrand('lengths', strong, [weak]),
  say.breakStrand('lengths'),
  say.record('lengths', 'rough'),
  say.record('lengths', 'gummy', weak),
  say.record('lengths', 'broken'),
  say.retract('lengths', weak),
  plain('OUTCOME_KEPT', { lapsed: ['lengths'] }),
  say.look('strand', 'lengths'),
  say.look('head', 'lengths'),
  say.decide('asPlanned', false, { lapsed: ['lengths'] }),
  say.decide('depositOnly'),
  say.decide('severalVisits'),
  ...(['missing', 'lapsed', 'positive'] as const).flatMap((skinTest) => [
    say.weigh('lengths', { skinTest }),
    say.apply('lengths', { skinTest }),
  ]),
  say.weigh('lengths', { lapsed: ['lengths'] }),
  say.apply('lengths', { lapsed: ['lengths'] }),
  say.weigh('lengths', { isAnotherDay: true }),
  say.apply('lengths', { isAnotherDay: true }),
  say.startStrand('lengths', strong, [], { isAnotherDay: true }),
  say.look('head', 'lengths', false, { isAnotherDay: true }),
  say.reopen('client', { isAnotherDay: true }),
  say.confirm('client', { isAnotherDay: true }),
];

/** Rules that a person has to judge, and the incompatibility test, up to the strand. */
const rule = { said: 'judgement', rules: ['judgement.tingled'] } as const;
const kept = { rules: rule.rules, incompatibility: 'asBefore' } as const;
const rules: readonly ConsultationEvent[] = [
  ...straight,
  ...reopenings,
  answerOne('client', { said: 'unsaid' }),
  answerOne('client', rule),
  answerOne('hotTools', kept),
  answerOne('hotTools', { rules: rule.rules, incompatibility: 'due' }),
  answerOne('feelHair', kept),
  answerOne('heatSpray', kept),
  say.override('judgement.tingled'),
  say.override('judgement.scalpTight'),
  plain('INCOMPATIBILITY_STARTED'),
  say.readIncompatibility(false),
  say.readIncompatibility(true),
  say.correct('incompatibility'),
];

/** Absolute answers before, over and after the head, and their corrections. */
const stops: readonly ConsultationEvent[] = [
  ...straight,
  say.open(true),
  ...reopenings.slice(0, 4),
  ...askSteps.map((step) => answerOne(step, { said: 'absolute', bearsOnPlan: true })),
  ...askSteps.map((step) => answerOne(step, { bearsOnPlan: true })),
  say.noteSkinTest(true),
  say.noteSkinTest(false),
  plain('OUTCOME_KEPT'),
  say.throwBowl('lengths'),
  say.breakStrand('lengths'),
  ...correctables.map((subject) => say.correct(subject)),
  say.correctNote(),
];

/** Reactions, visits, endings and clocks over the straight way. */
const overlay: readonly ConsultationEvent[] = [
  ...straight,
  say.open(true),
  say.correct('inherited'),
  say.look('strand', 'lengths'),
  say.look('head', 'lengths'),
  say.look('head', 'lengths', true),
  say.look('strand', 'lengths', true),
  say.breakStrand('lengths'),
  say.throwBowl('lengths'),
  say.reopen('client'),
  say.resume(),
  say.resume(true),
  ...(
    [
      'REACTION_SUSPECTED',
      'NO_REACTION',
      'REACTION_RECORDED',
      'CARE_GIVEN',
      'PARKED',
      'CALLED_OFF',
      'WE_SAID_NO',
      'CLIENT_SAID_NO',
      'CLOCK_CORRECTED',
      'ALARM_ACKNOWLEDGED',
    ] as const
  ).map((type) => plain(type)),
  ...[true, false].flatMap((isOnHead) => [say.extend(true, isOnHead), say.extend(false, isOnHead)]),
  say.extend(true, false, {}, true),
];

/** Lengths and ends together: the last one running, waiting and on. */
const ends = (event: ConsultationEvent): ConsultationEvent =>
  'zone' in event.tokens
    ? ({ ...event, tokens: { ...event.tokens, zone: 'ends' } } as ConsultationEvent)
    : event;
const twoZones: readonly ConsultationEvent[] = [
  say.open(),
  ...askSteps.map((step) => say.answer(step)),
  ...steps,
  ...[...tested, ...mixed, say.breakStrand('lengths'), say.throwBowl('lengths')].flatMap((event) =>
    'zone' in event.tokens ? [event, ends(event)] : [event],
  ),
  say.discard('lengths'),
  say.discard('ends'),
  say.record('ends', 'gummy'),
  say.retract('lengths'),
  say.decide('endsOut'),
  plain('OUTCOME_KEPT'),
  say.reopen('strandTest'),
  say.reopen('client'),
  say.answer('client', { bearsOnPlan: true, planned: ['lengths'] }),
  say.answer('client', { bearsOnPlan: true }),
  ...finished,
];

/**
 * The plan put back as it was. As the judge would, offered only where nothing that was on the head used the strand up;
 * what a correction voided never stands again, so this stands in no alphabet with corrections.
 */
const putBack =
  (planned: readonly Zone[]) =>
  (state: ConsultationState): readonly ConsultationEvent[] => {
    const isUsed = Object.values(state.context.facts.bowls).some(
      (bowl) => bowl === 'on' || bowl === 'rinsed',
    );
    return isUsed ? [] : [say.answer('client', { bearsOnPlan: true, planned, restores: planned })];
  };
/** What can be carried from last time, with what may be new, too little or too much, on the short way. */
const carried: readonly ConsultationEvent[] = [
  ...asked,
  ...tested,
  ...mixed,
  ...finished,
  ...reopenings,
  say.answer('client', { bearsOnPlan: true }),
  answerOne('client', { bearsOnPlan: true }),
  answerOne('client', { said: 'absolute', bearsOnPlan: true }),
  say.correct('client'),
  say.carry({ sound: ['lengths'] }),
  say.carry({ rough: ['lengths'] }),
  say.carry({ sound: ['ends'], rough: ['lengths'] }),
  say.carry({ isAsLastTime: false, sound: ['lengths'] }),
  say.carry(),
  say.retract('lengths'),
  say.discard('lengths'),
  plain('OUTCOME_KEPT'),
  say.weigh('lengths', { lapsed: ['lengths'] }),
  say.apply('lengths', { lapsed: ['lengths'] }),
  say.throwBowl('lengths'),
];

/** After a rinse: felt, toned, thrown, felt weak, rinsed again; stopped, away and suspected in between; a second strand. */
const toned: readonly ConsultationEvent[] = [
  ...straight,
  say.reopen('strandTest'),
  plain('OUTCOME_KEPT'),
  say.feel('lengths'),
  say.feel('lengths', false),
  say.feelAnew('lengths'),
  say.feel('lengths', true, { isAnotherDay: true }),
  say.weighToner('lengths'),
  say.weighToner('lengths', { skinTest: 'waiting' }),
  say.breakOnHead('lengths'),
  say.apply('lengths', { skinTest: 'waiting' }),
  say.apply('lengths', { isAnotherDay: true }),
  say.throwBowl('lengths'),
  say.allOn('lengths'),
  answerOne('feelHair', { said: 'absolute', bearsOnPlan: true }),
  say.correct('feelHair'),
  ...(['REACTION_SUSPECTED', 'NO_REACTION', 'PARKED', 'CALLED_OFF'] as const).map((type) => plain(type)),
  say.resume(),
  say.resume(true),
];
/** Said to be rinsed while a reaction was looked into, and still on: at the scale, and past a stop over the head. */
const stillOn: readonly ConsultationEvent[] = [
  ...straight,
  answerOne('feelHair', { said: 'absolute', bearsOnPlan: true }),
  say.correct('feelHair'),
  plain('REACTION_SUSPECTED'),
  say.stillOn(),
  say.stillOn('lengths'),
  say.stillOn('ends'),
];
/** The lengths toned while the ends are on. */
const tonedBeside: readonly ConsultationEvent[] = [
  say.open(),
  ...askSteps.map((step) => say.answer(step)),
  ...steps,
  ...[...tested, ...mixed].flatMap((event) => ('zone' in event.tokens ? [event, ends(event)] : [event])),
  say.feel('lengths'),
  say.feel('lengths', false),
  say.weighToner('lengths'),
  say.throwBowl('lengths'),
  say.allOn('ends'),
  say.breakOnHead('ends'),
  ...finished,
];

const putOneBack = putBack(['lengths']);
const putBothBack = putBack(['lengths', 'ends']);

/** A positive skin test stays positive until it is corrected or noted otherwise. */
const keepPositive = (event: ConsultationEvent, state: ConsultationState): ConsultationEvent => {
  const isPositive = state.context.facts.skinTest === 'positive';
  const changesIt =
    event.type === 'SKIN_TEST_NOTED' || (event.type === 'CORRECTED' && event.tokens.answer === 'skinTest');
  if (!isPositive || changesIt) return event;
  return { ...event, tokens: { ...event.tokens, skinTest: 'positive' } } as ConsultationEvent;
};

/**
 * The three endings hang on the same guards: the two noes are tried at few places, calling it off at every one. What is
 * told late is told of two steps: any of the four would do, and all sets of them would be a graph of their own.
 */
const isTried = (event: ConsultationEvent, state: ConsultationState): boolean => {
  const way = nameWay(state);
  if (event.type === 'ANSWERED' && ['stopped', 'finish'].includes(way)) {
    return event.tokens.step === 'client' || event.tokens.step === 'feelHair';
  }
  if (event.type !== 'WE_SAID_NO' && event.type !== 'CLIENT_SAID_NO') return true;
  return state.context.facts.isInherited || way === 'decision';
};

const join = (...lists: readonly (readonly ConsultationEvent[])[]): readonly ConsultationEvent[] => [
  ...new Map(lists.flat().map((event) => [JSON.stringify(event), event])).values(),
];
const gateWithRules = join(shortGate, rules);
const stopsWithCare = join(straight, stops, overlay);

/**
 * The whole gate stands alone, a short one beside the rules, the straight way beside stops and care together: all at
 * once would make more than 134,007 states and take minutes, and walks go through all of them together.
 */
export const alphabets: readonly Alphabet[] = [
  { name: 'gate', events: (state) => [...gate, ...putOneBack(state)] },
  { name: 'gate and rules', events: () => gateWithRules },
  {
    name: 'stops and care',
    events: (state) =>
      stopsWithCare.filter((event) => isTried(event, state)).map((event) => keepPositive(event, state)),
  },
  { name: 'carried', events: () => carried },
  { name: 'toned', events: () => toned },
  { name: 'still on', events: () => stillOn },
  { name: 'toned beside another zone', events: () => tonedBeside },
  { name: 'two zones', events: (state) => [...twoZones, ...putBothBack(state)] },
];
