import { type Account, pick } from '../units/account';
import type { Range } from '../units/range';
import { secondsPerMinute } from '../units/time';
import {
  ASSUMED_DAYS_A_WEEK,
  ASSUMED_SECONDS_A_SECTION,
  ASSUMED_STOPPED_WEEKS,
  ASSUMED_UNKNOWN_WETNESS_SHARE,
  ASSUMED_WEEKS,
} from './assumedHabit';
import type { Assumptions } from './assumptions';
import { computeContactShares } from './contact';
import { type HeatHabit, isIron, type Wetness } from './habit';
import { computeHairTemperature } from './hairTemperature';
import {
  computeHelixRate,
  computeHelixSpeedUp,
  findWetMultiplier,
  helixMeasured,
  MATRIX_HALF_TIME_MIN,
} from './helix';
import { rateOfHalfLife } from './rate';
import { computeTryptophanRate, type Pigment, tryptophanMeasured } from './tryptophan';

/** What she told, or a wide range where she does not know. A figure that cannot be is not known, never none. */
const readTold = (told: number | 'unknown', assumed: Range, account: Account): number =>
  told !== 'unknown' && told >= 0 && Number.isFinite(told) ? told : pick(assumed, account);

/** One habit in one account: when it stopped and for how long it was done; what one week of it does to hair that is there. */
export interface HabitAccount {
  readonly stoppedWeeksAgo: number;
  readonly weeks: number;
  /** Iron minutes a week: all of them, and those that may have met hair this wet. */
  readonly ironMin: number;
  readonly wetMin: number;
  readonly dampMin: number;
  readonly dryMin: number;
  /** Minutes a week that metal touches any one centimetre. */
  readonly contactMin: number;
  /** What a week takes, as −ln of what is left. */
  readonly tryptophan: number;
  readonly helix: number;
  readonly matrixUntreated: number;
  readonly matrixBleached: number;
  /** Its heat was not among those that were measured. */
  readonly isTryptophanBeyond: boolean;
  readonly isHelixBeyond: boolean;
}

/** The longer ago she stopped, the less hair was there: the ends change places. */
const lessWhenMore = ({ low, typical, high }: Range) => ({ low: high, typical, high: low });

const shareOfUnknown = { least: 0, typical: ASSUMED_UNKNOWN_WETNESS_SHARE, most: 1 } as const;

/** Which share of its minutes may have met hair this wet? Minutes of unknown wetness may be all of one kind. */
const shareFor = (told: HeatHabit['wetness'], wetness: Wetness, account: Account): number =>
  told === 'unknown' ? shareOfUnknown[account] : told === wetness ? 1 : 0;

const pigmentOf = {
  least: { pigmented: 'pigmented', unpigmented: 'unpigmented', both: 'pigmented' },
  typical: { pigmented: 'pigmented', unpigmented: 'unpigmented', both: 'pigmented' },
  most: { pigmented: 'pigmented', unpigmented: 'unpigmented', both: 'unpigmented' },
} as const satisfies Readonly<Record<Account, Readonly<Record<Pigment, 'pigmented' | 'unpigmented'>>>>;

/** How hot the hair gets under this tool, °C. */
export const findHairTemperature = (
  { settingC, tool }: Pick<HeatHabit, 'settingC' | 'tool'>,
  { gapC }: Assumptions,
): Range => computeHairTemperature(settingC, gapC(tool));

/**
 * What does one week of this habit do, in this account?
 * A dryer does nothing here (see shared/heat/habit.ts). Minutes a week: seconds a section, all passes together, ÷ 60 ×
 * days a week. Checked by tests/shared/heat/profile.test.ts and tests/evidence/heatPractice.test.ts.
 */
export function accountFor(
  habit: HeatHabit,
  lengthCm: Range,
  pigment: Pigment,
  assumptions: Assumptions,
  account: Account,
): HabitAccount {
  const seconds = readTold(habit.secondsASection, ASSUMED_SECONDS_A_SECTION, account);
  const days = readTold(habit.daysAWeek, ASSUMED_DAYS_A_WEEK, account);
  const ironMin = isIron(habit.tool) ? (seconds / secondsPerMinute) * days : 0;
  const contactMin = ironMin * pick(computeContactShares(habit, lengthCm), account);
  const hairC = findHairTemperature(habit, assumptions);
  const water = findWetMultiplier(habit.wetness, assumptions.wetMultiplier, assumptions.dampMultiplier);
  const speedUp = pick(computeHelixSpeedUp(hairC, assumptions.helixEnergyJ), account);
  const matrixAt = (halfTimeMin: number) => contactMin * rateOfHalfLife(halfTimeMin) * speedUp;
  const share = (wetness: Wetness) => ironMin * shareFor(habit.wetness, wetness, account);
  return {
    stoppedWeeksAgo: readTold(habit.stoppedWeeksAgo, lessWhenMore(ASSUMED_STOPPED_WEEKS), account),
    weeks: readTold(habit.weeks, ASSUMED_WEEKS, account),
    ironMin,
    wetMin: share('wet'),
    dampMin: share('damp'),
    dryMin: share('dry'),
    contactMin,
    tryptophan: contactMin * computeTryptophanRate(pick(hairC, account), pigmentOf[account][pigment]),
    helix:
      contactMin *
      pick(computeHelixRate(assumptions.helixHalfLifeMin), account) *
      speedUp *
      pick(water, account),
    matrixUntreated: matrixAt(MATRIX_HALF_TIME_MIN.untreated),
    matrixBleached: matrixAt(MATRIX_HALF_TIME_MIN.bleached),
    isTryptophanBeyond: hairC.low < tryptophanMeasured.fromC || hairC.high > tryptophanMeasured.toC,
    isHelixBeyond: habit.settingC !== helixMeasured.atC || habit.wetness !== 'dry',
  };
}

/**
 * In how many weeks of this habit was hair of this age there? What is left of its age since she stopped, at most as long
 * as she did so, and never less than nothing: a habit that stopped before the hair grew did it nothing. Exact, in closed
 * form, and no larger in the last bit for a habit of the same length that stopped longer ago.
 * Checked against stepping week by week and by quadrature in tests/evidence/dose.test.ts.
 */
export const countWeeks = (
  { stoppedWeeksAgo, weeks }: Pick<HabitAccount, 'stoppedWeeksAgo' | 'weeks'>,
  ageWeeks: number,
): number => Math.max(0, Math.min(weeks, ageWeeks - stoppedWeeksAgo));
