import {
  answer,
  apply,
  confirm,
  correct,
  feel,
  feelAnew,
  noteSkinTest,
  plain,
  reopen,
  rinse,
  throwBowl,
  weigh,
  weighToner,
} from '../tokenEvents';
import { park, suspect, toBothOn, toColourOn, toFelt, toMix, toRinsed, toToner, toWeighed } from '../ways';
import { type Behaviour, both, leadsTo, refuses } from './behaviour';

/** A toner: only after a rinse, on hair felt since, and springing back. */
export const toner: readonly Behaviour[] = [
  {
    title: 'weighs a toner only for hair that was felt since its rinse, and springs back',
    guard: 'mayTone',
    check: both(
      refuses(toRinsed, weighToner('lengths')),
      refuses([...toFelt, feel('lengths', false)], weighToner('lengths')),
      refuses([...toFelt, feel('lengths', false), feel('lengths')], weighToner('lengths')),
      refuses([...toFelt, feelAnew('lengths', false)], weighToner('lengths')),
      leadsTo([...toFelt, feel('lengths', false), feelAnew('lengths'), weighToner('lengths')], 'mix'),
    ),
  },
  {
    title: 'puts no toner on once the hair was felt again and stays long',
    guard: 'mayTone',
    check: both(
      refuses([...toToner, feel('lengths', false)], apply('lengths')),
      leadsTo([...toToner, apply('lengths')], 'colourOn'),
    ),
  },
  {
    title: 'asks to feel anew after each toner',
    guard: 'mayTone',
    check: refuses([...toToner, apply('lengths'), rinse('lengths')], weighToner('lengths')),
  },
  {
    title: 'weighs no toner while the skin test waits, is missing, lapsed or positive, or on another day',
    guard: 'mayTone',
    check: both(
      ...(['waiting', 'missing', 'lapsed', 'positive'] as const).flatMap((skinTest) => [
        refuses(toFelt, weighToner('lengths', { skinTest })),
        refuses(toToner, apply('lengths', { skinTest })),
      ]),
      refuses(toFelt, weighToner('lengths', { isAnotherDay: true })),
      refuses(toToner, apply('lengths', { isAnotherDay: true })),
    ),
  },
  {
    title: 'weighs no toner with a stop open, beside another zone that is on',
    guard: 'mayTone',
    check: both(
      refuses(
        [...toBothOn, rinse('lengths'), feel('lengths'), noteSkinTest(true)],
        weighToner('lengths', { skinTest: 'positive' }),
      ),
      refuses(
        [...toBothOn, rinse('lengths'), feel('lengths'), answer('client', { rules: ['judgement.tingled'] })],
        weighToner('lengths'),
      ),
    ),
  },
  {
    title: 'feels, and tones, only what was rinsed',
    guard: 'isBowlRinsed',
    check: both(
      refuses(toMix, feel('lengths'), feel('ends')),
      refuses(toWeighed, feel('lengths')),
      refuses(toColourOn, feel('lengths')),
      refuses(toFelt, feel('ends'), weighToner('ends')),
    ),
  },
  {
    title: 'weighs no second toner while one stands or is on',
    guard: 'isBowlRinsed',
    check: both(
      refuses(toToner, weighToner('lengths')),
      refuses([...toToner, apply('lengths')], weighToner('lengths')),
      leadsTo([...toToner, throwBowl('lengths'), weighToner('lengths')], 'mix'),
    ),
  },
  {
    title: 'puts on and throws only a toner that was weighed',
    guard: 'isTonerWeighed',
    check: both(
      refuses(toFelt, apply('lengths'), throwBowl('lengths')),
      refuses([...toToner, throwBowl('lengths')], apply('lengths')),
    ),
  },
  {
    title: 'keeps toner and feeling back while a reaction is looked into, and once she is stopped',
    guard: 'isCalm',
    check: both(
      refuses([...toFelt, suspect], weighToner('lengths'), feel('lengths')),
      refuses([...toToner, suspect], apply('lengths')),
      refuses([...toFelt, answer('client', { said: 'absolute' })], weighToner('lengths')),
    ),
  },
  {
    title: 'leaves the way to the finish open when its bowl is thrown, and closes it while one stands',
    guard: 'isNothingWeighed',
    check: both(
      refuses(toToner, plain('FINISHED'), park, reopen('decision')),
      leadsTo([...toToner, throwBowl('lengths'), plain('FINISHED')], 'finish'),
    ),
  },
  {
    title: 'is no way round the strand: what was felt opens no other bowl',
    guard: 'mayMix',
    check: both(
      refuses(toFelt, weigh('lengths')),
      refuses([...toToner, throwBowl('lengths')], weigh('lengths')),
    ),
  },
  {
    title: 'throws a toner that stands when she is stopped',
    guard: 'isNothingWeighed',
    check: leadsTo(
      [
        ...toToner,
        answer('feelHair', { said: 'absolute' }),
        correct('feelHair'),
        answer('feelHair'),
        confirm('feelHair'),
        plain('FINISHED'),
      ],
      'finish',
    ),
  },
];
