import { expect } from 'vitest';
import type { ConsultationEvent } from '../../../../shared/records/event';
import { type ChartUnderTest, type GuardName, nameWay } from '../chartUnderTest';

/** One thing the chart does, in a sentence, and the guard it would not do it without. */
export interface Behaviour {
  readonly title: string;
  readonly guard: GuardName;
  readonly check: (chart: ChartUnderTest) => void;
}

type Way = readonly ConsultationEvent[];

/** After this way, the chart refuses each of these events. */
export const refuses =
  (way: Way, ...refused: readonly ConsultationEvent[]): Behaviour['check'] =>
  (chart) => {
    const state = chart.reach(way);
    for (const event of refused) {
      expect(chart.send(state, event) === null, `${event.type} refused in ${nameWay(state)}`).toBe(true);
    }
  };

/** After this way, the chart is here. */
export const leadsTo =
  (way: Way, where: string): Behaviour['check'] =>
  (chart) => {
    const last = way.at(-1);
    const before = chart.reach(way.slice(0, -1));
    const state = last === undefined ? before : chart.send(before, last);
    expect(state === null ? `${last?.type} refused` : nameWay(state)).toBe(where);
  };

export const both =
  (...checks: readonly Behaviour['check'][]): Behaviour['check'] =>
  (chart) => {
    for (const check of checks) check(chart);
  };
