import { and, not, or } from 'xstate';
import { type AskStep, askSteps } from '../../shared/records/steps';
import { chart, onward, reopenBefore, stop } from './chartSetup';

/** A step that asks: answered as often as needed, confirmed once said, left backwards at will. */
export const asking = (step: AskStep, next: AskStep | 'strandTest') => {
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

/** What is done with what the strand said. Only a mixing decision unties the knot. */
export const decision = chart.createStateConfig({
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
const throwAway = { guard: or(['isBowlWeighed', 'isTonerWeighed']), actions: 'note' } as const;
const apply = and([...onward, 'mayMix', 'isBowlWeighed']);
const applyToner = and([...onward, 'mayTone', 'isTonerWeighed']);
/** What is felt after a rinse, and the toner it allows. It is felt as often as needed until a bowl goes on. */
const feel = {
  guard: and([...onward, or(['isBowlRinsed', 'isTonerWeighed'])]),
  actions: 'note',
} as const;
const weighToner = { guard: and([...onward, 'mayTone', 'isBowlRinsed']), actions: 'note' } as const;

/** A reaction was none, and no water ran: noted beside the care for it; here it only moves. */
const backOnHead = { guard: 'isStillOn', target: '#colourOn' } as const;

/** At the scale. */
export const mix = chart.createStateConfig({
  id: 'mix',
  on: {
    OVERRIDDEN: { guard: and([...onward, 'isScalpRule']), actions: 'note' },
    BOWL_WEIGHED: weigh,
    BOWL_THROWN: throwAway,
    BOWL_APPLIED: [
      { guard: apply, target: '#colourOn', actions: 'note' },
      { guard: applyToner, target: '#colourOn', actions: 'note' },
    ],
    STRETCH_NOTED: feel,
    TONER_WEIGHED: weighToner,
    NO_REACTION: backOnHead,
    REOPENED: reopenBefore('mix', 'isNothingWeighed'),
  },
});

/**
 * On the head. A rinse, a throw or a look is never refused; a new fact voids the permit and leaves nothing. What was
 * absolute over the head stops after the last rinse; answering again does not take it back.
 */
export const colourOn = chart.createStateConfig({
  id: 'colourOn',
  on: {
    ANSWERED: { guard: 'leavesStops', actions: 'note' },
    BOWL_WEIGHED: weigh,
    BOWL_THROWN: throwAway,
    BOWL_APPLIED: [
      { guard: apply, actions: 'note' },
      { guard: applyToner, actions: 'note' },
    ],
    BOWL_ALL_ON: { guard: 'isBowlOn', actions: 'note' },
    STRETCH_NOTED: feel,
    TONER_WEIGHED: weighToner,
    LOOKED: { guard: and(['isHeadLook', 'isBowlOn']), actions: 'note' },
    BOWL_RINSED: [
      { guard: and(['isBowlOn', 'isLastOn', 'isStopOpen']), target: '#stopped', actions: 'note' },
      { guard: and(['isBowlOn', 'isLastOn']), target: '#mix', actions: 'note' },
      { guard: 'isBowlOn', actions: 'note' },
    ],
  },
});

/**
 * A client stop: left by closing, or by a named and reasoned correction of the very answer. What else stops is still
 * written down. A strand that was running is still taken off, and what it said is recorded: it proves nothing, but
 * closes its mix, and awaits nothing more.
 */
export const stopped = chart.createStateConfig({
  id: 'stopped',
  on: {
    ANSWERED: { guard: 'isAbsoluteAnswer', actions: 'note' },
    STRAND_TAKEN_OFF: { guard: 'isStrandRunning', actions: 'note' },
    STRAND_BROKE: { guard: 'isStrandRunning', actions: 'note' },
    OUTCOME_RECORDED: { guard: and([...onward, 'awaitsOutcome']), actions: 'note' },
    NO_REACTION: backOnHead,
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
