import { brand } from './brand';
import { toCentimetres, toInches } from './length';
import { toGrams, toOunces } from './mass';
import { toCelsius, toFahrenheit } from './temperature';

/** In which units does this station speak? */
export interface UnitSettings {
  readonly temperature: 'C' | 'F';
  readonly mass: 'g' | 'oz';
  readonly length: 'cm' | 'in';
}

/** Everything that is typed or shown as a number. Canonical units: °C, g, cm, mm, %, vol, min, s; the rest have none. */
export type Quantity =
  | 'temperature'
  | 'mass'
  | 'length'
  | 'millimetres'
  | 'percent'
  | 'volume'
  | 'minutes'
  | 'seconds'
  | 'count'
  | 'level'
  | 'parts';

/** How one quantity is shown: its symbol, its digits after the point, and the way to the canonical unit and back. */
export interface ShownUnit {
  readonly symbol: string;
  readonly digits: number;
  readonly toShown: (canonical: number) => number;
  readonly toCanonical: (shown: number) => number;
}

const same = (value: number): number => value;
const asIs = (symbol: string, digits: number): ShownUnit => ({
  symbol,
  digits,
  toShown: same,
  toCanonical: same,
});

const converted = {
  C: asIs('°C', 0),
  F: {
    symbol: '°F',
    digits: 0,
    toShown: (c) => toFahrenheit(brand(c)),
    toCanonical: (f) => toCelsius(brand(f)),
  },
  g: asIs('g', 1),
  oz: {
    symbol: 'oz',
    digits: 2,
    toShown: (g) => toOunces(brand(g)),
    toCanonical: (oz) => toGrams(brand(oz)),
  },
  cm: asIs('cm', 1),
  in: {
    symbol: 'in',
    digits: 2,
    toShown: (cm) => toInches(brand(cm)),
    toCanonical: (inch) => toCentimetres(brand(inch)),
  },
} as const satisfies Record<UnitSettings[keyof UnitSettings], ShownUnit>;

const fixed = {
  /** A ruler on the glass is read in millimetres, whatever the station's lengths are told in. */
  millimetres: asIs('mm', 1),
  percent: asIs('%', 1),
  volume: asIs('vol', 1),
  minutes: asIs('min', 1),
  seconds: asIs('s', 1),
  count: asIs('', 2),
  level: asIs('', 1),
  parts: asIs('', 2),
} as const satisfies Record<Exclude<Quantity, keyof UnitSettings>, ShownUnit>;

/**
 * In which unit, and how finely, does this station show it?
 * Digits are at most so many after the point (trailing zeros are dropped): as fine as a setting dial, a bar scale and
 * a ruler are read. Checked by tests/shared/units/format.test.ts.
 */
export function findShownUnit(quantity: Quantity, units: UnitSettings): ShownUnit {
  switch (quantity) {
    case 'temperature':
    case 'mass':
    case 'length':
      return converted[units[quantity]];
    default:
      return fixed[quantity];
  }
}

/**
 * The value to so many digits after the point, halves away from zero; −0 becomes 0.
 * Rounds the number as stored: 1.005 is stored a little below itself and gives 1.00.
 */
export const roundTo = (value: number, digits: number): number => Number(value.toFixed(digits)) + 0;
