import {
  answer,
  apply,
  confirm,
  decide,
  extend,
  look,
  open,
  override,
  plain,
  reopen,
  startStrand,
  strong,
  weigh,
} from '../tokenEvents';
import { ask, toClient, toDecision, toMix, toStrandTest, toWeighed } from '../ways';
import { type Behaviour, both, leadsTo, refuses } from './behaviour';

const newDay = { isAnotherDay: true } as const;
const tight = { said: 'judgement', rules: ['judgement.scalpTight'] } as const;
const raised = { rules: tight.rules } as const;
const askTight = ask({
  client: answer('client', tight),
  hotTools: answer('hotTools', raised),
  feelHair: answer('feelHair', raised),
  heatSpray: answer('heatSpray', raised),
});
const toLifted = [...toClient, ...askTight, override('judgement.scalpTight')];

/** Left at her chair overnight: what was told of yesterday's skin holds for nothing today. */
export const anotherDay: readonly Behaviour[] = [
  {
    title: 'tests no strand on what was told of another day, and does once she was asked anew',
    guard: 'mayTest',
    check: both(
      refuses(toStrandTest, startStrand('lengths', strong, [], newDay)),
      leadsTo(
        [...toStrandTest, reopen('client', newDay), ...ask(), startStrand('lengths')],
        'strandTest.processing',
      ),
    ),
  },
  {
    title: 'mixes and puts on nothing on another day, and what was decided has to be decided anew',
    guard: 'mayMix',
    check: both(
      refuses(toMix, weigh('lengths', newDay)),
      refuses(toWeighed, apply('lengths', newDay)),
      refuses([...toMix, reopen('client', newDay), ...ask(), plain('OUTCOME_KEPT')], weigh('lengths')),
      leadsTo(
        [...toMix, reopen('client', newDay), ...ask(), plain('OUTCOME_KEPT'), decide(), weigh('lengths')],
        'mix',
      ),
    ),
  },
  {
    title: 'forgets what somebody judged of yesterday’s scalp',
    guard: 'mayTest',
    check: both(
      refuses([...toLifted, reopen('client', newDay), ...askTight], startStrand('lengths')),
      leadsTo([...toLifted, reopen('client'), ...askTight, startStrand('lengths')], 'strandTest.processing'),
    ),
  },
  {
    title: 'goes on from a client step that was told on another day, and has it unsaid from then on',
    guard: 'isSaid',
    check: both(
      leadsTo([open(), answer('client'), confirm('client', newDay)], 'hotTools'),
      refuses([open(), answer('client'), confirm('client', newDay), reopen('client')], confirm('client')),
      leadsTo([open(), answer('client', {}, newDay), confirm('client')], 'hotTools'),
    ),
  },
  {
    title: 'gives no more time on the head on another day',
    guard: 'mayStayOn',
    check: both(
      refuses([...toWeighed, apply('lengths')], extend(true, true, newDay)),
      leadsTo([...toWeighed, apply('lengths'), extend(true, true)], 'colourOn'),
    ),
  },
  {
    title: 'goes on without a word while nothing is asked of the day: a rinse, a look',
    guard: 'isHeadLook',
    check: both(
      leadsTo([...toWeighed, apply('lengths'), look('head', 'lengths', false, newDay)], 'colourOn'),
      refuses([...toWeighed, apply('lengths')], look('strand', 'lengths', false, newDay)),
      leadsTo([...toDecision, reopen('client', newDay)], 'client'),
    ),
  },
];
