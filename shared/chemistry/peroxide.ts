import { type Branded, brand } from '../units/brand';

/** Strength of a developer in % w/v: grams of hydrogen peroxide in 100 ml. */
export type PeroxidePercent = Branded<'PeroxidePercent'>;

/** Strength of a developer in volumes: litres of oxygen that one litre gives off. */
export type Volume = Branded<'Volume'>;

/** Litres that one mole of gas fills at 0 °C and 1 atm. from memory: CODATA, 22.41397 L/mol. */
const LITRES_A_MOLE = 22.414;

/** Grams in one mole of H₂O₂. from memory: IUPAC standard atomic weights, H 1.00794 and O 15.9994. */
const GRAMS_A_MOLE = 34.0147;

/** Litres of oxygen from one mole of peroxide: 2 H₂O₂ → 2 H₂O + O₂ gives half a mole, so 11.207. Exact stoichiometry. */
const OXYGEN_LITRES_A_MOLE = LITRES_A_MOLE / 2;

/** % w/v is grams in a tenth of a litre. */
const GRAMS_A_LITRE_A_PERCENT = 10;

/**
 * Volumes to a per cent on the label: 10, 20, 30, 40 vol are 3, 6, 9, 12 %.
 * common practice, no source, but for 40 vol = 12 %: published, Reg. (EC) 1223/2009 Annex III entry 12.
 */
const NOMINAL_VOLUMES = 10;
const NOMINAL_PERCENT = 3;

/**
 * The strongest that may go on hair, ready for use: 12 % or 40 volumes.
 * published: Reg. (EC) 1223/2009 Annex III entry 12, as replaced by Reg. (EU) 2019/831.
 */
export const LEGAL_CEILING_PERCENT = 12;

/**
 * How many volumes is a bottle of so many per cent, as the trade labels it?
 * Nominal: 12 % is 40. Proportional in between and beyond; not rounded; non-finite stays non-finite.
 * Checked by tests/evidence/peroxide.test.ts.
 */
export const toVolumes = (percent: PeroxidePercent): Volume =>
  brand((percent * NOMINAL_VOLUMES) / NOMINAL_PERCENT);

/** How many per cent is a bottle of so many volumes, as the trade labels it? The way back from `toVolumes`. */
export const toPercent = (volume: Volume): PeroxidePercent =>
  brand((volume * NOMINAL_PERCENT) / NOMINAL_VOLUMES);

/**
 * How strong is it in moles a litre? mol/L from % w/v, exact stoichiometry.
 * Checked by tests/evidence/peroxide.test.ts.
 */
export const computeMolarity = (percent: PeroxidePercent): number =>
  (percent * GRAMS_A_LITRE_A_PERCENT) / GRAMS_A_MOLE;

/**
 * How many volumes does chemistry give it, where the label rounds?
 * 11.207 × mol/L at 0 °C and 1 atm: 12 % is 39.5 volumes, not 40. Not rounded. For training, never for a label.
 * Checked by tests/evidence/peroxide.test.ts.
 */
export const computeExactVolumes = (percent: PeroxidePercent): Volume =>
  brand(OXYGEN_LITRES_A_MOLE * computeMolarity(percent));

/** How many per cent does chemistry give it? The way back from `computeExactVolumes`: 40 volumes are 12.141 %. */
export const computeExactPercent = (volume: Volume): PeroxidePercent =>
  brand(((volume / OXYGEN_LITRES_A_MOLE) * GRAMS_A_MOLE) / GRAMS_A_LITRE_A_PERCENT);

/**
 * May this bottle be used on hair at all?
 * True from 0 to 12.0 % inclusive; false above, below zero, and for a figure that is none. Judges the label's per
 * cent, so that 40 vol is allowed. Checked by tests/evidence/peroxide.test.ts.
 */
export const isWithinCeiling = (percent: PeroxidePercent): boolean =>
  0 <= percent && percent <= LEGAL_CEILING_PERCENT;
