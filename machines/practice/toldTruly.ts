import type { Answers } from '../../shared/records/forms/asked';
import { askForms } from '../../shared/records/forms/asked';
import type { Raw, RawForm } from '../../shared/records/readForm';
import { type AskStep, askSteps } from '../../shared/records/steps';
import { writeForm } from '../../shared/records/writeForm';
import type { UnitSettings } from '../../shared/units/quantity';

/** So far may a figure be from the true one, as a share of it. Assumed because months are told in years. */
export const ASSUMED_TOLD_WITHIN = 0.05;

/** So far may a temperature be, in kelvins. Assumed because it is one step of a dial in °F (10 °F), whatever it stands at. */
export const ASSUMED_TOLD_WITHIN_K = 6;

/** Of which step is this question? null of none. */
export const findStepOf = (path: string): AskStep | null =>
  askSteps.find((step) => path.startsWith(`${step}.`)) ?? null;

/** What stands at this path; undefined where nothing does. */
function findAt(answers: Answers, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (inner, name) =>
        typeof inner === 'object' && inner !== null && Object.hasOwn(inner, name)
          ? (inner as Readonly<Record<string, unknown>>)[name]
          : undefined,
      answers,
    );
}

/** Temperatures end in C by name: degrees have no nothing to take a share of. */
const findWithin = (name: string, isTrue: number): number =>
  name.endsWith('C') ? ASSUMED_TOLD_WITHIN_K : ASSUMED_TOLD_WITHIN * Math.abs(isTrue);

/** A tingle that stopped is one answer, however a house reads it. */
const readPlainly = (told: unknown): unknown => (told === 'tingledStops' ? 'tingled' : told);

/** Is what was told the same? Figures within a little; lists whatever their order; of a row all that is true of it. */
function isAlike(told: unknown, isTrue: unknown, name: string): boolean {
  if (typeof isTrue === 'number')
    return typeof told === 'number' && Math.abs(told - isTrue) <= findWithin(name, isTrue);
  if (Array.isArray(isTrue)) {
    if (!Array.isArray(told) || told.length !== isTrue.length) return false;
    return isTrue.every((one: unknown) => told.some((other) => isAlike(other, one, name)));
  }
  if (typeof isTrue === 'object' && isTrue !== null) {
    const row = typeof told === 'object' && told !== null ? (told as Readonly<Record<string, unknown>>) : {};
    return Object.entries(isTrue).every(([inner, value]) => isAlike(row[inner], value, inner));
  }
  return readPlainly(told) === readPlainly(isTrue);
}

/** Does the record say at this path what is true of her? Checked in tests/machines/practice/toldTruly.test.ts. */
export const isToldTruly = (told: Answers, truth: Answers, path: string): boolean =>
  isAlike(findAt(told, path), findAt(truth, path), path.split('.').at(-1) ?? path);

/** What stands at this path, as it would stand in the field of this station. */
export function showAt(answers: Answers, path: string, units: UnitSettings): Raw {
  const [step, ...rest] = path.split('.');
  const asked = askSteps.find((each) => each === step);
  if (asked === undefined) return null;
  const shown = writeForm(askForms[asked], answers[asked] ?? {}, units);
  return rest.reduce<Raw | RawForm>(
    (inner, name) =>
      typeof inner === 'object' && inner !== null ? ((inner as RawForm)[name] ?? null) : null,
    shown,
  ) as Raw;
}
