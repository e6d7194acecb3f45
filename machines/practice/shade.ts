import { readSaturation } from '../../shared/chemistry/saturation';
import { listUndertones, type Undertone } from '../../shared/chemistry/undertone';
import type { Answers } from '../../shared/records/forms/asked';
import type { OutcomeAnswers } from '../../shared/records/forms/test';
import type { Zone } from '../../shared/records/zones';
import type { Lesson } from './lesson';
import { ASSUMED_HEAT_WEARS, type Wearing } from './strength';

/** Where nobody knows her level it is this. Assumed because it is the middle of the scale. */
export const ASSUMED_LEVEL = 5;

/**
 * How far lightener lifts if it is left: never more than `most` levels, most of it from `percent` of developer on.
 * That 20 vol lifts three to five levels: common practice, no source. The curve through it is assumed because each stronger
 * bottle adds less.
 */
export const ASSUMED_LIFT = { most: 7, percent: 6 } as const;

/**
 * How many levels tint lifts for each per cent of developer above 3: 10 vol deposits, 20 lifts 1–2, 30 2–3 and 40 3–4
 * (common practice, no source). Assumed because it is the straight line through all three.
 */
export const ASSUMED_TINT_LIFT = { fromPercent: 3, levels: 0.4 } as const;

/** How fast it goes, per minute, without heat. Assumed because most of it is then done in half an hour. */
export const ASSUMED_LIFT_RATE = 0.06;

/** Of its lift, lightener has this share on coloured hair. Assumed because what is in it has to go first. */
export const ASSUMED_COLOURED_LIFTS = 0.6;

/** The darkest and the lightest of the trade's levels. common practice, no source. */
export const LEVELS = { darkest: 1, lightest: 10 } as const;
/** As a look tells it: to half a level. */
const toHalf = (level: number): number => Math.round(level * 2) / 2;

const coloured: readonly string[] = ['salonColour', 'boxColour', 'unknownBoxColour', 'metallicColour'];
const stained: readonly string[] = [
  'boxColour',
  'unknownBoxColour',
  'henna',
  'compoundHenna',
  'metallicColour',
];
const hasAny = ({ hotTools }: Answers, kinds: readonly string[]): boolean =>
  (hotTools?.history ?? []).some((each) => kinds.includes(each));

/** Roots are as they grow; lengths too, until something was put on them: then they are as the ends. */
function findStart(answers: Answers, zone: Zone): number {
  const { naturalLevel, endsLevel } = answers.client ?? {};
  const { history = [], bleachReach } = answers.hotTools ?? {};
  const isAsGrown = zone === 'roots' || history.every((each) => each === 'none') || bleachReach === 'ends';
  const level = zone === 'ends' || !isAsGrown ? endsLevel : naturalLevel;
  return typeof level === 'number' ? level : ASSUMED_LEVEL;
}

/** One mix on this hair, as it was planned when it was made, for so many minutes. */
export interface Coat extends Wearing {
  readonly service: string;
  readonly targetLevel: number;
  readonly minutes: number;
}

/** By how many levels does it move in the end? Colour does not lift colour: common practice, no source. */
function findRise(
  answers: Answers,
  from: number,
  { service, targetLevel, developerPercent, isLifting }: Coat,
): number {
  const isColoured = hasAny(answers, coloured);
  if (!isLifting) return Math.min(0, targetLevel - from);
  if (service === 'liftAndDeposit') {
    const { fromPercent, levels } = ASSUMED_TINT_LIFT;
    return isColoured ? 0 : Math.max(0, developerPercent - fromPercent) * levels;
  }
  const lift = ASSUMED_LIFT.most * -Math.expm1(-developerPercent / ASSUMED_LIFT.percent);
  return lift * (isColoured ? ASSUMED_COLOURED_LIFTS : 1);
}

/** What is to be seen of the colour, and how even it is. */
export interface Shade {
  /** To half a level. */
  readonly level: number;
  /** That of its level on lightening. */
  readonly undertone: Undertone;
  /** It was lightened; what was only deposited on shows none that could be named. */
  readonly hasUndertone: boolean;
  readonly evenness: NonNullable<OutcomeAnswers['evenness']>;
}

function findEvenness(answers: Answers): Shade['evenness'] {
  if (answers.hotTools?.bleachReach === 'band') return 'banded';
  return hasAny(answers, stained) ? 'patchy' : 'even';
}

const toLevel = (level: number): number => Math.min(LEVELS.lightest, Math.max(LEVELS.darkest, level));

/**
 * What does this zone look like after these mixes, one after the other? Each goes on from where the last one left it, and
 * lifting never goes back: longer and stronger is never darker. Checked in tests/machines/practice/shade.test.ts.
 */
export function findShade(
  { strand }: Pick<Lesson, 'strand'>,
  answers: Answers,
  zone: Zone,
  coats: readonly Coat[],
): Shade {
  const { lift = 1, evenness = findEvenness(answers) } = strand.zones?.[zone] ?? {};
  const reached = coats.reduce(
    (base, coat) => {
      const curve = {
        base,
        rise: findRise(answers, base, coat) * lift,
        // Under heat it lifts as much faster as it wears.
        rate: ASSUMED_LIFT_RATE * ASSUMED_HEAT_WEARS[coat.heat],
      };
      return toLevel(readSaturation(curve, Math.max(0, coat.minutes)));
    },
    findStart(answers, zone),
  );
  const [undertone = 'orange'] = listUndertones(Math.round(reached));
  return {
    level: toHalf(reached),
    undertone,
    hasUndertone: coats.some(({ isLifting }) => isLifting),
    evenness,
  };
}
