import {
  DRYER_HEAT_HELD_SECONDS,
  ethanolFlashPoints,
  filmFormersLessLossPercent,
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

const burnsWet: Say = ({ names }) => `${names}: wet near a hot plate it can catch fire.`;
const boils: Say = ({ names, at }) => `${names} boils at ${at}.`;

/** What a list tells, each in one short sentence. None of them says that something is safe or protects. */
const says: Readonly<Record<IngredientFindingId, Say>> = {
  formaldehyde: ({ names }) => `${names}: heat drives formaldehyde into the air.`,
  formaldehydeReleaser: ({ names }) => `${names}: lets go of formaldehyde.`,
  glyoxylicAcid: ({ names }) => `${names}: kidney injury was reported.`,
  alcoholBurns: burnsWet,
  isopropylBurns: burnsWet,
  propellantBurns: ({ names }) => `${names}: a gas that burns. No aerosol near hot plates.`,
  sugarCaramelises: ({ names, at }) => `${names}: sugar, caramelises above about ${at}.`,
  sugarBrownsWithProtein: ({ names }) => `${names}: browns with protein, from lower.`,
  sugarScorches: ({ names }) => `${names}: sugar scorches, and the smell stays.`,
  siliconeGivesFormaldehyde: ({ names, at }) =>
    `${names}: formaldehyde begins above ${at}, in silicone rubber.`,
  dimethiconeBreaksDown: ({ names, at }) => `${names}: without air it breaks down above ${at}.`,
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
  siliconeSprayHelpsNoMore: ({ at }) => `Above ${at} a silicone spray gives no help.`,
  siliconeHoldsDryerHeat: ({ seconds }) =>
    `A good silicone spray keeps a dryer’s heat from being felt for ${seconds(DRYER_HEAT_HELD_SECONDS)}.`,
  nothingListed: () => 'Nothing listed that is known here. That makes it no better and no worse.',
  nameCorrected: ({ names }) => `Read after one slip of the finger: ${names}.`,
  nameUnknown: ({ names }) => `Not known here: ${names}.`,
};

/** What else stands in the source, for whoever asks why. */
const more: Readonly<Partial<Record<IngredientFindingId, Say>>> = {
  glyoxylicAcid: () => 'In smoothing products.',
  formaldehyde: ({ count }) =>
    `Most in the air: ${count(formaldehydeLimitsPpm.eightHours)} ppm over 8 hours, ${count(formaldehydeLimitsPpm.fifteenMinutes)} ppm over 15 minutes.`,
  alcoholBurns: ({ heat, percent }) =>
    `Flash point: ${ethanolFlashPoints
      .map(({ flashPoint, weightPercent }) => `${heat(flashPoint)} at ${percent(weightPercent)}`)
      .join(', ')}, by weight in water.`,
  siliconeSprayHelpsNoMore: () => 'It softens and builds up.',
  isopropylBurns: ({ heat }) => `Flash point: ${heat(isopropylFlashPoint)}, undiluted.`,
  siliconeGivesFormaldehyde: () => 'In air. A film on hair was not measured.',
};

const refusals: Readonly<Record<IngredientListRefusal['code'], (typed: string, most: string) => string>> = {
  empty: () => '',
  nothingRead: () => 'No name in it. Names with commas between them, as on the pack.',
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
  settingIsAbove: 'Today’s setting is above that.',
  read: (count: string) => `${count} read`,
  corrected: (count: string, names: string) => `${count} corrected: ${names}`,
  asMeant: (written: string, name: string) => `${written} read as ${name}`,
  unknown: (count: string, names: string) => `${count} not known: ${names}`,
  andMore: (names: string, count: string) => `${names} and ${count} more`,
};
