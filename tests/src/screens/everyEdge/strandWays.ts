import { choose, holdBreaking, press, pressTwice } from '../bench';
import { tap } from '../playStory';
import { correct, decide, fillStrand, pressAll, putAside, sayOutcome, sign, tell } from './hand';
import {
  and,
  asked,
  bothOff,
  bothRun,
  bothSound,
  glassDue,
  glassRuns,
  minute,
  off,
  oneRuns,
  preparing,
  remembers,
} from './starts';
import type { Way } from './way';

const glassReacted = { type: 'INCOMPATIBILITY_READ', answers: { seen: 'reacted' } } as const;

/** Glass, strands, outcomes, decision, and what is left of them in a stop. */
export const strandWays: readonly Way[] = [
  {
    name: 'a glass that shows nothing, then a strand',
    start: glassDue,
    tap: async ({ pass }) => {
      await press('glass-start');
      await pass(31 * minute);
      await press('glass-nothing');
      await press('test-ends');
      await fillStrand();
    },
  },
  { name: 'a glass that reacts', start: glassRuns, tap: () => pressTwice('glass-reacted') },
  {
    name: 'a judgement stop is signed for',
    start: () => asked({ client: { reactions: ['tingled'] } }),
    tap: async () => {
      await press('judge-judgement.tingled');
      await choose('by', 'Opal');
      await sign('seniorAgreed');
      await press('override');
    },
  },
  {
    name: 'a look, more time, another strand',
    start: oneRuns,
    tap: async ({ pass }) => {
      await pass(3 * minute);
      await press('look');
      await tell(['level', '5.5'], ['feel', 'sound']);
      await press('more-time');
      await tell(['minutes', '5'], ['reason', 'liftIsSlow']);
      await press('extend');
      await press('another-strand');
      await fillStrand();
    },
  },
  {
    name: 'both strands off, and what they said',
    start: bothRun,
    tap: async ({ pass }) => {
      await pass(26 * minute);
      await pressAll('take-off', 'take-off');
      await sayOutcome();
      await sayOutcome();
    },
  },
  {
    name: 'both strands break',
    start: bothRun,
    tap: async () => {
      await pressTwice('strand-broke');
      await pressTwice('strand-broke');
    },
  },
  {
    name: 'the only strand is put aside',
    start: oneRuns,
    tap: async () => {
      await press('take-off');
      await putAside();
    },
  },
  {
    name: 'a strand is put aside while another runs',
    start: bothRun,
    tap: async () => {
      await press('take-off');
      await putAside();
    },
  },
  {
    name: 'the last strand is put aside while one waits for its outcome',
    start: () => and(bothRun(), off('ends')),
    tap: async () => {
      await press('take-off');
      await putAside();
    },
  },
  {
    name: 'a strand that is off says at once what it showed, while the other runs',
    start: () => and(bothRun(), off('ends')),
    tap: async () => {
      await press('outcome-ends');
      await sayOutcome();
    },
  },
  {
    name: 'a strand that is off is put aside while the other runs',
    start: () => and(bothRun(), off('ends', 'levelReached')),
    tap: async () => {
      await press('outcome-ends');
      await putAside();
    },
  },
  {
    name: 'two that are off are put aside',
    start: bothOff,
    tap: async () => {
      await putAside();
      await putAside();
    },
  },
  {
    name: 'what was tested is kept',
    start: () => and(bothSound(), { type: 'REOPENED', answers: { step: 'strandTest' } }),
    tap: () => press('keep-outcome'),
  },
  { name: 'test again', start: bothSound, tap: () => decide('testAgain') },
  {
    name: 'several visits, so she is parked',
    start: bothSound,
    tap: async () => {
      await decide('severalVisits');
      await pressAll('go-on', 'way-park');
      await choose('untilAtMs', '7d');
      await press('park');
    },
  },
  {
    name: 'we say no',
    start: bothSound,
    tap: async () => {
      await decide('weSayNo');
      await pressAll('go-on', 'way-end');
      await choose('reason', 'hairTooWeak');
      await pressTwice('WE_SAID_NO');
    },
  },
  { name: 'a new plan', start: bothSound, tap: () => press('change-plan') },
  { name: 'more careful than suggested', start: bothSound, tap: () => decide('depositOnly') },
  {
    name: 'freer than suggested',
    start: bothSound,
    tap: async () => {
      await press('show-freer');
      await choose('decision', 'asPlanned');
      await press('override-freer');
      await choose('by', 'Opal');
      await sign('seniorAgreed');
      await press('override');
      await press('decide-asPlanned');
    },
  },
  {
    name: 'an outcome is taken back',
    start: bothSound,
    tap: async () => {
      await press('retract-lengths');
      await sign('wrongTap');
      await press('retract');
    },
  },
  {
    name: 'stopped: a strand breaks, the other comes off and is recorded, and she tells of more',
    start: () => and(bothRun(), remembers),
    tap: async ({ pass }) => {
      await holdBreaking('ends');
      await pass(30 * minute);
      await press('take-off');
      await press('outcome');
      await sayOutcome();
      await press('tells-of');
      await pressTwice('tells-swelling');
    },
  },
  {
    name: 'stopped by her answer, taken back',
    start: () => and(preparing(), remembers),
    tap: () => correct(),
  },
  {
    name: 'stopped by the glass, taken back',
    start: () => tap(glassRuns(), minute, glassReacted),
    tap: () => correct(),
  },
  {
    name: 'stopped twice, one of them taken back',
    start: () => and(glassRuns(), glassReacted, remembers),
    tap: () => correct('client'),
  },
];
