import { figures } from '../figures';

/** What a wet strand did when it was let go: the same three taps at the feel and at an outcome. */
export const stretchTaps = {
  springsBack: 'Springs back',
  staysLong: 'Slow, stays long',
  snaps: 'Snaps or mush',
} as const;

/** How it is pulled, wherever it is asked. */
export const pullHint = `Pull the curl straight first, then lightly, a quarter longer (${figures.lightPullFrom} to ${figures.lightPull}), never more.`;
