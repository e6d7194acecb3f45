import type { IngredientFindingId } from '../../../shared/chemistry/ingredients/tellIngredients';
import type { FindingSaid, MakerSaid } from '../sprayTold';

/** What is read at the chair: a line each of what belongs together, in the order in which it matters there. */
const topics = {
  formaldehyde: ['formaldehyde', 'formaldehydeReleaser'],
  kidney: ['glyoxylicAcid'],
  tooHot: [],
  fire: ['alcoholBurns', 'isopropylBurns', 'propellantBurns'],
  scorches: ['sugarScorches', 'sugarCaramelises', 'sugarBrownsWithProtein'],
  silicone: ['siliconeSprayHelpsNoMore', 'siliconeGivesFormaldehyde', 'dimethiconeBreaksDown'],
  stays: ['whatStays', 'siliconeLeavesOrStays'],
  leaves: ['carriersLeave', 'd4Boils', 'd5Boils', 'd6Boils', 'boilingIsNotLeaving'],
  maker: [],
  measured: ['filmFormersMeasured', 'polyquaterniumNoFigure'],
  dryer: ['siliconeHoldsDryerHeat'],
  reading: ['nothingListed', 'nameUnknown', 'nameCorrected'],
} as const satisfies Readonly<Record<string, readonly IngredientFindingId[]>>;

type Topic = keyof typeof topics;

const order = Object.keys(topics) as readonly Topic[];

/** So many lines are read at a glance from the chair. Assumed because a panel of more is read by nobody. */
export const ASSUMED_CHAIR_LINES = 4;

export interface ChairLine {
  readonly topic: Topic;
  readonly says: string;
  /** It harms her or whoever stands beside her, or the maker himself says less than today's setting. */
  readonly isGrave: boolean;
}

const grave: ReadonlySet<Topic> = new Set(['formaldehyde', 'kidney', 'tooHot']);

/**
 * What of all that the list tells is read at the chair, worst first, a line a topic and four at the most?
 * What only begins above today's setting stands behind Why. Checked in tests/src/screens/sprayTold.test.tsx.
 */
export function pickChairLines(told: readonly FindingSaid[], maker: MakerSaid | null): readonly ChairLine[] {
  const isMaker = (topic: Topic) => topic === (maker?.isAbove === true ? 'tooHot' : 'maker');
  const findSays = (topic: Topic): string | undefined => {
    if (isMaker(topic)) return maker?.says;
    const ids: readonly IngredientFindingId[] = topics[topic];
    return ids
      .map((wanted) => told.find(({ id, plate }) => id === wanted && plate !== 'below'))
      .find((found) => found !== undefined)?.says;
  };
  return order
    .map((topic) => ({ topic, says: findSays(topic) ?? '', isGrave: grave.has(topic) }))
    .filter(({ says }) => says !== '')
    .slice(0, ASSUMED_CHAIR_LINES);
}
