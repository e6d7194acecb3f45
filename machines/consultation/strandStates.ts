import { and, not } from 'xstate';
import { chart, onward, reopenBefore } from './chartSetup';

/** Off the head: prepared, processing, taken off, recorded; or put aside by name, when it proves nothing. */
export const strandTest = chart.createStateConfig({
  id: 'strandTest',
  initial: 'preparing',
  states: {
    preparing: {
      on: {
        OVERRIDDEN: { guard: and([...onward, 'isOpenRule']), actions: 'note' },
        INCOMPATIBILITY_STARTED: { guard: and([...onward, 'isIncompatibilityDue']), actions: 'note' },
        INCOMPATIBILITY_READ: {
          guard: and([...onward, 'isIncompatibilityRunning', not('isAbsoluteAnswer')]),
          actions: 'note',
        },
        STRAND_STARTED: {
          guard: and([...onward, 'mayTest', 'isZoneFree', 'isMixStillOpen']),
          target: 'processing',
          actions: 'note',
        },
        OUTCOME_CARRIED: {
          guard: and([...onward, 'mayTest', 'isAsLastTime', 'coversPlan', 'isUntested']),
          target: '#decision',
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
        OUTCOME_RECORDED: { guard: and([...onward, 'awaitsOutcome']), actions: 'note' },
        STRAND_DISCARDED: [
          {
            guard: and([...onward, 'isStrandRunning', 'isLastRunning', 'isNothingAwaited']),
            target: 'preparing',
            actions: 'note',
          },
          {
            guard: and([...onward, 'isStrandRunning', 'isLastRunning']),
            target: 'takenOff',
            actions: 'note',
          },
          { guard: and([...onward, 'isStrandRunning']), actions: 'note' },
          { guard: and([...onward, 'awaitsOutcome', 'isDiscardable']), actions: 'note' },
        ],
      },
    },
    takenOff: {
      on: {
        STRAND_DISCARDED: [
          {
            guard: and([...onward, 'awaitsOutcome', 'isDiscardable', 'isLastOutcome']),
            target: 'preparing',
            actions: 'note',
          },
          { guard: and([...onward, 'awaitsOutcome', 'isDiscardable']), actions: 'note' },
        ],
        OUTCOME_RECORDED: [
          { guard: and([...onward, 'awaitsOutcome', 'isLastOutcome']), target: '#decision', actions: 'note' },
          { guard: and([...onward, 'awaitsOutcome']), actions: 'note' },
        ],
      },
    },
  },
});
