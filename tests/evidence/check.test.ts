import { describe, expect, it } from 'vitest';
import { checkAnswer, checkFigure } from './check';

const figure = { input: '12 % in volumes', expected: 40, tolerance: 0.5, source: 'the regulation' };

describe('a check', () => {
  it('tells input, got, expected, tolerance and source when it fails', () => {
    expect(() => checkFigure({ ...figure, got: 41 })).toThrow(
      '12 % in volumes: got 41, expected 40 ± 0.5 (the regulation)',
    );
    expect(() => checkAnswer({ input: 'a pull', got: 'slow', expected: 'gummy', source: 'a table' })).toThrow(
      'a pull: got "slow", expected "gummy" (a table)',
    );
  });

  it('holds up to its tolerance and no further, and never for what is no number', () => {
    expect(() => checkFigure({ ...figure, got: 40.5 })).not.toThrow();
    expect(() => checkFigure({ ...figure, got: 39.5 })).not.toThrow();
    expect(() => checkFigure({ ...figure, got: 40.51 })).toThrow();
    expect(() => checkFigure({ ...figure, got: Number.NaN })).toThrow();
    expect(() => checkFigure({ ...figure, got: 40.1, tolerance: 0 })).toThrow();
  });
});
