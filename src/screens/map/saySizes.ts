import { brand } from '../../../shared/units/brand';
import { formatLength, formatQuantity, formatRange } from '../../../shared/units/format';
import type { Centimetre } from '../../../shared/units/length';
import { findShownUnit, type Quantity, roundTo, type UnitSettings } from '../../../shared/units/quantity';
import type { Range } from '../../../shared/units/range';
import type { Words } from '../../words/words';

/** As finely as hair is measured by eye: whole centimetres, half inches. */
const shownStep = { cm: 1, in: 0.5 } as const;

/** About how long? "33 cm", "13 in", "12.5 in": as finely as a tape beside hair is read. */
export function sayAbout(cm: number, units: UnitSettings, locale: string): string {
  const { toShown, toCanonical } = findShownUnit('length', units);
  const step = shownStep[units.length];
  const shown = Math.round(toShown(cm) / step) * step;
  return formatLength(brand<Centimetre>(toCanonical(shown)), units, locale);
}

/** From about how long to how long? One figure where it was measured. */
export function sayAboutRange({ low, typical, high }: Range, units: UnitSettings, words: Words): string {
  const say = (cm: number) => sayAbout(cm, units, words.locale);
  return low === high
    ? say(typical)
    : words.hair.likely(say(typical), words.hair.fromTo(say(low), say(high)));
}

/** The range in another unit, rounded for reading. */
export const roundRange = ({ low, typical, high }: Range, digits: number, factor = 1): Range => ({
  low: roundTo(low * factor, digits),
  typical: roundTo(typical * factor, digits),
  high: roundTo(high * factor, digits),
});

/** As finely as it is known: a tenth where it is one figure or small, whole where it is a band of ten and more. */
export const roundAsKnown = (range: Range): Range =>
  roundRange(range, range.low < range.high && range.typical >= 10 ? 0 : 1);

/** A difference of temperatures has no zero of its own: °F are nine fifths of °C. */
const differenceIn = { C: 1, F: 9 / 5 } as const;

/** By how much? "0–50 °C" or "0–90 °F": a difference, not a temperature. */
export function sayDifference(celsius: Range, units: UnitSettings, locale: string): string {
  const shown = roundRange(celsius, 0, differenceIn[units.temperature]);
  return `${formatRange(shown, 'count', units, locale)}\u00a0°${units.temperature}`;
}

/** The share that is left, "65–80 %", in whole per cent: a band, never a figure that nobody measured. */
export const sayShares = (share: Range, units: UnitSettings, locale: string): string =>
  formatRange(roundRange(share, 0, 100), 'percent', units, locale);

/** One figure, or the likely one with its band, as a colourist says it. */
export function sayLikely(
  range: Range,
  quantity: Quantity,
  units: UnitSettings,
  locale: string,
  join: (likely: string, range: string) => string,
): string {
  const likely = formatQuantity(range.typical, quantity, units, locale);
  return range.low === range.high ? likely : join(likely, formatRange(range, quantity, units, locale));
}
