import { expect, it } from 'vitest';
import { ASSUMED_RIGHT, listRight } from '../../../machines/practice/rightDecision';
import { decisions, isFreer, isMixingDecision } from '../../../shared/judgement/decisions';

it.each(decisions)('where the table suggests %s, that is right, and nothing freer is', (suggested) => {
  expect(ASSUMED_RIGHT[suggested][0]).toBe(suggested);
  expect(ASSUMED_RIGHT[suggested].filter((right) => isFreer(right, suggested))).toEqual([]);
});

it('a refusal is right only where she is to be refused, and one more test only where one is asked for', () => {
  for (const right of ['weSayNo', 'testAgain'] as const)
    expect(decisions.filter((suggested) => ASSUMED_RIGHT[suggested].includes(right))).toEqual([right]);
});

it('a no, a cut or more visits are right too once a strand was seen to fail, and nothing that is mixed', () => {
  for (const suggested of decisions) {
    const right = listRight(suggested, true, false);
    expect(right).toEqual(expect.arrayContaining(['weSayNo', 'cutFirst', 'severalVisits']));
    const more = right.filter((each) => !ASSUMED_RIGHT[suggested].includes(each));
    expect(more.some(isMixingDecision)).toBe(false);
    expect(listRight(suggested, false, false)).toEqual(ASSUMED_RIGHT[suggested]);
  }
});

it('where a stop truly stands it is no, whatever broke', () => {
  expect(listRight('weSayNo', true, true)).toEqual(['weSayNo']);
});
