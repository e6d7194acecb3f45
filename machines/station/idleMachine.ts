import { assign, setup } from 'xstate';
import { beginsAnew, type IdleTick, isCoverDue, isWarningDue } from './idlePhase';

type IdleEvent =
  | ({ readonly type: 'TICKED' } & IdleTick)
  /** A finger or a key, on whatever is shown. */
  | { readonly type: 'TOUCHED'; readonly nowMs: number }
  /** A whole tap on the warning or on the cover itself. */
  | { readonly type: 'STAYED'; readonly nowMs: number };

const chart = setup({
  types: {} as {
    context: { readonly touchedAtMs: number };
    input: { readonly nowMs: number };
    events: IdleEvent;
  },
  guards: {
    isCoverDue: ({ context, event }) => event.type === 'TICKED' && isCoverDue(context.touchedAtMs, event),
    isWarningDue: ({ context, event }) => event.type === 'TICKED' && isWarningDue(context.touchedAtMs, event),
    beginsAnew: ({ context, event }) => event.type === 'TICKED' && beginsAnew(context.touchedAtMs, event),
  },
  actions: { touch: assign(({ event }) => ({ touchedAtMs: event.nowMs })) },
});

/**
 * Is somebody at this tablet? Awake, warned for the last 20 s, covered. A tablet that slept past both is covered at its
 * first tick. Warned or covered it hears whole taps alone: a finger that only comes down would uncover what it then presses.
 * No clock of its own. Checked in tests/machines/station/idleMachine.test.ts.
 */
export const idleMachine = chart.createMachine({
  id: 'idle',
  initial: 'awake',
  context: ({ input }) => ({ touchedAtMs: input.nowMs }),
  states: {
    awake: {
      on: {
        TOUCHED: { actions: 'touch' },
        TICKED: [
          { guard: 'isCoverDue', target: 'covered' },
          { guard: 'isWarningDue', target: 'warned' },
          { guard: 'beginsAnew', actions: 'touch' },
        ],
      },
    },
    warned: {
      on: {
        STAYED: { target: 'awake', actions: 'touch' },
        TICKED: [
          { guard: 'isCoverDue', target: 'covered' },
          { guard: 'beginsAnew', target: 'awake', actions: 'touch' },
        ],
      },
    },
    covered: { on: { STAYED: { target: 'awake', actions: 'touch' } } },
  },
});
