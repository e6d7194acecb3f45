import { accept, type Result, refuse } from '../result';
import { findShownUnit, type Quantity, roundTo, type ShownUnit, type UnitSettings } from './quantity';

/** What may be typed into a field. Limits belong to it and stand in the canonical unit (°C, g, cm, %). */
export interface NumberField {
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  /** Only multiples of it, counted from zero in the shown unit: 0.5 for levels, 1 for whole numbers. */
  readonly step?: number;
  /** It counts back from today: less than nothing lies in the future. */
  readonly countsBack?: true;
}

/** Why a typed text was refused, and what would be taken: limits in the shown unit, each of them itself accepted. */
export interface NumberRefusal {
  readonly code:
    | 'empty'
    | 'notANumber'
    | 'notFinite'
    | 'minusZero'
    | 'inFuture'
    | 'tooLow'
    | 'tooHigh'
    | 'notOnStep';
  readonly min: number;
  readonly max: number;
  readonly unit: string;
  /** Which steps are taken, in the shown unit, where it was off them. */
  readonly step?: number;
}

/** Digits with at most one decimal point or comma, and a hyphen or a minus before them. Linear in its text. */
const plainNumber = /^[-\u2212]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)$/;
const withExponent = /^[-+\u2212]?[0-9]+(?:[.,][0-9]*)?e[-+]?[0-9]+$/i;
const infinity = /^[-+\u2212]?(?:infinity|\u221e)$/i;

/** How far off its step a value may lie before it counts as off: the rounding of one division, no more. */
const stepTolerance = 1e-9;

const toPoint = (text: string): string => text.replace('\u2212', '-').replace(',', '.');

const isInside = (canonical: number, field: NumberField): boolean =>
  field.min <= canonical && canonical <= field.max;

/** The nearest shown figure to a limit that is itself accepted: one shown digit inward where rounding left the range. */
function roundInward(limit: number, inward: 1 | -1, field: NumberField, unit: ShownUnit): number {
  const finest = field.step ?? 10 ** -unit.digits;
  const nearest = Math.round(unit.toShown(limit) / finest);
  const steps = isInside(unit.toCanonical(roundTo(nearest * finest, 9)), field) ? nearest : nearest + inward;
  return roundTo(steps * finest, 9);
}

/**
 * From where to where may be typed, in the station's unit?
 * Rounded inward to the shown digits or the step, so both figures are themselves accepted. A field must hold at least
 * one figure that can be shown. Checked by tests/shared/units/numberField.test.ts.
 */
export function findShownLimits(field: NumberField, units: UnitSettings): Omit<NumberRefusal, 'code'> {
  const unit = findShownUnit(field.quantity, units);
  return {
    min: roundInward(field.min, 1, field, unit),
    max: roundInward(field.max, -1, field, unit),
    unit: unit.symbol,
  };
}

/** Why is this not a number one would type? Nobody types an exponent; one that overflows is said to be endless. */
function explainText(text: string): NumberRefusal['code'] {
  if (infinity.test(text)) return 'notFinite';
  return withExponent.test(text) && !Number.isFinite(Number(toPoint(text))) ? 'notFinite' : 'notANumber';
}

function judgeNumber(shown: number, field: NumberField, unit: ShownUnit): NumberRefusal['code'] | undefined {
  if (!Number.isFinite(shown)) return 'notFinite';
  if (Object.is(shown, -0)) return 'minusZero';
  const canonical = unit.toCanonical(shown);
  if (field.countsBack === true && canonical < 0) return 'inFuture';
  if (canonical < field.min) return 'tooLow';
  if (canonical > field.max) return 'tooHigh';
  if (field.step === undefined) return undefined;
  const steps = shown / field.step;
  return Math.abs(steps - Math.round(steps)) > stepTolerance ? 'notOnStep' : undefined;
}

/**
 * What does the typed text mean?
 * Reads the station's unit, gives the canonical one (°C, g, cm, %), unrounded and inside the field's limits. Takes a
 * decimal point or comma and spaces around; takes no thousands marks, exponents, signs of plus, units, or digits other
 * than 0–9. Any text at all gives a value or a refusal, never an exception.
 * Checked by tests/shared/units/numberField.test.ts.
 */
export function readNumber(
  text: string,
  field: NumberField,
  units: UnitSettings,
): Result<number, NumberRefusal> {
  const refuseWith = (code: NumberRefusal['code']) =>
    refuse({
      code,
      ...findShownLimits(field, units),
      ...(code === 'notOnStep' && field.step !== undefined ? { step: field.step } : {}),
    });
  const typed = text.trim();
  if (typed === '') return refuseWith('empty');
  if (!plainNumber.test(typed)) return refuseWith(explainText(typed));
  const unit = findShownUnit(field.quantity, units);
  const shown = Number(toPoint(typed));
  const code = judgeNumber(shown, field, unit);
  return code === undefined ? accept(unit.toCanonical(shown)) : refuseWith(code);
}

/**
 * What stands in the field for a value that is kept? Digits and a decimal point only, in the station's unit.
 * Takes an accepted canonical value, rounds it to the shown digits and keeps it inside the shown limits, so that
 * reading it again gives the same value to within one shown digit. A number that is none leaves the field empty.
 * Checked by tests/shared/units/numberField.test.ts.
 */
export function writeNumber(canonical: number, field: NumberField, units: UnitSettings): string {
  const unit = findShownUnit(field.quantity, units);
  const shown = roundTo(unit.toShown(canonical), unit.digits);
  if (!Number.isFinite(shown)) return '';
  const { min, max } = findShownLimits(field, units);
  return String(Math.min(Math.max(shown, min), max));
}
