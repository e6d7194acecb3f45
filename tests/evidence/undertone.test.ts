import { describe, it } from 'vitest';
import { listNearUndertones, listUndertones } from '../../shared/chemistry/undertone';
import { checkAnswer } from './check';

const source = 'from memory: cosmetology textbooks';

describe('the undertone to expect', () => {
  it.each([
    [1, ['darkRedBrown']],
    [4, ['redOrange']],
    [5, ['orange']],
    [5.5, ['orange', 'goldOrange']],
    [7, ['gold']],
    [8, ['yellowGold']],
    [9.5, ['yellow', 'paleYellow']],
    [10, ['paleYellow']],
    [11, []],
    [0, []],
    [Number.NaN, []],
  ])('at level %d is %j', (level, expected) => {
    checkAnswer({ input: `level ${level}`, got: listUndertones(level), expected, source });
  });
});

describe('the undertones beside it', () => {
  it.each([
    [6, ['orange', 'gold']],
    [5.5, ['redOrange', 'orange', 'goldOrange', 'gold']],
    [1, ['redBrown']],
    [1.5, ['darkRedBrown', 'redBrown', 'red']],
    [9.5, ['yellowGold', 'yellow', 'paleYellow']],
    [10, ['yellow']],
    [Number.NaN, []],
  ])('at level %d are %j', (level, expected) => {
    checkAnswer({ input: `level ${level}`, got: listNearUndertones(level), expected, source });
  });
});
