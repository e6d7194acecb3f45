import type { Form, Question } from '../../../shared/records/form';
import { askForms } from '../../../shared/records/forms/asked';
import { eventForms } from '../../../shared/records/forms/byEvent';
import type { Raw, RawForm } from '../../../shared/records/readForm';
import { findShownLimits, type NumberField } from '../../../shared/units/numberField';
import type { UnitSettings } from '../../../shared/units/quantity';

export const nowMs = Date.UTC(2026, 2, 3, 9, 0);
export const metric: UnitSettings = { temperature: 'C', mass: 'g', length: 'cm' };
export const customary: UnitSettings = { temperature: 'F', mass: 'oz', length: 'in' };

/** Every form there is, by the step or the event that asks it. */
export const allForms: readonly (readonly [string, Form])[] = [
  ...Object.entries(askForms),
  ...Object.entries(eventForms),
];

const isAskedFor = (form: Form, name: string): readonly string[] | undefined =>
  Object.values(form).find(({ when }) => when?.question === name)?.when?.is;

/** Options that make every question ask that hangs on this one. */
const listAskedFor = (form: Form, name: string): readonly string[] => [
  ...new Set(Object.values(form).flatMap(({ when }) => (when?.question === name ? [when.is[0] ?? ''] : []))),
];

function answerWell(form: Form, name: string, question: Question, units: UnitSettings): Raw {
  switch (question.kind) {
    case 'choice':
      return isAskedFor(form, name)?.[0] ?? question.options[0];
    case 'choices':
      return isAskedFor(form, name) === undefined
        ? question.options.filter((option) => option !== question.none).slice(0, 2)
        : listAskedFor(form, name);
    case 'number':
      return String(findShownLimits(question.field, units).min);
    case 'text':
      return 'abc';
    case 'time':
      return question.tense === 'past' ? nowMs - 1 : nowMs + 1;
    case 'list':
      return [answerAll(question.of, units), answerAll(question.of, units)];
  }
}

/** An answer to each question of a form, as a person could give them. */
export function answerAll(form: Form, units: UnitSettings): RawForm {
  return Object.fromEntries(
    Object.entries(form).map(([name, question]) => [name, answerWell(form, name, question, units)]),
  );
}

/** A number field somewhere in a form: its path, and how to put a text into it among good answers. */
export interface FoundField {
  readonly where: string;
  readonly form: Form;
  readonly path: string;
  readonly field: NumberField;
  readonly isUnknownAllowed: boolean;
  readonly fill: (typed: Raw, units: UnitSettings) => RawForm;
}

function shownBy(form: Form, { when }: Question): RawForm {
  if (when === undefined || form[when.question] === undefined) return {};
  const isList = form[when.question]?.kind === 'choices';
  return { [when.question]: isList ? listAskedFor(form, when.question) : (when.is[0] ?? '') };
}

function findIn(where: string, form: Form): readonly FoundField[] {
  return Object.entries(form).flatMap(([name, question]): readonly FoundField[] => {
    if (question.kind === 'list') {
      return findIn(where, question.of).map((inner) => ({
        ...inner,
        form,
        path: `${name}.1.${inner.path}`,
        fill: (typed, units) => ({
          ...answerAll(form, units),
          [name]: [answerAll(question.of, units), inner.fill(typed, units)],
        }),
      }));
    }
    if (question.kind !== 'number') return [];
    const fill = (typed: Raw, units: UnitSettings) => ({
      ...answerAll(form, units),
      ...shownBy(form, question),
      [name]: typed,
    });
    const isUnknownAllowed = question.unknown === true;
    return [{ where, form, path: name, field: question.field, isUnknownAllowed, fill }];
  });
}

/** Every number field of every form, the rows of lists among them. */
export const numberFields: readonly FoundField[] = allForms.flatMap(([where, form]) => findIn(where, form));

/** What was read at this path: `habits.1.settingC`. */
export const lookUp = (answers: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((inner, name) => (inner as Record<string, unknown>)[name], answers);
