import { initialTransition, type StateValue, transition } from 'xstate';
import type { ConsultationState } from '../../../machines/consultation/consultation';
import { consultationMachine } from '../../../machines/consultation/consultationMachine';
import { guards } from '../../../machines/consultation/guards';
import type { ConsultationEvent } from '../../../shared/records/event';

export type GuardName = keyof typeof guards;
export const guardNames = Object.keys(guards) as readonly GuardName[];

/** The way to what a behaviour is about was refused: it has shown nothing of its own. */
export class NeverGotThere extends Error {
  override readonly name = 'NeverGotThere';
}

/** The chart, with the few questions a behaviour asks of it. */
export interface ChartUnderTest {
  /** The state after these events, each of which has to be accepted. */
  reach(events: readonly ConsultationEvent[], from?: ConsultationState): ConsultationState;
  /** The state after one event; null when it is refused. */
  send(state: ConsultationState, event: ConsultationEvent): ConsultationState | null;
}

/** The chart with one guard that says "true" to everything. */
export const withFault = (fault: string) => {
  if (!Object.hasOwn(guards, fault)) throw new Error(`there is no guard called ${fault}`);
  return consultationMachine.provide({ guards: { [fault]: () => true } });
};

/** The chart as it is, or with one guard planted that says "true" to everything: `FAULT_GUARD` names it. */
export function makeChartUnderTest(fault: string = process.env.FAULT_GUARD ?? ''): ChartUnderTest {
  const machine = fault === '' ? consultationMachine : withFault(fault);
  const [begin] = initialTransition(machine);
  const send: ChartUnderTest['send'] = (state, event) => {
    const [next] = transition(machine, state, event);
    return next === state ? null : next;
  };
  return {
    send,
    reach: (events, from = begin) =>
      events.reduce((state, event, index) => {
        const next = send(state, event);
        if (next !== null) return next;
        throw new NeverGotThere(`event ${index}, ${event.type}, was refused in ${nameWay(state)}`);
      }, from),
  };
}

/** Where on the way is this state: `mix`, `strandTest.processing`, or the name of an ending? */
export const nameWay = ({ value }: { readonly value: StateValue }): string => {
  if (typeof value === 'string') return value;
  const { open } = value;
  return typeof open === 'object' ? joinValue(open.way ?? '') : joinValue(value);
};

const joinValue = (value: StateValue): string =>
  typeof value === 'string'
    ? value
    : Object.entries(value)
        .map(([name, inner]) => (inner === undefined ? name : `${name}.${joinValue(inner)}`))
        .join(' ');
