import {
  BLEACH_LOG_LOSS,
  type Bleach,
  type BleachReach,
  findBleachReach,
  findEndsFrom,
} from '../chemistry/bleach';
import type { Account } from '../units/account';
import { brand } from '../units/brand';
import type { Centimetre } from '../units/length';
import { makeRange, type Range } from '../units/range';
import { secondsPerMinute } from '../units/time';
import { accountFor, countWeeks, type HabitAccount } from './account';
import { type Assumptions, stationAssumptions } from './assumptions';
import { MINUTES_A_BOIL } from './boil';
import { computeAgeWeeks } from './growth';
import type { HeatHabit } from './habit';
import { helixMeasured } from './helix';
import { type Pigment, tryptophanMeasured } from './tryptophan';

/** What is known of one head of hair: what heat and bleach did, how fast it grows, how long it is. */
export interface HairHistory {
  readonly habits: readonly HeatHabit[];
  readonly bleaches: readonly Bleach[];
  /** cm a week. */
  readonly growth: Range;
  /** cm from scalp to tip. */
  readonly lengthCm: Range;
  readonly pigment: Pigment;
}

/** What the hair at one place has gone through, and what is left of it. Minutes, weeks, or shares from 0 to 1. */
export interface HairAt {
  readonly cm: number;
  readonly ageWeeks: Range;
  readonly ironMin: Range;
  readonly wetMin: Range;
  readonly dampMin: Range;
  readonly dryMin: Range;
  readonly boilEquivalents: Range;
  readonly contactMin: Range;
  readonly bleaches: Range;
  readonly tryptophanLeft: Range;
  readonly helixLeft: Range;
  /** How far the matrix still is from its lower limit: 1 untouched, 0 there. */
  readonly matrixLeft: Range;
  /** Heat went further than anybody measured: only the band may be shown, with these words. */
  readonly isBeyond: { readonly tryptophan: boolean; readonly helix: boolean };
}

/** One place in one account. Losses as −ln of what is left, so that they add up. */
interface Sum {
  readonly iron: number;
  readonly wet: number;
  readonly damp: number;
  readonly dry: number;
  readonly contact: number;
  readonly bleaches: number;
  readonly tryptophan: number;
  readonly helix: number;
  readonly matrix: number;
  readonly isTryptophanBeyond: boolean;
  readonly isHelixBeyond: boolean;
}

/** One account of the history: what holds for every place, reckoned once. */
interface Reckoning {
  readonly habits: readonly HabitAccount[];
  readonly bleaches: readonly BleachReach[];
}

function reckon(history: HairHistory, assumptions: Assumptions, account: Account): Reckoning {
  const { habits, bleaches, growth, lengthCm, pigment } = history;
  const endsFromCm = findEndsFrom(lengthCm.typical);
  return {
    habits: habits
      .map((habit) => accountFor(habit, lengthCm, pigment, assumptions, account))
      .filter(({ ironMin }) => ironMin > 0),
    bleaches: bleaches
      .map((bleach) => findBleachReach(bleach, growth, endsFromCm, account))
      .filter((reach) => reach !== null),
  };
}

/** What the hair at this place has gone through. Plain loops and no objects inside: it runs for every centimetre. */
function sumAt({ habits, bleaches }: Reckoning, cm: number, ageWeeks: number): Sum {
  let count = 0;
  let firstBleachWeeksAgo = 0;
  for (const { fromCm, toCm, weeksAgo } of bleaches) {
    if (cm < fromCm || cm > toCm) continue;
    count += 1;
    firstBleachWeeksAgo = Math.max(firstBleachWeeksAgo, weeksAgo);
  }
  let iron = 0;
  let wet = 0;
  let damp = 0;
  let dry = 0;
  let contact = 0;
  let tryptophan = 0;
  let helix = count * BLEACH_LOG_LOSS;
  let matrix = 0;
  let isTryptophanBeyond = false;
  let isHelixBeyond = false;
  for (const habit of habits) {
    const weeks = countWeeks(habit, ageWeeks);
    if (weeks === 0) continue;
    const weeksBleached = countWeeks(habit, Math.min(ageWeeks, firstBleachWeeksAgo));
    iron += weeks * habit.ironMin;
    wet += weeks * habit.wetMin;
    damp += weeks * habit.dampMin;
    dry += weeks * habit.dryMin;
    contact += weeks * habit.contactMin;
    tryptophan += weeks * habit.tryptophan;
    helix += weeks * habit.helix;
    matrix += (weeks - weeksBleached) * habit.matrixUntreated + weeksBleached * habit.matrixBleached;
    isTryptophanBeyond ||= habit.isTryptophanBeyond;
    isHelixBeyond ||= habit.isHelixBeyond;
  }
  return {
    iron,
    wet,
    damp,
    dry,
    contact,
    bleaches: count,
    tryptophan,
    helix,
    matrix,
    isTryptophanBeyond,
    isHelixBeyond,
  };
}

/** How many half hours in boiling water are so many wet minutes? */
const toBoils = ({ low, typical, high }: Range): Range =>
  makeRange(low / MINUTES_A_BOIL, typical / MINUTES_A_BOIL, high / MINUTES_A_BOIL);

/** How much is left after losses of −ln so much? The most loss leaves the least. */
const leftAfter = (least: number, typical: number, most: number): Range =>
  makeRange(Math.exp(-most), Math.exp(-typical), Math.exp(-least));

/** Further than anybody measured? Nobody measured tryptophan on bleached hair. */
const findBeyond = (most: Sum): HairAt['isBeyond'] => ({
  tryptophan:
    most.isTryptophanBeyond ||
    most.contact > tryptophanMeasured.minutes ||
    (most.contact > 0 && most.bleaches > 0),
  helix: most.isHelixBeyond || most.contact > helixMeasured.seconds / secondsPerMinute,
});

/** The three accounts of one place as bands. */
function band(cm: number, ageWeeks: Range, least: Sum, typical: Sum, most: Sum): HairAt {
  const wetMin = makeRange(least.wet, typical.wet, most.wet);
  return {
    cm,
    ageWeeks,
    ironMin: makeRange(least.iron, typical.iron, most.iron),
    wetMin,
    dampMin: makeRange(least.damp, typical.damp, most.damp),
    dryMin: makeRange(least.dry, typical.dry, most.dry),
    boilEquivalents: toBoils(wetMin),
    contactMin: makeRange(least.contact, typical.contact, most.contact),
    bleaches: makeRange(least.bleaches, typical.bleaches, most.bleaches),
    tryptophanLeft: leftAfter(least.tryptophan, typical.tryptophan, most.tryptophan),
    helixLeft: leftAfter(least.helix, typical.helix, most.helix),
    matrixLeft: leftAfter(least.matrix, typical.matrix, most.matrix),
    isBeyond: findBeyond(most),
  };
}

/**
 * What have heat and bleach done, centimetre by centimetre?
 * For each place, in cm from the scalp, in the order given; three accounts each (least, most likely, most). A habit
 * counts only for the weeks in which that hair existed, and habits add up, however they overlap, stopped or changed: in
 * closed form, nothing is stepped. Everything told means iron minutes without a band; the other bands are then those of
 * growth, of the gap between setting and hair, of the published half-life, of the energy and of the wet multiplier.
 * Nothing on the hair gives zero minutes and everything left. A place that is none is read as the scalp.
 * Checked by tests/shared/heat/profile.test.ts, and against quadrature by tests/evidence/dose.test.ts.
 */
export function computeProfile(
  history: HairHistory,
  places: readonly number[],
  assumptions: Assumptions = stationAssumptions,
): readonly HairAt[] {
  const least = reckon(history, assumptions, 'least');
  const typical = reckon(history, assumptions, 'typical');
  const most = reckon(history, assumptions, 'most');
  return places.map((place) => {
    const cm = place > 0 && Number.isFinite(place) ? place : 0;
    const age = computeAgeWeeks(brand<Centimetre>(cm), history.growth);
    return band(
      cm,
      age,
      sumAt(least, cm, age.low),
      sumAt(typical, cm, age.typical),
      sumAt(most, cm, age.high),
    );
  });
}
