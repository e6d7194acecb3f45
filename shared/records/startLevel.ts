import type { Answers } from './forms/asked';
import type { StrandAnswers } from './forms/test';

/**
 * How light was this hair before the mix went on? null: nobody knows.
 * As the client's hair was told, dry: at the ends, or at the roots, which have grown as they are. Lengths are of the
 * natural level only where nothing was ever put on them: what was coloured or bleached starts elsewhere, and a start that
 * is too dark makes a curve that ends too early. Wet hair looks darker than dry, common practice, no source: a look may
 * lie below it.
 * Checked in tests/shared/records/startLevel.test.ts.
 */
export function findStartLevel(
  { client, hotTools }: Answers,
  { zone }: Pick<StrandAnswers, 'zone'>,
): number | null {
  if (zone === 'ends') return asLevel(client?.endsLevel);
  const isAsGrown = zone === 'roots' || hotTools?.history?.every((item) => item === 'none') === true;
  return isAsGrown ? asLevel(client?.naturalLevel) : null;
}

const asLevel = (answer: unknown): number | null => (typeof answer === 'number' ? answer : null);
