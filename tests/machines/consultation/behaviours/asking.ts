import {
  answer,
  confirm,
  correct,
  correctNote,
  decide,
  discard,
  noteSkinTest,
  open,
  plain,
  readIncompatibility,
  record,
  reopen,
  resume,
  rinse,
  weigh,
} from '../tokenEvents';
import {
  ask,
  park,
  suspect,
  toBothDecision,
  toBothOn,
  toBothTakenOff,
  toClient,
  toColourOn,
  toDecision,
  toGlass,
  toMix,
  toStrandTest,
} from '../ways';
import { type Behaviour, both, leadsTo, refuses } from './behaviour';

const absolute = (step: 'client' | 'hotTools' | 'feelHair' | 'heatSpray') =>
  answer(step, { said: 'absolute' });

/** Stopped by what she said and by what an incompatibility test did. */
const stoppedTwice = [...toGlass, readIncompatibility(true), noteSkinTest(true)];

const toOtherPlan = [...toDecision, reopen('client'), answer('client', { bearsOnPlan: true })];
const toEndsBack = [
  ...toBothDecision,
  reopen('client'),
  answer('client', { bearsOnPlan: true, planned: ['lengths'] }),
  answer('client', { bearsOnPlan: true, restores: ['lengths', 'ends'] }),
  ...ask(),
];
const putBack = answer('client', { bearsOnPlan: true, restores: ['lengths'] });

/** Questions, and the stops their answers are. */
export const asking: readonly Behaviour[] = [
  {
    title: 'opens at the first question when no earlier stop is handed on, and stopped when one is',
    guard: 'inherits',
    check: both(leadsTo([open()], 'client'), leadsTo([open(true)], 'stopped')),
  },
  {
    title: 'takes an answer at the step that asks it, and at no other',
    guard: 'isStep',
    check: refuses(toClient, answer('hotTools')),
  },
  {
    title: 'confirms the step that is asked, and no other',
    guard: 'isStep',
    check: refuses([...toStrandTest, reopen('client')], confirm('hotTools')),
  },
  {
    title: 'goes back to the very step that was asked for',
    guard: 'isStep',
    check: leadsTo([...toDecision, reopen('heatSpray')], 'heatSpray'),
  },
  {
    title: 'never goes forward by going back',
    guard: 'isStep',
    check: refuses(
      [...toClient, answer('client'), confirm('client')],
      reopen('heatSpray'),
      reopen('decision'),
    ),
  },
  {
    title: 'stops at an absolute answer and at no other',
    guard: 'isAbsoluteAnswer',
    check: both(
      leadsTo([...toClient, absolute('client')], 'stopped'),
      leadsTo([...toClient, answer('client')], 'client'),
      leadsTo([...toDecision, absolute('feelHair')], 'stopped'),
      refuses(toDecision, answer('feelHair')),
    ),
  },
  {
    title: 'stops at a positive skin test and at no other',
    guard: 'isAbsoluteAnswer',
    check: both(
      leadsTo([...toStrandTest, noteSkinTest(true)], 'stopped'),
      leadsTo([...toStrandTest, noteSkinTest(false)], 'strandTest.preparing'),
    ),
  },
  {
    title: 'stops at an absolute answer of a client who is away, or while a reaction is looked into',
    guard: 'isAbsoluteAnswer',
    check: both(
      leadsTo([...toDecision, park, absolute('client')], 'stopped'),
      leadsTo([...toClient, suspect, absolute('client')], 'stopped'),
      refuses([...toDecision, park], answer('client')),
    ),
  },
  {
    title:
      'takes a skin test back that was noted wrongly, from anywhere, and no other answer that is no stop',
    guard: 'isSkinTestNote',
    check: both(
      leadsTo([...toDecision, correctNote()], 'decision'),
      leadsTo([...toColourOn, correctNote()], 'colourOn'),
      refuses(toDecision, correct('client'), correct('inherited')),
      refuses([...toDecision, correctNote()], correctNote()),
      refuses(toDecision, correct('skinTest')),
      refuses([...toMix, correctNote()], weigh('lengths', { skinTest: 'missing' })),
    ),
  },
  {
    title: 'lets what was tested stand again when an answer is put back',
    guard: 'isEveryStrandCurrent',
    check: both(
      refuses([...toOtherPlan, ...ask()], plain('OUTCOME_KEPT')),
      leadsTo([...toOtherPlan, putBack, ...ask(), plain('OUTCOME_KEPT')], 'decision'),
      refuses([...toOtherPlan, putBack, ...ask(), plain('OUTCOME_KEPT')], weigh('lengths')),
    ),
  },
  {
    title: 'lets a zone stand again that was left out of the plan in between, and none that was put aside',
    guard: 'isEveryStrandCurrent',
    check: both(
      leadsTo([...toEndsBack, plain('OUTCOME_KEPT'), decide(), weigh('ends')], 'mix'),
      refuses(
        [...toBothTakenOff, record('lengths'), discard('ends'), plain('OUTCOME_KEPT'), decide()],
        weigh('ends'),
      ),
    ),
  },
  {
    title: 'forgets no absolute answer when she comes back on another day',
    guard: 'isOnlyAbsolute',
    check: both(
      leadsTo([...toClient, absolute('client'), park, resume(true), correct('client')], 'client'),
      leadsTo([...toClient, park, absolute('client'), resume(true), correct('client')], 'client'),
      leadsTo(
        [
          ...toClient,
          absolute('client'),
          noteSkinTest(true),
          plain('PARKED', { skinTest: 'positive' }),
          resume(true, { skinTest: 'positive' }),
          correct('skinTest', { skinTest: 'waiting' }),
        ],
        'stopped',
      ),
    ),
  },
  {
    title: 'asks anew what holds for today when she comes back on another day',
    guard: 'isSaid',
    check: both(
      refuses([...toMix, park, resume(true)], weigh('lengths')),
      refuses([...toMix, park, resume(true), reopen('client')], confirm('client')),
      leadsTo([...toMix, park, resume(), weigh('lengths')], 'mix'),
    ),
  },
  {
    title: 'confirms no step that was not said',
    guard: 'isSaid',
    check: refuses(toClient, confirm('client')),
  },
  {
    title: 'confirms no step of which a part is unsaid',
    guard: 'isSaid',
    check: refuses([...toClient, answer('client', { said: 'unsaid' })], confirm('client')),
  },
  {
    title: 'corrects only an answer that was absolute',
    guard: 'isAbsoluteSubject',
    check: refuses([...toClient, absolute('client')], correct('hotTools'), correct('inherited')),
  },
  {
    title: 'stays stopped after one of two absolute answers was corrected, and leaves after the other',
    guard: 'isOnlyAbsolute',
    check: both(
      leadsTo([...stoppedTwice, correct('incompatibility', { skinTest: 'positive' })], 'stopped'),
      leadsTo(
        [
          ...stoppedTwice,
          correct('incompatibility', { skinTest: 'positive' }),
          correct('skinTest', { skinTest: 'waiting' }),
        ],
        'client',
      ),
    ),
  },
  {
    title: 'goes back to the very step whose absolute answer was corrected',
    guard: 'isCorrecting',
    check: both(
      ...(['client', 'hotTools', 'feelHair', 'heatSpray'] as const).map((step) =>
        leadsTo([...toStrandTest, reopen(step), absolute(step), correct(step)], step),
      ),
      leadsTo([open(true), correct('inherited')], 'client'),
    ),
  },
  {
    title: 'takes a new fact with colour on her head and stays with the head',
    guard: 'isNothingOn',
    check: both(
      leadsTo([...toColourOn, absolute('client')], 'colourOn'),
      leadsTo([...toColourOn, noteSkinTest(true)], 'colourOn'),
    ),
  },
  {
    title: 'stops after the last rinse when something absolute was said over the head',
    guard: 'isStopOpen',
    check: both(
      leadsTo([...toColourOn, absolute('client'), rinse('lengths')], 'stopped'),
      leadsTo([...toBothOn, absolute('client'), rinse('lengths')], 'colourOn'),
      leadsTo([...toColourOn, answer('client', { bearsOnPlan: true }), rinse('lengths')], 'mix'),
    ),
  },
  {
    title: 'takes no absolute answer back by answering again',
    guard: 'leavesStops',
    check: both(
      refuses([...toColourOn, absolute('client')], answer('client')),
      refuses([...toColourOn, noteSkinTest(true)], noteSkinTest(false)),
      refuses([...toStrandTest, noteSkinTest(true)], noteSkinTest(false)),
      leadsTo([...toColourOn, absolute('client'), answer('hotTools')], 'colourOn'),
    ),
  },
  {
    title: 'asks nothing and notes nothing before somebody opened',
    guard: 'inherits',
    check: both(refuses([], absolute('client'), noteSkinTest(true), noteSkinTest(false))),
  },
];
