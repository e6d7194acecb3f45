import {
  DRYER_HEAT_HELD_SECONDS,
  ethanolFlashPoints,
  filmFormersLessLossPercent,
  findStressLossPercent,
  formaldehydeLimitsPpm,
  isopropylFlashPoint,
} from '../../../shared/chemistry/ingredients/figures';
import type { IngredientListRefusal } from '../../../shared/chemistry/ingredients/ingredient';
import type { IngredientFindingId } from '../../../shared/chemistry/ingredients/tellIngredients';
import type { Celsius } from '../../../shared/units/temperature';

/** What stands inside a sentence about a list, written in the station's units. */
export interface FindingFigures {
  /** The names it is told of. */
  readonly names: string;
  /** At which temperature it happens; empty where it has none. */
  readonly at: string;
  readonly heat: (celsius: Celsius) => string;
  readonly count: (value: number) => string;
  readonly percent: (value: number) => string;
  readonly seconds: (value: number) => string;
}

type Say = (figures: FindingFigures) => string;

const burnsWet: Say = ({ names }) => `${names}: wet near a plate it can burn.`;
const boils: Say = ({ names, at }) => `${names} boils at ${at}.`;

/** What a list tells, each in one short sentence. None of them says that something is safe or protects. */
const says: Readonly<Record<IngredientFindingId, Say>> = {
  formaldehyde: ({ names }) => `${names}: heat frees formaldehyde.`,
  formaldehydeReleaser: ({ names }) => `${names}: lets go of formaldehyde.`,
  glyoxylicAcid: ({ names }) => `${names}: kidney injury reported.`,
  glyoxylicKin: ({ names }) => `${names}: kin of glyoxylic acid, kidney injury reported of that.`,
  alcoholBurns: burnsWet,
  isopropylBurns: burnsWet,
  propellantBurns: ({ names }) => `${names}: a gas that burns. No aerosol near hot plates.`,
  waterWets: ({ names }) => `${names}: dry the hair completely before a plate.`,
  sugarCaramelises: ({ names, at }) => `${names}: sugar, caramelises above about ${at}.`,
  sugarBrownsWithProtein: ({ names }) => `${names}: browns with protein, from lower.`,
  sucroseBrownsOnceSplit: ({ names }) => `${names}: once split, browns with protein, from lower.`,
  sugarScorches: ({ names }) => `${names}: scorches, and the smell stays.`,
  siliconeGivesFormaldehyde: ({ names, at }) =>
    `${names}: silicone rubber gives off formaldehyde above ${at}.`,
  dimethiconeBreaksDown: ({ names, at }) => `${names}: breaks down above ${at} without air, in air sooner.`,
  carriersLeave: ({ names }) => `${names}: carrier, leaves.`,
  d4Boils: boils,
  d5Boils: boils,
  d6Boils: boils,
  boilingIsNotLeaving: () => 'A thin film leaves far below its boiling point.',
  whatStays: ({ names }) => `${names}: stays on the hair.`,
  siliconeLeavesOrStays: ({ names }) => `${names}: a silicone. Whether it leaves is not known here.`,
  filmFormersMeasured: ({ names, at, count, percent }) => {
    const { from, to } = filmFormersLessLossPercent;
    return `${names}: ${count(from)}–${percent(to)} less tryptophan lost, measured at ${at} only.`;
  },
  polyquaterniumNoFigure: ({ names }) => `${names}: no figure for it is known here.`,
  siliconeSprayHelpsNoMore: ({ at }) => `Above ${at} silicone gives no help.`,
  siliconeHoldsDryerHeat: ({ seconds }) =>
    `A good silicone spray keeps a dryer’s heat from being felt on skin for ${seconds(DRYER_HEAT_HELD_SECONDS)}.`,
  nothingListed: () => 'Of these names nothing is told here. That makes it no better and no worse.',
  nameCorrected: ({ names }) => `Read after one slip of the finger: ${names}.`,
  nameUnknown: ({ names }) => `Not known here: ${names}, so the list cannot be judged as a whole.`,
};

/** What else stands in the source, for whoever asks why. */
const more: Readonly<Partial<Record<IngredientFindingId, Say>>> = {
  glyoxylicAcid: () => 'In smoothing products.',
  formaldehyde: ({ count }) =>
    `Most in the air: ${count(formaldehydeLimitsPpm.eightHours)} ppm over 8 hours, ${count(formaldehydeLimitsPpm.fifteenMinutes)} ppm over 15 minutes.`,
  waterWets: ({ percent }) =>
    `Water wets the hair. Break stress: ${percent(findStressLossPercent('waterBased'))} less where a water-based spray came before the iron, ${percent(findStressLossPercent('ethanolBased'))} less after an ethanol-based one.`,
  alcoholBurns: ({ heat, percent }) =>
    `Flash point: ${ethanolFlashPoints
      .map(({ flashPoint, weightPercent }) => `${heat(flashPoint)} at ${percent(weightPercent)}`)
      .join(', ')}, by weight in water.`,
  siliconeSprayHelpsNoMore: () => 'It softens and builds up.',
  isopropylBurns: ({ heat }) => `Flash point: ${heat(isopropylFlashPoint)}, undiluted.`,
  siliconeGivesFormaldehyde: () => 'In air. A film on hair was not measured.',
};

const refusals: Readonly<
  Record<IngredientListRefusal['code'] | 'malformed', (typed: string, most: string) => string>
> = {
  empty: () => '',
  nothingRead: () => 'No name in it. Names with commas between them, as on the pack.',
  malformed: () => 'A mark in it that cannot be seen. Type the name where it stands anew.',
  tooLong: (typed, most) =>
    `${typed} letters: at most ${most} are kept. Shorten it here, it is not saved yet.`,
  tooMany: (_typed, most) =>
    `More than ${most} names: too many for one pack. Shorten it here, it is not saved yet.`,
};

export const ingredients = {
  says,
  more,
  refusals,
  /** Today's setting stands above what was said. */
  isAbove: (says: string) => `${says} Today’s setting is above that.`,
  /** Which kind of source says so, where there is room for no more. */
  ofKind: (says: string, kind: string) => `${says.replace(/\.$/, '')} (${kind}).`,
  names: (names: readonly string[]) => names.join(', '),
  reading: (parts: readonly string[]) => parts.join(' · '),
  read: (count: string) => `${count} read`,
  corrected: (count: string, names: string) => `${count} corrected: ${names}`,
  asMeant: (written: string, name: string) => `${written} read as ${name}`,
  unknown: (count: string, names: string) =>
    `${count} not known, so the list cannot be judged as a whole: ${names}`,
  andMore: (names: string, count: string) => `${names} and ${count} more`,
};
