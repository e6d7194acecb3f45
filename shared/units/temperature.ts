import { type Branded, brand } from './brand';

export type Celsius = Branded<'Celsius'>;
export type Fahrenheit = Branded<'Fahrenheit'>;

/**
 * What does the tool's °C setting read in °F?
 * Exact by definition (32 °F = 0 °C, 212 °F = 100 °C), not rounded; non-finite in, non-finite out.
 * Checked by tests/shared/units/conversions.test.ts.
 */
export const toFahrenheit = (celsius: Celsius): Fahrenheit => brand((celsius * 9) / 5 + 32);

/** What does the tool's °F setting read in °C? The way back from `toFahrenheit`, under the same terms. */
export const toCelsius = (fahrenheit: Fahrenheit): Celsius => brand(((fahrenheit - 32) * 5) / 9);
