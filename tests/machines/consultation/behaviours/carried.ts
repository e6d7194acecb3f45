import {
  answer,
  apply,
  carry,
  correct,
  decide,
  discard,
  override,
  plain,
  record,
  reopen,
  retract,
  rinse,
  startStrand,
  strong,
  takeOff,
  weigh,
} from '../tokenEvents';
import { ask, toClient, toDecision, toProcessing, toStrandTest } from '../ways';
import { type Behaviour, both, leadsTo, refuses } from './behaviour';

const everyZone = { sound: ['lengths', 'ends'] } as const;
const toCarried = [...toStrandTest, carry(everyZone)];
const tingled = { said: 'judgement', rules: ['judgement.tingled'] } as const;
const raised = { rules: tingled.rules } as const;
const toRaised = [
  ...toClient,
  ...ask({
    client: answer('client', tingled),
    hotTools: answer('hotTools', raised),
    feelHair: answer('feelHair', raised),
    heatSpray: answer('heatSpray', raised),
  }),
];

/** The outcome of last time, carried to the same deposit: no strand of today, and all the rest of the gate. */
export const carried: readonly Behaviour[] = [
  {
    title: 'carries last time’s outcome to the decision, and to a bowl once it is decided',
    guard: 'isAsLastTime',
    check: both(
      leadsTo(toCarried, 'decision'),
      refuses(toCarried, weigh('lengths')),
      leadsTo([...toCarried, decide(), weigh('lengths'), apply('lengths')], 'colourOn'),
      refuses(toStrandTest, carry({ ...everyZone, isAsLastTime: false })),
    ),
  },
  {
    title: 'carries to every zone of the plan and to no other',
    guard: 'coversPlan',
    check: both(
      refuses(toStrandTest, carry({ sound: ['lengths'] }), carry({ rough: ['roots'] }), carry()),
      refuses(toStrandTest, carry({ sound: ['lengths', 'ends'], rough: ['roots'] })),
      leadsTo([...toStrandTest, carry({ sound: ['ends'], rough: ['lengths'] })], 'decision'),
      refuses(
        [
          ...toClient,
          ...ask({
            client: answer('client', { planned: [] }),
            hotTools: answer('hotTools', { planned: [] }),
            feelHair: answer('feelHair', { planned: [] }),
            heatSpray: answer('heatSpray', { planned: [] }),
          }),
        ],
        carry(),
      ),
    ),
  },
  {
    title: 'carries nothing beside a strand of today, whatever it said',
    guard: 'isUntested',
    check: both(
      refuses([...toDecision, reopen('strandTest')], carry(everyZone)),
      refuses(
        [...toProcessing, takeOff('lengths'), record('lengths', 'gummy'), reopen('strandTest')],
        carry(everyZone),
      ),
      leadsTo([...toProcessing, discard('lengths'), carry(everyZone)], 'decision'),
    ),
  },
  {
    title: 'carries nothing a second time: after the head, after a stop, after another answer',
    guard: 'isUntested',
    check: both(
      refuses([...toCarried, reopen('strandTest')], carry(everyZone)),
      refuses(
        [...toCarried, decide(), weigh('lengths'), apply('lengths'), rinse('lengths'), reopen('strandTest')],
        carry(everyZone),
      ),
      refuses(
        [...toCarried, answer('client', { said: 'absolute' }), correct('client'), ...ask()],
        carry(everyZone),
      ),
      refuses(
        [...toCarried, reopen('client'), answer('client', { bearsOnPlan: true }), ...ask()],
        carry(everyZone),
      ),
    ),
  },
  {
    title: 'carries nothing past a judgement that is open, and does once it is lifted',
    guard: 'mayTest',
    check: both(
      refuses(toRaised, carry(everyZone)),
      leadsTo([...toRaised, override('judgement.tingled'), carry(everyZone)], 'decision'),
    ),
  },
  {
    title:
      'takes a carried outcome not back as a wrong tap; a strand of today takes its place, and that can be',
    guard: 'isRetractable',
    check: both(
      refuses(toCarried, retract('lengths')),
      leadsTo(
        [
          ...toCarried,
          reopen('strandTest'),
          startStrand('lengths', strong),
          takeOff('lengths'),
          record('lengths'),
          retract('lengths'),
        ],
        'strandTest.takenOff',
      ),
    ),
  },
  {
    title: 'keeps what was carried when the way goes back and nothing changed',
    guard: 'isEveryStrandCurrent',
    check: both(
      leadsTo([...toCarried, reopen('client'), ...ask(), plain('OUTCOME_KEPT')], 'decision'),
      refuses([...toCarried, reopen('strandTest')], plain('OUTCOME_KEPT', { lapsed: ['lengths'] })),
    ),
  },
  {
    title: 'mixes nothing on a carried outcome that holds no more at that moment',
    guard: 'mayMix',
    check: both(
      refuses([...toCarried, decide()], weigh('lengths', { lapsed: ['lengths'] })),
      refuses([...toCarried, decide(), weigh('lengths')], apply('lengths', { lapsed: ['lengths'] })),
    ),
  },
];
