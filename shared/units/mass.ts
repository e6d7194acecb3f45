import { type Branded, brand } from './brand';

export type Gram = Branded<'Gram'>;
export type Ounce = Branded<'Ounce'>;

/** Grams in one avoirdupois ounce, exact. published: international yard and pound agreement, 1959. */
export const gramsPerOunce = 28.349523125;

/**
 * What does the scale show in ounces? Exact factor, not rounded; non-finite in, non-finite out.
 * Checked by tests/shared/units/conversions.test.ts.
 */
export const toOunces = (grams: Gram): Ounce => brand(grams / gramsPerOunce);

/** What does the scale show in grams? The way back from `toOunces`. */
export const toGrams = (ounces: Ounce): Gram => brand(ounces * gramsPerOunce);
