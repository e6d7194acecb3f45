import { describe, expect, test } from 'vitest';
import { everyBehaviour, judgeBehaviour } from './behaviours/all';
import { guardNames, makeChartUnderTest } from './chartUnderTest';

declare module 'vitest' {
  interface TaskMeta {
    /** The behaviours that caught a planted fault, those named for the guard first: `npm run faults` prints them. */
    caughtBy?: readonly string[];
  }
}

describe('with one guard that says "true" to everything', () => {
  for (const guard of guardNames) {
    test(`${guard} is caught by a behaviour named for it`, ({ task }) => {
      const chart = makeChartUnderTest(guard);
      const broken = everyBehaviour.filter((behaviour) => judgeBehaviour(behaviour, chart) === 'broken');
      const named = broken.filter((behaviour) => behaviour.guard === guard);
      const others = broken.filter((behaviour) => behaviour.guard !== guard);
      task.meta.caughtBy = [...named, ...others].map(({ title }) => title);
      expect(named.map(({ title }) => title)).not.toEqual([]);
    });
  }
});

test('the chart as it is breaks none of them, and a guard that does not exist cannot be replaced', () => {
  const chart = makeChartUnderTest('');
  expect(everyBehaviour.filter((behaviour) => judgeBehaviour(behaviour, chart) !== 'holds')).toEqual([]);
  expect(() => makeChartUnderTest('mayDoAnything')).toThrow('no guard called');
});
