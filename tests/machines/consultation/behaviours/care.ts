import type { EventType } from '../../../../shared/records/event';
import { answer, apply, extend, open, plain, rinse, startStrand, takeOff, weigh } from '../tokenEvents';
import {
  park,
  suspect,
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
      refuses([...toStrandTest, park, suspect], plain('RESUMED')),
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
      leadsTo([...toMix, park, plain('RESUMED'), weigh('lengths')], 'mix'),
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
    title: 'opens once',
    guard: 'inherits',
    check: both(refuses(toClient, open()), refuses([open(true)], open())),
  },
];
