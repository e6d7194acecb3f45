import { figures } from '../figures';

/** What a wet strand did when it was let go: the same three taps at the feel and at an outcome. */
export const stretchTaps = {
  springsBack: 'Recupera',
  staysLong: 'Lento, queda largo',
  snaps: 'Roto o papilla',
} as const;

/** How it is pulled, wherever it is asked. */
export const pullHint = `Primero estire el rizo hasta dejarlo recto; luego suave, un cuarto más (${figures.lightPullFrom} a ${figures.lightPull}), nunca más.`;
