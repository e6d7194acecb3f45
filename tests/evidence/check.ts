import { expect } from 'vitest';

/** One figure held against its source. `input` is whatever leads to it, as a reader would say it. */
export interface Check {
  readonly input: string;
  readonly got: number;
  readonly expected: number;
  /** 0 asks for the very same number. */
  readonly tolerance: number;
  readonly source: string;
}

/** Holds a figure against its source; a failure tells input, got, expected, tolerance and source. NaN never holds. */
export function checkFigure({ input, got, expected, tolerance, source }: Check): void {
  const message = `${input}: got ${got}, expected ${expected} ± ${tolerance} (${source})`;
  expect(Math.abs(got - expected) <= tolerance, message).toBe(true);
}

/** Holds an answer that is no figure (a verdict, a list, a refusal) against its source. */
export function checkAnswer(check: {
  readonly input: string;
  readonly got: unknown;
  readonly expected: unknown;
  readonly source: string;
}): void {
  const { input, got, expected, source } = check;
  const message = `${input}: got ${JSON.stringify(got)}, expected ${JSON.stringify(expected)} (${source})`;
  expect(got, message).toEqual(expected);
}
