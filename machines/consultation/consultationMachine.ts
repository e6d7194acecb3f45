import { and, assign, not, setup } from 'xstate';
import type { ConsultationEvent } from '../../shared/records/event';
import { type AskStep, askSteps, type BackStep, backSteps, isEarlierStep } from '../../shared/records/steps';
import { advanceFacts } from './advanceFacts';
import { type Facts, firstFacts } from './facts';
import { guards } from './guards';

const chart = setup({
  types: {} as { context: { facts: Facts }; events: ConsultationEvent },
  guards,
  actions: {
    /** Every accepted event moves the facts; an edge without it would look like a refusal. */
    note: assign(({ context, event }) => ({ facts: advanceFacts(context.facts, event) })),
  },
});

/** Nothing goes onward while a reaction is looked into or the client is away. */
const onward = ['isCalm', 'isAtBar'] as const;

/** Edges back to each of the steps that lie before this one. */
const reopenBefore = (here: BackStep | 'mix', ...also: readonly 'isNothingWeighed'[]) =>
  backSteps
    .filter((step) => isEarlierStep(step, here))
    .map((step) => ({
      guard: and([...onward, ...also, { type: 'isStep', params: { step } } as const]),
      target: `#${step}` as const,
      actions: 'note' as const,
    }));

const stop = {
  guard: and([...onward, 'isAbsoluteAnswer', 'isNothingOn']),
  target: '#stopped',
  actions: 'note',
} as const;

/** A step that asks: answered as often as needed, confirmed once said, left backwards at will. */
const asking = (step: AskStep, next: AskStep | 'strandTest') => {
  const isThis = { type: 'isStep', params: { step } } as const;
  return chart.createStateConfig({
    id: step,
    on: {
      ANSWERED: [stop, { guard: and([...onward, isThis]), actions: 'note' }],
      STEP_CONFIRMED: { guard: and([...onward, isThis, 'isSaid']), target: `#${next}`, actions: 'note' },
      REOPENED: reopenBefore(step),
    },
  });
};

/** Off the head: prepared, processing, taken off, recorded. */
const strandTest = chart.createStateConfig({
  id: 'strandTest',
  initial: 'preparing',
  states: {
    preparing: {
      on: {
        OVERRIDDEN: { guard: and([...onward, 'isOpenRule']), actions: 'note' },
        INCOMPATIBILITY_STARTED: { guard: and([...onward, 'isIncompatibilityDue']), actions: 'note' },
        INCOMPATIBILITY_READ: [
          {
            guard: and([...onward, 'isIncompatibilityRunning', 'isAbsoluteAnswer']),
            target: '#stopped',
            actions: 'note',
          },
          { guard: and([...onward, 'isIncompatibilityRunning']), actions: 'note' },
        ],
        STRAND_STARTED: {
          guard: and([...onward, 'mayTest', 'isZoneFree', 'isMixStillOpen']),
          target: 'processing',
          actions: 'note',
        },
        OUTCOME_KEPT: {
          guard: and([...onward, 'isEveryStrandCurrent']),
          target: '#decision',
          actions: 'note',
        },
        REOPENED: reopenBefore('strandTest'),
      },
    },
    processing: {
      on: {
        LOOKED: { guard: and(['isStrandLook', 'isStrandRunning']), actions: 'note' },
        STRAND_STARTED: {
          guard: and([...onward, 'mayTest', 'isZoneFree', 'isMixStillOpen']),
          actions: 'note',
        },
        STRAND_TAKEN_OFF: [
          { guard: and(['isStrandRunning', 'isLastRunning']), target: 'takenOff', actions: 'note' },
          { guard: 'isStrandRunning', actions: 'note' },
        ],
        STRAND_BROKE: [
          { guard: and(['isStrandRunning', 'isLastRunning']), target: 'takenOff', actions: 'note' },
          { guard: 'isStrandRunning', actions: 'note' },
        ],
      },
    },
    takenOff: {
      on: {
        OUTCOME_RECORDED: [
          { guard: and([...onward, 'awaitsOutcome', 'isLastOutcome']), target: '#decision', actions: 'note' },
          { guard: and([...onward, 'awaitsOutcome']), actions: 'note' },
        ],
      },
    },
  },
});

/** What is done with what the strand said. Only a mixing decision unties the knot. */
const decision = chart.createStateConfig({
  id: 'decision',
  on: {
    OVERRIDDEN: { guard: and([...onward, 'isFreerRule']), actions: 'note' },
    DECIDED: [
      {
        guard: and([...onward, 'mayDecide', { type: 'isDecision', params: { decision: 'testAgain' } }]),
        target: '#strandTest',
        actions: 'note',
      },
      { guard: and([...onward, 'mayDecide', 'isMixing', 'opensAZone']), target: '#mix', actions: 'note' },
      { guard: and([...onward, 'mayDecide', not('isMixing')]), actions: 'note' },
    ],
    PLAN_CHANGED: { guard: and(onward), target: '#client', actions: 'note' },
    OUTCOME_RETRACTED: {
      guard: and([...onward, 'isRetractable']),
      target: '#strandTest.takenOff',
      actions: 'note',
    },
    REOPENED: reopenBefore('decision'),
  },
});

const weigh = { guard: and([...onward, 'mayMix', 'isBowlFree']), actions: 'note' } as const;
const throwAway = { guard: 'isBowlWeighed', actions: 'note' } as const;
const apply = and([...onward, 'mayMix', 'isBowlWeighed']);

/** At the scale. */
const mix = chart.createStateConfig({
  id: 'mix',
  on: {
    BOWL_WEIGHED: weigh,
    BOWL_THROWN: throwAway,
    BOWL_APPLIED: { guard: apply, target: '#colourOn', actions: 'note' },
    FINISHED: {
      guard: and([...onward, 'isBowlUsed', 'isNothingWeighed']),
      target: '#finish',
      actions: 'note',
    },
    REOPENED: reopenBefore('mix', 'isNothingWeighed'),
  },
});

/** On the head. A rinse, a throw or a look is never refused; a new fact voids the permit and leaves nothing. */
const colourOn = chart.createStateConfig({
  id: 'colourOn',
  on: {
    ANSWERED: { actions: 'note' },
    BOWL_WEIGHED: weigh,
    BOWL_THROWN: throwAway,
    BOWL_APPLIED: { guard: apply, actions: 'note' },
    LOOKED: { guard: and(['isHeadLook', 'isBowlOn']), actions: 'note' },
    BOWL_RINSED: [
      { guard: and(['isBowlOn', 'isLastOn']), target: '#mix', actions: 'note' },
      { guard: 'isBowlOn', actions: 'note' },
    ],
  },
});

/** A client stop: left by closing, or by a named and reasoned correction of the very answer. */
const stopped = chart.createStateConfig({
  id: 'stopped',
  on: {
    ANSWERED: {},
    CORRECTED: [
      ...askSteps.map((step) => ({
        guard: and([
          ...onward,
          'isAbsoluteSubject',
          'isOnlyAbsolute',
          { type: 'isCorrecting', params: { step } } as const,
        ]),
        target: `#${step}` as const,
        actions: 'note' as const,
      })),
      { guard: and([...onward, 'isAbsoluteSubject', not('isOnlyAbsolute')]), actions: 'note' },
    ],
  },
});

/**
 * One consultation, from the first question to the last: what may follow what.
 * Reads as a table of contents: guards are claims over facts, the one action moves the facts. No clock, no chance.
 */
export const consultationMachine = chart.createMachine({
  id: 'consultation',
  initial: 'open',
  context: { facts: firstFacts },
  states: {
    open: {
      type: 'parallel',
      on: {
        CALLED_OFF: { guard: and(['isCalm', 'isNothingOn']), target: '#calledOff', actions: 'note' },
        WE_SAID_NO: { guard: and(['isCalm', 'isNothingOn']), target: '#weSaidNo', actions: 'note' },
        CLIENT_SAID_NO: { guard: and(['isCalm', 'isNothingOn']), target: '#clientSaidNo', actions: 'note' },
        CLOCK_CORRECTED: { actions: 'note' },
        ALARM_ACKNOWLEDGED: { actions: 'note' },
        CLOCK_EXTENDED: { guard: 'isWithinLimit', actions: 'note' },
      },
      states: {
        care: {
          initial: 'calm',
          states: {
            calm: { on: { REACTION_SUSPECTED: { target: 'suspected', actions: 'note' } } },
            suspected: {
              on: {
                NO_REACTION: { target: 'calm', actions: 'note' },
                REACTION_RECORDED: { target: 'seen', actions: 'note' },
              },
            },
            seen: { on: { CARE_GIVEN: { guard: 'isNothingOn', target: '#reaction', actions: 'note' } } },
          },
        },
        place: {
          initial: 'atBar',
          states: {
            atBar: {
              on: {
                PARKED: {
                  guard: and(['isCalm', 'isNothingRunning', 'isNothingWeighed']),
                  target: 'parked',
                  actions: 'note',
                },
              },
            },
            parked: { on: { RESUMED: { guard: 'isCalm', target: 'atBar', actions: 'note' } } },
          },
        },
        way: {
          initial: 'unopened',
          on: {
            ANSWERED: stop,
            SKIN_TEST_NOTED: [
              { guard: and(['isAbsoluteAnswer', 'isNothingOn']), target: '#stopped', actions: 'note' },
              { actions: 'note' },
            ],
          },
          states: {
            unopened: {
              on: {
                OPENED: [
                  { guard: 'inherits', target: '#stopped', actions: 'note' },
                  { target: '#client', actions: 'note' },
                ],
              },
            },
            client: asking('client', 'hotTools'),
            hotTools: asking('hotTools', 'feelHair'),
            feelHair: asking('feelHair', 'heatSpray'),
            heatSpray: asking('heatSpray', 'strandTest'),
            strandTest,
            decision,
            mix,
            colourOn,
            finish: {
              id: 'finish',
              on: {
                ANSWERED: {},
                SKIN_TEST_NOTED: { actions: 'note' },
                PLAN_GIVEN: { guard: and(onward), target: '#done', actions: 'note' },
              },
            },
            stopped,
          },
        },
      },
    },
    done: { id: 'done', type: 'final' },
    weSaidNo: { id: 'weSaidNo', type: 'final' },
    clientSaidNo: { id: 'clientSaidNo', type: 'final' },
    calledOff: { id: 'calledOff', type: 'final' },
    reaction: { id: 'reaction', type: 'final' },
  },
});
