import type { EventType } from '../../../../shared/records/event';
import {
  answer,
  apply,
  decide,
  extend,
  look,
  noteSkinTest,
  open,
  plain,
  resume,
  rinse,
  startStrand,
  stillOn,
  takeOff,
  weigh,
} from '../tokenEvents';
import {
  park,
  suspect,
  toBothDecision,
  toClient,
  toColourOn,
  toMix,
  toProcessing,
  toStrandTest,
  toTakenOff,
  toWeighed,
} from '../ways';
import { type Behaviour, both, leadsTo, refuses } from './behaviour';

const endings = ['CALLED_OFF', 'WE_SAID_NO', 'CLIENT_SAID_NO'] as const satisfies readonly EventType[];
const end = endings.map((type) => plain(type));
const seen = [suspect, plain('REACTION_RECORDED')];

const toLengthsOn = [...toBothDecision, decide(), weigh('lengths'), apply('lengths')];

/** Reactions, visits and endings, over whatever else is going on. */
export const care: readonly Behaviour[] = [
  {
    title: 'weighs, applies and tests nothing while a reaction is looked into',
    guard: 'isCalm',
    check: both(
      refuses([...toMix, suspect], weigh('lengths')),
      refuses([...toWeighed, suspect], apply('lengths')),
      refuses([...toStrandTest, suspect], startStrand('lengths')),
    ),
  },
  {
    title: 'ends and parks nothing while a reaction is looked into',
    guard: 'isCalm',
    check: both(
      refuses([...toStrandTest, suspect], ...end, park),
      refuses([...toStrandTest, park, suspect], resume()),
      refuses([...toStrandTest, ...seen], ...end, park),
    ),
  },
  {
    title: 'rinses and takes off while a reaction is looked into',
    guard: 'isCalm',
    check: both(
      refuses([...toColourOn, suspect], ...end),
      leadsTo([...toColourOn, suspect, rinse('lengths')], 'mix'),
      leadsTo([...toProcessing, suspect, takeOff('lengths')], 'strandTest.takenOff'),
    ),
  },
  {
    title: 'asks, decides and weighs nothing for a client who is away',
    guard: 'isAtBar',
    check: both(
      refuses([...toClient, park], answer('client')),
      refuses([...toMix, park], weigh('lengths')),
      refuses([...toStrandTest, park], startStrand('lengths')),
      leadsTo([...toMix, park, resume(), weigh('lengths')], 'mix'),
    ),
  },
  {
    title: 'ends nothing while colour is on her head',
    guard: 'isNothingOn',
    check: both(
      refuses(toColourOn, ...end),
      ...endings.map((type) => (chart: Parameters<Behaviour['check']>[0]) => {
        chart.reach([...toColourOn, rinse('lengths'), plain(type)]);
      }),
    ),
  },
  {
    title: 'closes a reaction only after the head was rinsed',
    guard: 'isNothingOn',
    check: both(
      refuses([...toColourOn, ...seen], plain('CARE_GIVEN')),
      leadsTo([...toColourOn, ...seen, rinse('lengths'), plain('CARE_GIVEN')], 'reaction'),
    ),
  },
  {
    title: 'parks nobody while a strand runs or waits for its outcome',
    guard: 'isNothingRunning',
    check: both(refuses(toProcessing, park), refuses(toTakenOff, park)),
  },
  {
    title: 'parks nobody while a bowl stands weighed or is on',
    guard: 'isNothingWeighed',
    check: both(refuses(toWeighed, park), refuses(toColourOn, park)),
  },
  {
    title: 'extends a clock only within the limit of the maker',
    guard: 'isWithinLimit',
    check: both(
      refuses(toProcessing, extend(false)),
      leadsTo([...toProcessing, extend(true)], 'strandTest.processing'),
    ),
  },
  {
    title: 'looks into a reaction as soon as a look finds stinging, and at no other look',
    guard: 'isStinging',
    check: both(
      refuses([...toLengthsOn, look('head', 'lengths', true)], weigh('ends'), suspect),
      leadsTo(
        [...toLengthsOn, look('head', 'lengths', true), plain('NO_REACTION'), weigh('ends')],
        'colourOn',
      ),
      leadsTo([...toLengthsOn, look('head', 'lengths'), suspect], 'colourOn'),
    ),
  },
  {
    title:
      'puts back on the head what was said to be rinsed while a reaction was looked into, and nothing else',
    guard: 'isStillOn',
    check: both(
      leadsTo([...toLengthsOn, suspect, rinse('lengths'), stillOn('lengths')], 'colourOn'),
      leadsTo([...toLengthsOn, suspect, rinse('lengths'), stillOn('ends')], 'mix'),
      leadsTo([...toLengthsOn, suspect, rinse('lengths'), stillOn()], 'mix'),
      leadsTo([...toWeighed, suspect, stillOn('lengths')], 'mix'),
    ),
  },
  {
    title: 'gives neither strand nor head more time while a reaction is looked into',
    guard: 'isCalm',
    check: both(
      refuses([...toProcessing, suspect], extend(true)),
      refuses([...toColourOn, look('head', 'lengths', true)], extend(true, true)),
      leadsTo([...toProcessing, suspect, plain('NO_REACTION'), extend(true)], 'strandTest.processing'),
    ),
  },
  {
    title: 'gives a head no more time during a reaction, after a stop, or once the decision fell',
    guard: 'mayStayOn',
    check: both(
      leadsTo([...toColourOn, extend(true, true)], 'colourOn'),
      refuses([...toColourOn, suspect], extend(true, true)),
      refuses([...toColourOn, noteSkinTest(true)], extend(true, true, { skinTest: 'positive' })),
      refuses([...toColourOn, answer('client', { bearsOnPlan: true })], extend(true, true)),
    ),
  },
  {
    title: 'gives a strand no more time once a look found it stretchy',
    guard: 'mayStayOn',
    check: both(
      refuses(toProcessing, extend(true, false, {}, true)),
      leadsTo([...toProcessing, extend(true, false, {}, false)], 'strandTest.processing'),
    ),
  },
  {
    title: 'opens once',
    guard: 'inherits',
    check: both(refuses(toClient, open()), refuses([open(true)], open())),
  },
];
