import {
  answer,
  apply,
  confirm,
  correct,
  decide,
  plain,
  readIncompatibility,
  record,
  reopen,
  rinse,
  startStrand,
  takeOff,
  weigh,
} from '../tokenEvents';
import { park, suspect, toClient, toColourOn, toGlass, toStrandTest } from '../ways';
import { type Behaviour, both, leadsTo, refuses } from './behaviour';

const absolute = (step: 'client' | 'feelHair') => answer(step, { said: 'absolute' });
const toFinish = [...toColourOn, rinse('lengths'), plain('FINISHED')];
/** Other hair is told of while the glass stands, so that it is not asked for any more. */
const toOtherHair = [...toGlass, reopen('hotTools'), answer('hotTools')];
/** And colour goes on. */
const glassOverHead = [
  ...toOtherHair,
  ...(['hotTools', 'feelHair', 'heatSpray'] as const).map((step) => confirm(step)),
  startStrand('lengths'),
  takeOff('lengths'),
  record('lengths'),
  decide(),
  weigh('lengths'),
  apply('lengths'),
];

/** What is told or seen late is written down wherever it can be seen, and opens no way. */
export const toldLate: readonly Behaviour[] = [
  {
    title:
      'writes down what stops for good when it is told late, in a stop and at the finish, and nothing else there',
    guard: 'isAbsoluteAnswer',
    check: both(
      leadsTo([...toClient, absolute('client'), absolute('feelHair')], 'stopped'),
      leadsTo([...toClient, absolute('client'), absolute('feelHair'), correct('client')], 'stopped'),
      leadsTo([...toFinish, absolute('client')], 'finish'),
      refuses([...toFinish, absolute('client')], answer('client'), correct('client'), weigh('lengths')),
      refuses([...toClient, absolute('client')], answer('client'), answer('hotTools')),
      leadsTo([...toFinish, absolute('client'), plain('PLAN_GIVEN')], 'done'),
    ),
  },
  {
    title:
      'hears that a cutting reacted while she is away, in a reaction, or asked again; a clear one is read at the bar',
    guard: 'isAbsoluteAnswer',
    check: both(
      leadsTo([...toGlass, park, readIncompatibility(true)], 'stopped'),
      leadsTo([...toGlass, suspect, readIncompatibility(true)], 'stopped'),
      leadsTo([...toGlass, reopen('client'), readIncompatibility(true)], 'stopped'),
      refuses([...toGlass, park], readIncompatibility(false)),
      refuses([...toGlass, suspect], readIncompatibility(false)),
      refuses([...toGlass, reopen('client')], readIncompatibility(false)),
    ),
  },
  {
    title: 'hears a cutting react whatever history is told since, and none that is not in its glass',
    guard: 'hasGlass',
    check: both(
      leadsTo([...toOtherHair, readIncompatibility(true)], 'stopped'),
      refuses(toOtherHair, readIncompatibility(false)),
      leadsTo([...toGlass, readIncompatibility(false), readIncompatibility(true)], 'stopped'),
      leadsTo([...toGlass, readIncompatibility(false), park, readIncompatibility(true)], 'stopped'),
      refuses([...toGlass, readIncompatibility(true)], readIncompatibility(true)),
      refuses([...toGlass, readIncompatibility(true), correct('incompatibility')], readIncompatibility(true)),
      refuses(toStrandTest, readIncompatibility(true)),
      refuses(toColourOn, readIncompatibility(true)),
    ),
  },
  {
    title:
      'stays with the head when a cutting reacts, stops after the rinse, and forgets it for no other history',
    guard: 'isNothingOn',
    check: both(
      leadsTo([...glassOverHead, readIncompatibility(true)], 'colourOn'),
      leadsTo([...glassOverHead, readIncompatibility(true), rinse('lengths')], 'stopped'),
      leadsTo([...glassOverHead, readIncompatibility(true), answer('hotTools'), rinse('lengths')], 'stopped'),
      leadsTo([...glassOverHead, rinse('lengths'), plain('FINISHED'), readIncompatibility(true)], 'finish'),
    ),
  },
];
