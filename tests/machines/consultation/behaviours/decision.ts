import {
  breakStrand,
  decide,
  override,
  plain,
  record,
  reopen,
  retract,
  takeOff,
  weigh,
} from '../tokenEvents';
import { toBothDecision, toBothProcessing, toDecision, toProcessing, toTakenOff } from '../ways';
import { type Behaviour, both, leadsTo, refuses } from './behaviour';

const freer = 'judgement.freerThanSuggested';
const toGummed = [...toTakenOff, record('lengths', 'gummy')];
const toEndsBroken = [
  ...toBothProcessing,
  breakStrand('ends'),
  takeOff('lengths'),
  record('ends', 'sound'),
  record('lengths'),
];

/** What is done with what the strand said. */
export const decision: readonly Behaviour[] = [
  {
    title: 'lifts nothing at the decision but the limit of the table',
    guard: 'isFreerRule',
    check: refuses(toDecision, override('judgement.tingled')),
  },
  {
    title: 'decides nothing freer than suggested unless a named person answers for it',
    guard: 'mayDecide',
    check: both(
      refuses(toDecision, decide('asPlanned', true)),
      leadsTo([...toDecision, override(freer), decide('asPlanned', true)], 'mix'),
      leadsTo([...toGummed, decide('severalVisits', true)], 'decision'),
    ),
  },
  {
    title: 'forgets who answered for a freer decision when the way goes back',
    guard: 'mayDecide',
    check: refuses(
      [...toDecision, override(freer), reopen('strandTest'), plain('OUTCOME_KEPT')],
      decide('asPlanned', true),
    ),
  },
  {
    title: 'goes back to the strand test when it is to be tested again, and only then',
    guard: 'isDecision',
    check: both(
      leadsTo([...toDecision, decide('testAgain')], 'strandTest.preparing'),
      leadsTo([...toDecision, decide('gentler')], 'mix'),
      leadsTo([...toDecision, decide('severalVisits')], 'decision'),
    ),
  },
  {
    title: 'goes to no bowl when the only strand gummed or broke',
    guard: 'opensAZone',
    check: both(
      refuses(toGummed, decide('asPlanned')),
      refuses([...toProcessing, breakStrand('lengths'), record('lengths', 'sound')], decide('asPlanned')),
    ),
  },
  {
    title: 'goes to no bowl when the outcome lapsed before the decision',
    guard: 'opensAZone',
    check: refuses(toDecision, decide('asPlanned', false, { lapsed: ['lengths'] })),
  },
  {
    title: 'goes to no bowl when the ends stay out and nothing but ends was tested',
    guard: 'opensAZone',
    check: refuses([...toBothDecision, retract('lengths'), record('lengths', 'gummy')], decide('endsOut')),
  },
  {
    title: 'stays at the decision for several visits, a cut, deposit only, or a no',
    guard: 'isMixing',
    check: both(
      leadsTo([...toDecision, decide('depositOnly')], 'decision'),
      refuses([...toDecision, decide('depositOnly')], weigh('lengths')),
      leadsTo([...toDecision, decide('severalVisits')], 'decision'),
      leadsTo([...toDecision, decide('cutFirst')], 'decision'),
      leadsTo([...toGummed, decide('weSayNo')], 'decision'),
    ),
  },
  {
    title: 'retracts only an outcome there is',
    guard: 'isRetractable',
    check: both(
      refuses(toDecision, retract('ends')),
      leadsTo([...toDecision, retract('lengths')], 'strandTest.takenOff'),
    ),
  },
  {
    title: 'never retracts the outcome of a strand that broke in the mix',
    guard: 'isRetractable',
    check: refuses(toEndsBroken, retract('ends')),
  },
];
