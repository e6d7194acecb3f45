import { makeRange, type Range } from '../units/range';
import type { HeatHabit } from './habit';
import { computeSpeedUp, rateOfHalfLife } from './rate';

/**
 * In how many minutes of contact does a 200 °C iron take half of the helix?
 * published: Kinetics of the changes imparted to the main structural components of human hair by thermal treatment,
 * Thermochim. Acta 661:78–83, 2018 (abstract): first order, 20–25 min, bleached or not. Its middle is taken as typical.
 * Checked by tests/evidence/helix.test.ts.
 */
export const HELIX_HALF_LIFE_MIN: Range = makeRange(20, 22.5, 25);

/** Where was it measured? A 200 °C iron, up to 800 s of contact. published: the same abstract. */
export const helixMeasured = { atC: 200, seconds: 800 } as const;

/**
 * In how many minutes does the matrix come half the way to its lower limit, untreated and bleached?
 * published: the same abstract, "about". Checked by tests/evidence/helix.test.ts.
 */
export const MATRIX_HALF_TIME_MIN = { untreated: 5, bleached: 1 } as const;

/**
 * Which activation energy carries these rates to other temperatures? J/mol.
 * Assumed because nothing is published for the helix under an iron at other settings: the range is that of equal
 * straightening (published: Dussaud, Rana, Lam, J. Cosmet. Sci. 64:119–131, 2013: 69 to 122 kJ/mol, computed from it),
 * and 80 is the middle of what meets all of its three equalities.
 */
export const ASSUMED_HELIX_ENERGY_J: Range = makeRange(69_000, 80_000, 122_000);

/**
 * How many times as much of the structure does the same contact take on wet hair?
 * Assumed because the nearest published number is a loss of break stress twice as large after a water-based spray as
 * after an ethanol-based one (Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III).
 */
export const ASSUMED_WET_MULTIPLIER: Range = makeRange(1, 2, 4);

/** The same for damp hair. Assumed because it lies between dry and wet, and nobody has measured where. */
export const ASSUMED_DAMP_MULTIPLIER: Range = makeRange(1, 1.5, 3);

/** Dry hair is read as what the rate was measured on; the abstract does not say how dry it was. */
const DRY_MULTIPLIER: Range = makeRange(1, 1, 1);

/**
 * How many times as much does the water in the hair take?
 * Of unknown wetness: as dry at the least, as wet at the most, and the mean of the three as most likely.
 */
export function findWetMultiplier(wetness: HeatHabit['wetness'], wet: Range, damp: Range): Range {
  switch (wetness) {
    case 'wet':
      return wet;
    case 'damp':
      return damp;
    case 'dry':
      return DRY_MULTIPLIER;
    case 'unknown':
      return makeRange(
        Math.min(DRY_MULTIPLIER.low, damp.low, wet.low),
        (DRY_MULTIPLIER.typical + damp.typical + wet.typical) / 3,
        Math.max(DRY_MULTIPLIER.high, damp.high, wet.high),
      );
  }
}

/**
 * How many times as fast as at 200 °C? The least, the most likely and the most that hair temperature and energy leave
 * open. Above 200 °C a higher energy makes it faster, below slower: so the ends are sorted.
 * Checked by tests/shared/heat/doses.test.ts.
 */
export function computeHelixSpeedUp(hairC: Range, energyJ: Range): Range {
  const at = (energy: number, celsius: number) => computeSpeedUp(energy, helixMeasured.atC, celsius);
  return makeRange(
    Math.min(at(energyJ.low, hairC.low), at(energyJ.high, hairC.low)),
    at(energyJ.typical, hairC.typical),
    Math.max(at(energyJ.low, hairC.high), at(energyJ.high, hairC.high)),
  );
}

/** How fast does the helix go at 200 °C? Per minute of contact, from its half-life in minutes. */
export const computeHelixRate = ({ low, typical, high }: Range): Range =>
  makeRange(rateOfHalfLife(high), rateOfHalfLife(typical), rateOfHalfLife(low));
