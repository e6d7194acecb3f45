import type { Answers } from '../records/forms/asked';
import { isLifting } from './stops';

/**
 * Do the roots come last? On hair that nothing was ever done to, lightener goes on the lengths first: the scalp's warmth
 * makes the first centimetres lift sooner. common practice, no source. Not where somebody does not know, and not where
 * roots are all there is to do. Checked in tests/shared/judgement/rootsLast.test.ts.
 */
export const isRootsLast = ({ client, hotTools }: Answers): boolean =>
  client !== undefined &&
  client.reach !== 'roots' &&
  isLifting(client.service ?? '') &&
  (hotTools?.history ?? []).length > 0 &&
  (hotTools?.history ?? []).every((each) => each === 'none');
