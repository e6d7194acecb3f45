import { brand } from './brand';
import type { Centimetre } from './length';
import type { Gram } from './mass';
import { findShownUnit, type Quantity, roundTo, type UnitSettings } from './quantity';
import type { Range } from './range';
import type { Celsius } from './temperature';
import { msPerSecond } from './time';

/** Shown in place of a number that is none. */
export const noNumber = '–';

/** Between figure and symbol, so that a line never breaks there. */
const noBreakSpace = '\u00a0';

const writers = new Map<string, Intl.NumberFormat>();

function findWriter(locale: string, digits: number): Intl.NumberFormat {
  const key = `${locale} ${digits}`;
  const known = writers.get(key);
  if (known) return known;
  const options = { maximumFractionDigits: digits, useGrouping: false, numberingSystem: 'latn' } as const;
  const made = new Intl.NumberFormat(locale, options);
  writers.set(key, made);
  return made;
}

/**
 * A figure as it would be typed with a point, with the decimal mark of the language: "1,5". Fields read either mark; any
 * other text stays as it is. Checked by tests/shared/units/format.test.ts.
 */
export const markDecimals = (typed: string, locale: string): string =>
  /^-?\d*\.\d*$/.test(typed) ? typed.replace('.', findDecimalMark(locale)) : typed;

/** "." or ",": what stands before the tenths in this language. */
export const findDecimalMark = (locale: string): string => findWriter(locale, 1).format(0.5).charAt(1);

function writeFigure(canonical: number, quantity: Quantity, units: UnitSettings, locale: string): string {
  const { digits, toShown } = findShownUnit(quantity, units);
  const shown = roundTo(toShown(canonical), digits);
  return Number.isFinite(shown) ? findWriter(locale, digits).format(shown) : noNumber;
}

const withSymbol = (figure: string, symbol: string): string =>
  symbol === '' ? figure : `${figure}${noBreakSpace}${symbol}`;

/**
 * What does it say in the station's unit? Figure and symbol, no words: "205 °C", "1.41 oz", "12 %", "7.5".
 * Takes the canonical unit (°C, g, cm, %). Digits and halves: `findShownUnit`, `roundTo`; Latin digits, the
 * locale's decimal mark, no thousands mark, never "-0"; a number that is none is a dash.
 * Checked by tests/shared/units/format.test.ts.
 */
export const formatQuantity = (
  canonical: number,
  quantity: Quantity,
  units: UnitSettings,
  locale: string,
): string =>
  withSymbol(writeFigure(canonical, quantity, units, locale), findShownUnit(quantity, units).symbol);

/** How hot? Whole degrees: "205 °C" or "401 °F". */
export const formatTemperature = (celsius: Celsius, units: UnitSettings, locale: string): string =>
  formatQuantity(celsius, 'temperature', units, locale);

/** How much? To 0.1 g or 0.01 oz: "37.5 g" or "1.32 oz". */
export const formatMass = (grams: Gram, units: UnitSettings, locale: string): string =>
  formatQuantity(grams, 'mass', units, locale);

/** How long? To 0.1 cm or 0.01 in: "25.4 cm" or "10 in". */
export const formatLength = (centimetres: Centimetre, units: UnitSettings, locale: string): string =>
  formatQuantity(centimetres, 'length', units, locale);

/**
 * How long is it on the ruler? "139 mm", and with the inches beside it where the station speaks in inches:
 * "139 mm (5.47 in)". Read in millimetres everywhere: a hundredth of an inch is no mark on a ruler.
 * Checked by tests/shared/units/format.test.ts.
 */
export function formatRuler(millimetres: number, units: UnitSettings, locale: string): string {
  const read = formatQuantity(millimetres, 'millimetres', units, locale);
  const beside = formatInchesBeside(millimetres, units, locale);
  return beside === null ? read : `${read} (${beside})`;
}

/** The same in inches, to stand beside the millimetres; null where the station does not speak in inches. */
export const formatInchesBeside = (
  millimetres: number,
  units: UnitSettings,
  locale: string,
): string | null => (units.length === 'in' ? formatLength(brand(millimetres / 10), units, locale) : null);

/** Which share of a hundred? To 0.1: "12 %". Takes 12, not 0.12. */
export const formatPercent = (percent: number, units: UnitSettings, locale: string): string =>
  formatQuantity(percent, 'percent', units, locale);

/**
 * From where to where? "194–350 min", and one figure when both ends show the same.
 * Checked by tests/shared/units/format.test.ts.
 */
export function formatRange(range: Range, quantity: Quantity, units: UnitSettings, locale: string): string {
  const low = writeFigure(range.low, quantity, units, locale);
  const high = writeFigure(range.high, quantity, units, locale);
  return withSymbol(low === high ? low : `${low}–${high}`, findShownUnit(quantity, units).symbol);
}

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/**
 * How long still, or how long over? "12:47", "1:05:09" from one hour on, "+0:41" when over.
 * Takes milliseconds left, negative when over. What is left rounds up to the second, so that "0:00" means over; what
 * is over rounds down, so that "+0:01" means a whole second has passed. A number that is none is a dash.
 * Checked by tests/shared/units/format.test.ts.
 */
export function formatCountdown(leftMs: number): string {
  if (!Number.isFinite(leftMs)) return noNumber;
  const seconds = Math.abs(Math.ceil(leftMs / msPerSecond));
  return `${leftMs < 0 && seconds > 0 ? '+' : ''}${writeClock(seconds)}`;
}

/**
 * How long after it began? "2:00", "1:05:09" from one hour on: whole seconds that have passed, so 1:59.9 is "1:59".
 * Takes milliseconds; what is none, or lies before the beginning, is a dash.
 * Checked by tests/shared/units/format.test.ts.
 */
export const formatElapsed = (sinceMs: number): string =>
  sinceMs >= 0 && Number.isFinite(sinceMs) ? writeClock(Math.floor(sinceMs / msPerSecond)) : noNumber;

function writeClock(seconds: number): string {
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  return `${hours > 0 ? `${hours}:${twoDigits(minutes)}` : minutes}:${twoDigits(seconds % 60)}`;
}
