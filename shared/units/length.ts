import { type Branded, brand } from './brand';

export type Centimetre = Branded<'Centimetre'>;
export type Inch = Branded<'Inch'>;

/** Centimetres in one inch, exact. published: international yard and pound agreement, 1959. */
export const centimetresPerInch = 2.54;

/**
 * How long is it in inches? Exact factor, not rounded; non-finite in, non-finite out.
 * Checked by tests/shared/units/conversions.test.ts.
 */
export const toInches = (centimetres: Centimetre): Inch => brand(centimetres / centimetresPerInch);

/** How long is it in centimetres? The way back from `toInches`. */
export const toCentimetres = (inches: Inch): Centimetre => brand(inches * centimetresPerInch);
