import { describe, it } from 'vitest';
import { listUndertones } from '../../shared/chemistry/undertone';
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
