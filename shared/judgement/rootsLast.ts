import type { Answers } from '../records/forms/asked';
import type { BowlRecord } from '../records/record';
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

/** Are the roots still bare? This bowl is for the lengths of such hair, and nobody has said yet that all is on. */
export const areRootsToCome = (
  answers: Answers,
  { kind, zone, allOnAtMs }: Pick<BowlRecord, 'kind' | 'zone' | 'allOnAtMs'>,
): boolean => kind === 'tested' && zone === 'lengths' && allOnAtMs === null && isRootsLast(answers);
