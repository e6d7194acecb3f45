import { findShownLimits } from '../units/numberField';
import { findShownUnit, roundTo, type UnitSettings } from '../units/quantity';
import type { Form, Question } from './form';
import type { Raw, RawForm } from './readForm';

/** Finer than any display, coarse enough to undo the rounding of a conversion: 204.4… °C is 400 °F again. */
const DIGITS = 6;

function writeAnswer(question: Question, answer: unknown, units: UnitSettings): Raw {
  if (answer === undefined) return undefined;
  if (question.kind === 'number' && typeof answer === 'number') {
    const { min, max } = findShownLimits(question.field, units);
    const shown = roundTo(findShownUnit(question.field.quantity, units).toShown(answer), DIGITS);
    return String(Math.min(Math.max(shown, min), max));
  }
  if (question.kind === 'list' && Array.isArray(answer)) {
    return answer.map((row: Readonly<Record<string, unknown>>) => writeForm(question.of, row, units));
  }
  return answer as Raw;
}

/**
 * What stood in the fields when these answers were given? The way back from `readForm`, in the station's units.
 * Reading it again gives the same answers; at a limit, and in other units than it was typed in, the nearest that can be
 * typed. Checked in tests/shared/records/writeForm.test.ts.
 */
export const writeForm = (
  form: Form,
  answers: Readonly<Record<string, unknown>>,
  units: UnitSettings,
): RawForm =>
  Object.fromEntries(
    Object.entries(form).map(([name, question]) => [name, writeAnswer(question, answers[name], units)]),
  );
