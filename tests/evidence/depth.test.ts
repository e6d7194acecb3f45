import { describe, it } from 'vitest';
import {
  findLift,
  findNeutraliser,
  findUndertone,
  type Level,
  readLevel,
  type Tone,
} from '../../shared/chemistry/depth';
import { type PeroxidePercent, toVolumes, type Volume } from '../../shared/chemistry/peroxide';
import { brand } from '../../shared/units/brand';
import { checkAnswer } from './check';

const textbooks = 'from memory: cosmetology textbooks';
const practice = 'common practice, no source';

describe('a level', () => {
  it.each([
    [1, true],
    [10, true],
    [7.5, true],
    [0.5, false],
    [10.5, false],
    [7.25, false],
    [-1, false],
    [Number.NaN, false],
    [Number.POSITIVE_INFINITY, false],
  ])('of %d is one: %s', (value, expected) => {
    const source = 'depth 1 black … 10 lightest blond, in half steps';
    checkAnswer({ input: `level ${value}`, got: readLevel(value).ok, expected, source });
  });
});

describe('the undertone', () => {
  it.each([
    [1, 'darkRedBrown'],
    [2, 'redBrown'],
    [3, 'red'],
    [4, 'redOrange'],
    [5, 'orange'],
    [6, 'goldOrange'],
    [7, 'gold'],
    [8, 'yellowGold'],
    [9, 'yellow'],
    [10, 'paleYellow'],
    [7.5, 'gold'],
    [9.5, 'yellow'],
  ])('met at level %d is %s', (level, expected) => {
    const got = findUndertone(brand<Level>(level));
    checkAnswer({ input: `level ${level}`, got, expected, source: textbooks });
  });
});

describe('neutralising', () => {
  it.each([
    ['violet', 'yellow'],
    ['blue', 'orange'],
    ['green', 'red'],
  ] as const)('pairs %s and %s, both ways', (a: Tone, b: Tone) => {
    checkAnswer({ input: a, got: findNeutraliser(a), expected: b, source: textbooks });
    checkAnswer({ input: b, got: findNeutraliser(b), expected: a, source: textbooks });
  });
});

describe('lift of tint on natural hair', () => {
  it.each([
    [3, 0, 0],
    [6, 1, 2],
    [9, 2, 3],
    [12, 3, 4],
  ])('by a developer of %d %% is %d to %d levels', (label, atLeast, atMost) => {
    const got = findLift(toVolumes(brand<PeroxidePercent>(label)));
    checkAnswer({ input: `${label} %`, got, expected: { atLeast, atMost }, source: practice });
  });

  it('has no figure for a strength the trade has none for', () => {
    const got = findLift(brand<Volume>(25));
    checkAnswer({ input: '25 vol', got: got ?? 'no figure', expected: 'no figure', source: practice });
  });
});
