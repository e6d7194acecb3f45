import { placeLandmarks } from '../../../shared/hair/landmarks';
import { readHistory } from '../../../shared/hair/readHistory';
import type { Snip } from '../../../shared/hair/whereToSnip';
import { placeZone, type Stretch } from '../../../shared/hair/zonePlaces';
import { computeBoilingPoint } from '../../../shared/heat/boilingPoint';
import type { HairHistory } from '../../../shared/heat/hairHistory';
import { computeProfile, computeTip, type HairAt } from '../../../shared/heat/profile';
import { listReached, type Reached } from '../../../shared/heat/reached';
import { planSnips } from '../../../shared/judgement/planSnips';
import type { Answers } from '../../../shared/records/forms/asked';
import type { Settings } from '../../../shared/records/settings';
import type { Celsius } from '../../../shared/units/temperature';

/** So many places are reckoned along the strand: closer than a pixel of the map. */
const PLACES = 120;

/** Everything that is reckoned of one head of hair, before any word. */
export interface HairView {
  readonly history: HairHistory;
  readonly lengthCm: number;
  readonly profile: readonly HairAt[];
  readonly tip: HairAt;
  readonly landmarks: ReturnType<typeof placeLandmarks>;
  readonly reach: Stretch | null;
  readonly snips: readonly Snip[];
  readonly reached: readonly Reached[];
  readonly boilsAt: Celsius;
}

/** How far does the colour go along the strand? Null while nobody has said. */
function findReach({ client, hotTools }: Answers, lengthCm: number): Stretch | null {
  switch (client?.reach) {
    case undefined:
      return null;
    case 'fullHead':
      return { fromCm: 0, toCm: lengthCm };
    case 'endsOut':
      return placeZone('lengths', lengthCm);
    case 'roots':
      return placeZone('roots', lengthCm, hotTools?.regrowthCm);
  }
}

/** What do her answers come to, from the scalp to the tip? Worked out anew whenever one of them changes. */
export function viewHair(answers: Answers, settings: Settings): HairView {
  const history = readHistory(answers);
  const lengthCm = history.lengthCm.typical;
  const places = Array.from({ length: PLACES }, (_, index) => (index * lengthCm) / (PLACES - 1));
  const profile = computeProfile(history, places);
  const boilsAt = computeBoilingPoint(settings.altitudeM);
  const { client } = answers;
  return {
    history,
    lengthCm,
    profile,
    tip: computeTip(history),
    landmarks: placeLandmarks(client?.length, lengthCm),
    reach: findReach(answers, lengthCm),
    snips: planSnips(answers, history),
    reached: listReached(history, boilsAt),
    boilsAt,
  };
}
