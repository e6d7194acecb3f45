import type { IngredientFindingId } from '../../../shared/chemistry/ingredients/tellIngredients';
import type { HeatSprayAnswers } from '../../../shared/records/forms/heatSpray';
import { readMark } from '../../words/marks';
import type { Words } from '../../words/words';
import type { FindingSaid, MakerSaid } from '../sayIngredients';

/** What is read at the chair: a line each of what belongs together, in the order in which it matters there. */
const topics = {
  formaldehyde: ['formaldehyde', 'formaldehydeReleaser'],
  kidney: ['glyoxylicAcid', 'glyoxylicKin'],
  tooHot: [],
  fire: ['alcoholBurns', 'isopropylBurns', 'propellantBurns'],
  wets: ['waterWets'],
  scorches: ['sugarScorches', 'sugarCaramelises', 'sugarBrownsWithProtein', 'sucroseBrownsOnceSplit'],
  /** Not where it breaks down without air: that would read as fine up to there. */
  silicone: ['siliconeSprayHelpsNoMore', 'siliconeGivesFormaldehyde'],
  stays: ['whatStays', 'siliconeLeavesOrStays'],
  leaves: ['carriersLeave', 'd4Boils', 'd5Boils', 'd6Boils', 'boilingIsNotLeaving'],
  maker: [],
  measured: ['filmFormersMeasured', 'polyquaterniumNoFigure'],
  dryer: ['siliconeHoldsDryerHeat'],
  unknown: ['nameUnknown'],
  reading: ['nothingListed', 'nameCorrected'],
} as const satisfies Readonly<Record<string, readonly IngredientFindingId[]>>;

type Topic = keyof typeof topics;

const order = Object.keys(topics) as readonly Topic[];

/**
 * So many lines are read at a glance from the chair, beside the one of names that are not known. Assumed because a panel
 * of more is read by nobody; what harms and what burns is never cut by it.
 */
export const ASSUMED_CHAIR_LINES = 4;

export interface ChairLine {
  readonly topic: Topic;
  readonly says: string;
  /** It harms or burns her or whoever stands beside her, or the maker himself says less than today's setting. */
  readonly isGrave: boolean;
}

const grave: ReadonlySet<Topic> = new Set(['formaldehyde', 'kidney', 'tooHot', 'fire']);
/** How the list was read has no source. */
const withoutKind: ReadonlySet<Topic> = new Set(['unknown', 'reading']);

/** What is felt of a dryer is said of a dryer only; what a plate does to wet hair, of all but a dryer. */
const isOfTool = (topic: Topic, tool: HeatSprayAnswers['tool'] | undefined): boolean => {
  if (topic === 'dryer') return tool === 'dryer';
  return topic !== 'wets' || tool !== 'dryer';
};

/**
 * What of all that the list tells is read at the chair, worst first, a line a topic and four at the most, each with
 * its kind of source? Before them names that are not known: no line may stand for a list of which a part is not read.
 * What only begins above today's setting stands behind Why.
 * Checked in tests/src/screens/sayIngredients.test.tsx.
 */
export function pickChairLines(
  told: readonly FindingSaid[],
  maker: MakerSaid | null,
  tool: HeatSprayAnswers['tool'] | undefined,
  words: Words,
): readonly ChairLine[] {
  const isMaker = (topic: Topic) => topic === (maker?.isAbove === true ? 'tooHot' : 'maker');
  const findSays = (topic: Topic): string | undefined => {
    if (isMaker(topic)) return maker?.says;
    const ids: readonly IngredientFindingId[] = topics[topic];
    const found = ids
      .map((wanted) => told.find(({ id, plate }) => id === wanted && plate !== 'below'))
      .find((each) => each !== undefined);
    if (found === undefined || withoutKind.has(topic)) return found?.says;
    return words.ingredients.ofKind(found.says, words.hair.shortKinds[readMark(found.mark).kind]);
  };
  const lines = order
    .filter((topic) => isOfTool(topic, tool))
    .map((topic) => ({ topic, says: findSays(topic) ?? '', isGrave: grave.has(topic) }))
    .filter(({ says }) => says !== '');
  const unknown = lines.filter(({ topic }) => topic === 'unknown');
  return [...unknown, ...lines.filter(({ topic }) => topic !== 'unknown').slice(0, ASSUMED_CHAIR_LINES)];
}
