import {
  answer,
  apply,
  breakOnHead,
  decide,
  look,
  noteSkinTest,
  override,
  plain,
  record,
  reopen,
  rinse,
  throwBowl,
  weigh,
} from '../tokenEvents';
import { toBothDecision, toBothOn, toBothTakenOff, toColourOn, toMix, toWeighed } from '../ways';
import { type Behaviour, both, leadsTo, refuses } from './behaviour';

/** The lengths are on, the bowl of the ends waits. */
const toEndsWaiting = toBothOn.slice(0, -1);
const toEndsOpen = [...toBothDecision, decide(), weigh('lengths'), apply('lengths')];
const toEndsGummed = [...toBothTakenOff, record('ends', 'gummy'), record('lengths'), decide('gentler')];

/** At the scale and on the head. */
export const bowls: readonly Behaviour[] = [
  {
    title: 'lifts nothing at the scale but the limit of the scalp',
    guard: 'isScalpRule',
    check: both(
      refuses(toMix, override('judgement.freerThanSuggested'), override('judgement.tingled')),
      leadsTo([...toMix, override('judgement.onScalp')], 'mix'),
    ),
  },
  {
    title: 'refuses a bowl while the skin test waits, is missing, lapsed or positive',
    guard: 'mayMix',
    check: both(
      ...(['waiting', 'missing', 'lapsed', 'positive'] as const).flatMap((skinTest) => [
        refuses(toMix, weigh('lengths', { skinTest })),
        refuses(toWeighed, apply('lengths', { skinTest })),
      ]),
      leadsTo([...toMix, weigh('lengths', { skinTest: 'notNeeded' })], 'mix'),
    ),
  },
  {
    title: 'refuses another bowl once hair broke on the head, until another day',
    guard: 'mayMix',
    check: both(
      refuses([...toEndsWaiting, breakOnHead('lengths')], apply('ends')),
      refuses([...toEndsOpen, breakOnHead('lengths')], weigh('ends')),
      leadsTo([...toEndsOpen, weigh('ends')], 'colourOn'),
      leadsTo([...toEndsWaiting, apply('ends')], 'colourOn'),
    ),
  },
  {
    title: 'refuses a bowl for a zone whose strand was not tested, or gummed',
    guard: 'mayMix',
    check: both(refuses(toMix, weigh('ends'), weigh('roots')), refuses(toEndsGummed, weigh('ends'))),
  },
  {
    title: 'refuses a bowl once the outcome lapsed',
    guard: 'mayMix',
    check: both(
      refuses(toMix, weigh('lengths', { lapsed: ['lengths'] })),
      refuses(toWeighed, apply('lengths', { lapsed: ['lengths'] })),
    ),
  },
  {
    title: 'refuses a bowl for ends that were decided to stay out',
    guard: 'mayMix',
    check: both(
      refuses([...toBothDecision, decide('endsOut')], weigh('ends')),
      leadsTo([...toBothDecision, decide('endsOut'), weigh('lengths')], 'mix'),
    ),
  },
  {
    title: 'refuses a second bowl of a strand that was used up on the head',
    guard: 'mayMix',
    check: refuses([...toColourOn, rinse('lengths')], weigh('lengths')),
  },
  {
    title: 'refuses every bowl after a fact that bears on the plan was said over the head',
    guard: 'mayMix',
    check: both(
      refuses(
        [
          ...toBothDecision,
          decide(),
          weigh('lengths'),
          apply('lengths'),
          answer('hotTools', { bearsOnPlan: true }),
        ],
        weigh('ends'),
      ),
      refuses(
        [...toBothDecision, decide(), weigh('lengths'), apply('lengths'), noteSkinTest(true)],
        weigh('ends', { skinTest: 'positive' }),
      ),
    ),
  },
  {
    title: 'weighs no second bowl for a zone while one stands or is on',
    guard: 'isBowlFree',
    check: both(
      refuses(toWeighed, weigh('lengths')),
      refuses(toColourOn, weigh('lengths')),
      leadsTo([...toWeighed, throwBowl('lengths'), weigh('lengths')], 'mix'),
    ),
  },
  {
    title: 'applies and throws only a bowl that was weighed',
    guard: 'isBowlWeighed',
    check: both(
      refuses(toMix, apply('lengths'), throwBowl('lengths')),
      refuses([...toWeighed, throwBowl('lengths')], apply('lengths')),
    ),
  },
  {
    title: 'rinses and looks at only what is on',
    guard: 'isBowlOn',
    check: refuses(toColourOn, rinse('ends'), look('head', 'ends')),
  },
  {
    title: 'stays with the head until the last zone is rinsed',
    guard: 'isLastOn',
    check: both(
      leadsTo([...toBothOn, rinse('ends')], 'colourOn'),
      leadsTo([...toBothOn, rinse('ends'), rinse('lengths')], 'mix'),
    ),
  },
  {
    title: 'finishes nothing where no bowl was on the head, a thrown one counts for nothing',
    guard: 'isRinsed',
    check: both(
      refuses(toMix, plain('FINISHED')),
      refuses([...toWeighed, throwBowl('lengths')], plain('FINISHED')),
    ),
  },
  {
    title: 'finishes from wherever the way went back to, once a head was rinsed and never before',
    guard: 'isRinsed',
    check: both(
      refuses(toBothDecision, plain('FINISHED')),
      leadsTo([...toColourOn, rinse('lengths'), reopen('decision'), plain('FINISHED')], 'finish'),
      leadsTo([...toColourOn, rinse('lengths'), reopen('client'), plain('FINISHED')], 'finish'),
      leadsTo(
        [...toColourOn, answer('client', { said: 'absolute' }), rinse('lengths'), plain('FINISHED')],
        'finish',
      ),
      refuses([...toColourOn, rinse('lengths'), plain('FINISHED')], plain('FINISHED')),
    ),
  },
  {
    title: 'finishes only when nothing stands weighed or is on',
    guard: 'isNothingWeighed',
    check: both(
      leadsTo([...toBothOn, rinse('ends'), rinse('lengths'), plain('FINISHED')], 'finish'),
      refuses(
        [...toBothDecision, decide(), weigh('lengths'), weigh('ends'), throwBowl('ends')],
        plain('FINISHED'),
      ),
    ),
  },
  {
    title: 'goes back only when no bowl stands',
    guard: 'isNothingWeighed',
    check: both(
      refuses(toWeighed, reopen('decision'), reopen('client')),
      leadsTo([...toWeighed, throwBowl('lengths'), reopen('decision')], 'decision'),
    ),
  },
  {
    title: 'looks at a head while colour is on, and at no strand',
    guard: 'isHeadLook',
    check: refuses(toColourOn, look('strand', 'lengths')),
  },
];
