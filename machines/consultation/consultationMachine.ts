import { and } from 'xstate';
import { chart, onward, stop } from './chartSetup';
import { firstFacts } from './facts';
import { strandTest } from './strandStates';
import { asking, colourOn, decision, mix, stopped } from './wayStates';

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
        CLOCK_EXTENDED: { guard: and(['isCalm', 'isWithinLimit', 'mayStayOn']), actions: 'note' },
      },
      states: {
        care: {
          initial: 'calm',
          states: {
            calm: {
              on: {
                REACTION_SUSPECTED: { target: 'suspected', actions: 'note' },
                // Noted by the head it is seen on; here it only moves.
                LOOKED: { guard: and(['isHeadLook', 'isBowlOn', 'isStinging']), target: 'suspected' },
              },
            },
            suspected: {
              on: {
                NO_REACTION: { target: 'calm', actions: 'note' },
                REACTION_RECORDED: { target: 'seen', actions: 'note' },
              },
            },
            seen: {
              on: {
                // What shows later is added to what was seen.
                REACTION_RECORDED: { actions: 'note' },
                CARE_GIVEN: { guard: 'isNothingOn', target: '#reaction', actions: 'note' },
              },
            },
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
            CORRECTED: { guard: and([...onward, 'isSkinTestNote']), actions: 'note' },
            FINISHED: {
              guard: and([...onward, 'isRinsed', 'isNothingWeighed', 'isNothingRunning']),
              target: '#finish',
              actions: 'note',
            },
            SKIN_TEST_NOTED: [
              { guard: and(['isAbsoluteAnswer', 'isNothingOn']), target: '#stopped', actions: 'note' },
              { guard: 'leavesStops', actions: 'note' },
            ],
            INCOMPATIBILITY_READ: [
              {
                guard: and(['hasGlass', 'isAbsoluteAnswer', 'isNothingOn']),
                target: '#stopped',
                actions: 'note',
              },
              { guard: and(['hasGlass', 'isAbsoluteAnswer']), actions: 'note' },
            ],
          },
          states: {
            unopened: {
              on: {
                ANSWERED: {},
                SKIN_TEST_NOTED: {},
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
                // What is told late stops nothing here; it is handed on to the next visit.
                ANSWERED: { guard: 'isAbsoluteAnswer', actions: 'note' },
                FINISHED: {},
                SKIN_TEST_NOTED: { guard: 'leavesStops', actions: 'note' },
                INCOMPATIBILITY_READ: {
                  guard: and(['hasGlass', 'isAbsoluteAnswer']),
                  actions: 'note',
                },
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
