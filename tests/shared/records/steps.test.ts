import { expect, it } from 'vitest';
import { askSteps, backSteps, isEarlierStep, waySteps } from '../../../shared/records/steps';

it('exactly one of two different steps of the way is the earlier one, and none is earlier than itself', () => {
  for (const [index, one] of waySteps.entries()) {
    for (const [place, other] of waySteps.entries()) expect(isEarlierStep(one, other)).toBe(index < place);
  }
});

it('one can go back to whatever was asked, to the strand test and to the decision, and to nothing after the knot', () => {
  expect(backSteps).toEqual(waySteps.slice(0, waySteps.indexOf('mix')));
  expect(waySteps.slice(0, askSteps.length)).toEqual(askSteps);
});
