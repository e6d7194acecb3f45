import { readHistory } from '../hair/readHistory';
import { listSnips, type Snip } from '../hair/whereToSnip';
import type { Answers } from '../records/forms/asked';
import { listPlannedZones } from './plannedZones';
import { isLifting } from './stops';

/** Where does the map snip for what she wants? Checked by tests/shared/hair/whereToSnip.test.ts. */
export const planSnips = (answers: Answers, history = readHistory(answers)): readonly Snip[] =>
  listSnips(history, {
    zones: listPlannedZones(answers.client?.reach),
    isLifting: answers.client?.service !== undefined && isLifting(answers.client.service),
    regrowthCm: answers.hotTools?.regrowthCm,
  });

/**
 * Which place around the head is the worst one? Where the map snips the oldest hair that is coloured; two of them where the
 * bleach lies elsewhere than the heat. What the hand calls the worst it says by where she irons or the old bleach. So never
 * the nape: it is ironed least. common practice, no source.
 */
export function listWorstPlaces(answers: Answers): readonly Snip['place'][] {
  const snips = planSnips(answers);
  const oldest = snips.at(-1)?.zone;
  return snips.filter(({ zone }) => zone === oldest).map(({ place }) => place);
}
