import { describe, expect, test } from 'vitest';
import { behaviours, everyBehaviour } from './behaviours/all';
import { guardNames, makeChartUnderTest } from './chartUnderTest';

// FAULT_GUARD=mayMix npx vitest run --project node behaviour.test.ts shows one planted fault being caught.
const chart = makeChartUnderTest();

for (const [subject, each] of Object.entries(behaviours)) {
  describe(subject, () => {
    for (const { title, check } of each) test(title, () => check(chart));
  });
}

test('every guard has a behaviour that is named for it, and no two behaviours share a title', () => {
  expect([...new Set(everyBehaviour.map(({ guard }) => guard))].sort()).toEqual([...guardNames].sort());
  expect(new Set(everyBehaviour.map(({ title }) => title)).size).toBe(everyBehaviour.length);
});
