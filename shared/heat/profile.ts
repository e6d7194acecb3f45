import { brand } from '../units/brand';
import type { Centimetre } from '../units/length';
import { makeRange, type Range } from '../units/range';
import { secondsPerMinute } from '../units/time';
import { type Assumptions, stationAssumptions } from './assumptions';
import { MINUTES_A_BOIL } from './boil';
import { computeAgeWeeks } from './growth';
import type { HairHistory } from './hairHistory';
import { helixMeasured } from './helix';
import { type Reckoning, reckon, type Sum, sumAt } from './sumAt';
import { tryptophanMeasured } from './tryptophan';

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
  /** Heat went further than anybody measured: the band is carried on from there. */
  readonly isBeyond: { readonly tryptophan: boolean; readonly helix: boolean };
}

/** How many half hours in boiling water are so many wet minutes? */
const toBoils = ({ low, typical, high }: Range): Range =>
  makeRange(low / MINUTES_A_BOIL, typical / MINUTES_A_BOIL, high / MINUTES_A_BOIL);

/** How much is left after losses of −ln so much? The most loss leaves the least. */
const leftAfter = (least: number, typical: number, most: number): Range =>
  makeRange(Math.exp(-most), Math.exp(-typical), Math.exp(-least));

/** Further than anybody measured? */
const findBeyond = (most: Sum): HairAt['isBeyond'] => ({
  tryptophan: most.isTryptophanBeyond || most.contact > tryptophanMeasured.minutes,
  helix: most.isHelixBeyond || most.contact > helixMeasured.seconds / secondsPerMinute,
});

/** Three accounts of one head, ready for any place of it. */
interface Accounts {
  readonly least: Reckoning;
  readonly typical: Reckoning;
  readonly most: Reckoning;
}

/** The three accounts of one place as bands. */
function band(accounts: Accounts, cm: number, ageWeeks: Range): HairAt {
  const least = sumAt(accounts.least, cm, ageWeeks.low);
  const typical = sumAt(accounts.typical, cm, ageWeeks.typical);
  const most = sumAt(accounts.most, cm, ageWeeks.high);
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

const reckonAll = (history: HairHistory, assumptions: Assumptions): Accounts => ({
  least: reckon(history, assumptions, 'least'),
  typical: reckon(history, assumptions, 'typical'),
  most: reckon(history, assumptions, 'most'),
});

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
  const accounts = reckonAll(history, assumptions);
  return places.map((place) => {
    const cm = place > 0 && Number.isFinite(place) ? place : 0;
    return band(accounts, cm, computeAgeWeeks(brand<Centimetre>(cm), history.growth));
  });
}

/**
 * And at the tip, wherever that is?
 * As at the likely length, but as old as the shortest and the longest hair that her answer allows: a length told by
 * landmark widens the band, one by the tape does not. Checked by tests/shared/heat/profile.test.ts.
 */
export function computeTip(history: HairHistory, assumptions: Assumptions = stationAssumptions): HairAt {
  const { lengthCm, growth } = history;
  const age = makeRange(
    lengthCm.low / growth.high,
    lengthCm.typical / growth.typical,
    lengthCm.high / growth.low,
  );
  return band(reckonAll(history, assumptions), lengthCm.typical, age);
}
