/** Molar gas constant, J/(mol·K): exact by the SI of 2019. */
export const GAS_CONSTANT = 8.31446261815324;

export const zeroCelsiusK = 273.15;

/**
 * By which factor does a reaction run faster at one temperature than at another? Arrhenius, without a unit.
 * Takes °C and the activation energy in J/mol. Exact formula, not rounded.
 */
export const computeSpeedUp = (energyJ: number, fromC: number, toC: number): number =>
  Math.exp((energyJ / GAS_CONSTANT) * (1 / (fromC + zeroCelsiusK) - 1 / (toC + zeroCelsiusK)));

/** Which energy, in J/mol, makes two first-order rates at two temperatures in °C? Exact formula, not rounded. */
export const computeEnergy = (
  one: { readonly atC: number; readonly rate: number },
  other: { readonly atC: number; readonly rate: number },
): number =>
  (GAS_CONSTANT * Math.log(other.rate / one.rate)) /
  (1 / (one.atC + zeroCelsiusK) - 1 / (other.atC + zeroCelsiusK));

/** Which first-order rate, per minute, loses this share in so many minutes? Share from 0 to 1. */
export const rateOfLoss = (share: number, minutes: number): number => -Math.log(1 - share) / minutes;

/** Which first-order rate, per minute, has this half-life in minutes? */
export const rateOfHalfLife = (minutes: number): number => Math.LN2 / minutes;
