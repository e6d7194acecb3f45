/** The power of a pretended tablet: it fails at a chosen step of writing, and then nothing is written any more. */
export interface Power {
  /** Counts one step of writing; true: this is the step at which it fails. Throws when it has failed before. */
  step(): boolean;
  /** How many bytes of the write it fails in reach the disk. */
  readonly tornBytes: number;
  readonly count: () => number;
}

export class PowerCut extends Error {
  override readonly name = 'PowerCut';
}

export const makePower = (failsAtStep = Number.POSITIVE_INFINITY, tornBytes = 0): Power => {
  let steps = 0;
  return {
    step: () => {
      if (steps > failsAtStep) throw new PowerCut('there is no power');
      steps += 1;
      return steps > failsAtStep;
    },
    tornBytes,
    count: () => steps,
  };
};
