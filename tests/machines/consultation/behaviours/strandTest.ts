import {
  answer,
  apply,
  breakStrand,
  correct,
  decide,
  discard,
  look,
  override,
  plain,
  readIncompatibility,
  record,
  reopen,
  retract,
  rinse,
  startStrand,
  strong,
  takeOff,
  weak,
} from '../tokenEvents';
import {
  ask,
  toBothProcessing,
  toBothTakenOff,
  toClient,
  toColourOn,
  toDecision,
  toProcessing,
  toStrandTest,
  toTakenOff,
} from '../ways';
import { type Behaviour, both, leadsTo, refuses } from './behaviour';

const withRule = { said: 'judgement', rules: ['judgement.tingled'] } as const;
const raised = { rules: withRule.rules } as const;
const toRaised = [
  ...toClient,
  ...ask({
    client: answer('client', withRule),
    hotTools: answer('hotTools', raised),
    feelHair: answer('feelHair', raised),
    heatSpray: answer('heatSpray', raised),
  }),
];

const asBefore = { incompatibility: 'asBefore' } as const;
const toDue = [
  ...toClient,
  ...ask({
    hotTools: answer('hotTools', { incompatibility: 'due' }),
    feelHair: answer('feelHair', asBefore),
    heatSpray: answer('heatSpray', asBefore),
  }),
];
const toCleared = [...toDue, plain('INCOMPATIBILITY_STARTED'), readIncompatibility(false)];

const toStoppedOff = [...toProcessing, answer('client', { said: 'absolute' }), takeOff('lengths')];

/** Off the head: what may be tested, and what comes of it. */
export const strandTest: readonly Behaviour[] = [
  {
    title: 'lifts only a judgement that is open',
    guard: 'isOpenRule',
    check: both(
      refuses(toRaised, override('judgement.scalpTight'), override('judgement.freerThanSuggested')),
      refuses([...toRaised, override('judgement.tingled')], override('judgement.tingled')),
    ),
  },
  {
    title: 'starts an incompatibility test only where one is due',
    guard: 'isIncompatibilityDue',
    check: both(
      refuses(toStrandTest, plain('INCOMPATIBILITY_STARTED')),
      refuses(toCleared, plain('INCOMPATIBILITY_STARTED')),
    ),
  },
  {
    title: 'reads an incompatibility test only while one runs',
    guard: 'isIncompatibilityRunning',
    check: refuses(toDue, readIncompatibility(false), readIncompatibility(true)),
  },
  {
    title: 'tests no strand while a judgement is open, and does once it is lifted',
    guard: 'mayTest',
    check: both(
      refuses(toRaised, startStrand('lengths')),
      leadsTo([...toRaised, override('judgement.tingled'), startStrand('lengths')], 'strandTest.processing'),
    ),
  },
  {
    title: 'tests no strand while an incompatibility test is due or runs, and does once it is clear',
    guard: 'mayTest',
    check: both(
      refuses(toDue, startStrand('lengths')),
      refuses([...toDue, plain('INCOMPATIBILITY_STARTED')], startStrand('lengths')),
      leadsTo([...toCleared, startStrand('lengths')], 'strandTest.processing'),
    ),
  },
  {
    title: 'tests a strand while the skin test waits, since it is off the head',
    guard: 'mayTest',
    check: leadsTo(
      [...toStrandTest, startStrand('lengths', strong, [], { skinTest: 'waiting' })],
      'strandTest.processing',
    ),
  },
  {
    title: 'never tests a mix again on a length that it broke',
    guard: 'isMixStillOpen',
    check: both(
      refuses(
        [...toProcessing, breakStrand('lengths'), record('lengths', 'broken'), reopen('strandTest')],
        startStrand('lengths'),
      ),
      leadsTo(
        [
          ...toProcessing,
          breakStrand('lengths'),
          record('lengths', 'broken'),
          reopen('strandTest'),
          startStrand('lengths', weak),
        ],
        'strandTest.processing',
      ),
    ),
  },
  {
    title: 'never tests a mix that is no gentler than one that gummed',
    guard: 'isMixStillOpen',
    check: refuses(
      [...toTakenOff, record('lengths', 'gummy', weak), reopen('strandTest')],
      startStrand('lengths', strong, [weak]),
    ),
  },
  {
    title: 'starts no second strand of a zone while one runs or waits, nor of a zone that is not planned',
    guard: 'isZoneFree',
    check: both(
      refuses(toProcessing, startStrand('lengths', weak)),
      refuses([...toBothProcessing, takeOff('lengths')], startStrand('lengths', weak)),
      refuses(toStrandTest, startStrand('roots')),
    ),
  },
  {
    title: 'looks at, takes off and breaks only a strand that runs',
    guard: 'isStrandRunning',
    check: refuses(toProcessing, look('strand', 'ends'), takeOff('ends'), breakStrand('ends')),
  },
  {
    title: 'goes on testing while another strand runs',
    guard: 'isLastRunning',
    check: both(
      leadsTo([...toBothProcessing, takeOff('lengths')], 'strandTest.processing'),
      leadsTo([...toBothProcessing, breakStrand('lengths')], 'strandTest.processing'),
      leadsTo([...toBothProcessing, breakStrand('lengths'), takeOff('ends')], 'strandTest.takenOff'),
    ),
  },
  {
    title: 'records an outcome only of a strand that was taken off',
    guard: 'awaitsOutcome',
    check: both(
      refuses(toTakenOff, record('ends')),
      refuses([...toBothTakenOff, record('lengths')], record('lengths', 'rough')),
    ),
  },
  {
    title: 'goes to the decision only when every strand has its outcome',
    guard: 'isLastOutcome',
    check: both(
      leadsTo([...toBothTakenOff, record('ends', 'gummy')], 'strandTest.takenOff'),
      leadsTo([...toBothTakenOff, record('ends', 'gummy'), record('lengths')], 'decision'),
    ),
  },
  {
    title: 'keeps no outcome before there is one, nor when the plan was answered otherwise',
    guard: 'isEveryStrandCurrent',
    check: both(
      refuses(toStrandTest, plain('OUTCOME_KEPT')),
      refuses(
        [...toDecision, reopen('client'), answer('client', { bearsOnPlan: true }), ...ask()],
        plain('OUTCOME_KEPT'),
      ),
      leadsTo([...toDecision, reopen('client'), ...ask(), plain('OUTCOME_KEPT')], 'decision'),
    ),
  },
  {
    title: 'keeps no outcome that lapsed, was used up, or was voided by a correction',
    guard: 'isEveryStrandCurrent',
    check: both(
      refuses([...toDecision, reopen('strandTest')], plain('OUTCOME_KEPT', { lapsed: ['lengths'] })),
      refuses([...toColourOn, rinse('lengths'), reopen('strandTest')], plain('OUTCOME_KEPT')),
      refuses(
        [...toDecision, answer('client', { said: 'absolute' }), correct('client'), ...ask()],
        plain('OUTCOME_KEPT'),
      ),
    ),
  },
  {
    title: 'records an outcome while another strand runs',
    guard: 'awaitsOutcome',
    check: both(
      leadsTo([...toBothProcessing, takeOff('ends'), record('ends')], 'strandTest.processing'),
      leadsTo(
        [...toBothProcessing, breakStrand('ends'), record('ends', 'broken'), startStrand('ends', weak)],
        'strandTest.processing',
      ),
      refuses(toBothProcessing, record('ends')),
    ),
  },
  {
    title: 'waits for no outcome of a strand that was put aside, and for every other',
    guard: 'isNothingAwaited',
    check: both(
      leadsTo([...toProcessing, discard('lengths')], 'strandTest.preparing'),
      leadsTo([...toBothProcessing, takeOff('ends'), discard('lengths')], 'strandTest.takenOff'),
      leadsTo([...toBothProcessing, discard('lengths')], 'strandTest.processing'),
      refuses([...toProcessing, discard('lengths')], plain('OUTCOME_KEPT'), record('lengths')),
    ),
  },
  {
    title: 'puts no strand aside that broke in the mix',
    guard: 'isDiscardable',
    check: both(
      leadsTo([...toTakenOff, discard('lengths')], 'strandTest.preparing'),
      refuses([...toProcessing, breakStrand('lengths')], discard('lengths')),
      refuses([...toBothProcessing, breakStrand('ends')], discard('ends')),
    ),
  },
  {
    title: 'still takes a strand off, and sees it break, when the client was stopped meanwhile',
    guard: 'isStrandRunning',
    check: both(
      leadsTo([...toProcessing, answer('client', { said: 'absolute' }), takeOff('lengths')], 'stopped'),
      refuses(
        [
          ...toProcessing,
          answer('client', { said: 'absolute' }),
          breakStrand('lengths'),
          correct('client'),
          ...ask(),
        ],
        startStrand('lengths'),
      ),
      refuses([...toStrandTest, answer('client', { said: 'absolute' })], takeOff('lengths')),
    ),
  },
  {
    title: 'records what a strand said that was taken off after a stop, and goes nowhere with it',
    guard: 'awaitsOutcome',
    check: both(
      leadsTo([...toStoppedOff, record('lengths')], 'stopped'),
      refuses(toStoppedOff, record('ends'), decide(), discard('lengths')),
      refuses([...toStoppedOff, record('lengths')], record('lengths'), decide(), plain('OUTCOME_KEPT')),
      refuses([...toStoppedOff, record('lengths'), correct('client'), ...ask()], plain('OUTCOME_KEPT')),
    ),
  },
  {
    title: 'looks at a strand while strands run, and at no head',
    guard: 'isStrandLook',
    check: refuses(toProcessing, look('head', 'lengths')),
  },
  {
    title: 'applies nothing and retracts nothing while strands are tested',
    guard: 'isStrandRunning',
    check: both(
      refuses(toProcessing, apply('lengths'), retract('lengths'), reopen('client')),
      refuses(toTakenOff, takeOff('lengths')),
      refuses([...toBothProcessing, takeOff('lengths')], takeOff('lengths')),
    ),
  },
];
