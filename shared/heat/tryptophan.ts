import { computeEnergy, computeSpeedUp, rateOfLoss } from './rate';

/** Which hair: pigmented (light brown alone was measured), unpigmented (white or bleached), or both on one head. */
export type Pigment = 'pigmented' | 'unpigmented' | 'both';

/**
 * How much tryptophan was lost, under an iron of which temperature, in how many minutes of contact?
 * published: McMullen & Jachowicz, Thermal degradation of hair II, J. Cosmet. Sci. 49:245–256, 1998, pp. 248–249. Part
 * I's printed activation energy disagrees with these percentages and is not used. Blind to water.
 * Checked by tests/evidence/tryptophan.test.ts.
 */
export const tryptophanLost = {
  pigmented: [
    { atC: 132, share: 0.275, minutes: 12 },
    { atC: 152, share: 0.5, minutes: 12 },
  ],
  unpigmented: [
    { atC: 132, share: 0.4, minutes: 10 },
    { atC: 152, share: 0.65, minutes: 10 },
  ],
} as const;

/**
 * Where was it measured? °C of the iron and minutes of contact.
 * published: the same authors, part I, J. Cosmet. Sci. 49:223–244, 1998.
 */
export const tryptophanMeasured = { fromC: 130, toC: 164, minutes: 15 } as const;

/** The fastest loss that was measured, a minute. published: McMullen & Jachowicz, J. Cosmet. Sci. 49:223–244, 1998. */
const FASTEST_RATE = 0.12;
/** The most that can be lost within what was measured, as a share: at that rate for all of those minutes. exact of both. */
export const TRYPTOPHAN_MOST_MEASURED = 1 - Math.exp(-FASTEST_RATE * tryptophanMeasured.minutes);

const fitRate = ([cool, hot]: (typeof tryptophanLost)['pigmented' | 'unpigmented']) => {
  const one = { atC: cool.atC, rate: rateOfLoss(cool.share, cool.minutes) };
  const energyJ = computeEnergy(one, { atC: hot.atC, rate: rateOfLoss(hot.share, hot.minutes) });
  return { ...one, energyJ };
};

/** Rate and activation energy (J/mol) that give exactly the published percentages. */
export const tryptophanFits = {
  pigmented: fitRate(tryptophanLost.pigmented),
  unpigmented: fitRate(tryptophanLost.unpigmented),
} as const;

/**
 * How fast is tryptophan lost at this hair temperature? Per minute of contact, first order, not rounded.
 * Through both published points; elsewhere carried on by the same energy. Checked by tests/evidence/tryptophan.test.ts.
 */
export const computeTryptophanRate = (hairC: number, pigment: 'pigmented' | 'unpigmented'): number => {
  const { atC, rate, energyJ } = tryptophanFits[pigment];
  return rate * computeSpeedUp(energyJ, atC, hairC);
};
