import type { Form, ListQuestion, Question } from '../../../../shared/records/form';
import { type AskContext, isAsked } from '../../../../shared/records/isAsked';
import type { FieldRefusal, Raw, RawForm } from '../../../../shared/records/readForm';
import { writeNumber } from '../../../../shared/units/numberField';
import type { UnitSettings } from '../../../../shared/units/quantity';
import type { AnyFormWords, AnyQuestionWords } from '../../../words/formWords';

/** One question of a sheet: where it stands, what was said to it, and whether anybody still has to say it. */
export interface Place {
  /** Under which a refusal finds it: `service`, `habits.0.tool`. */
  readonly path: string;
  readonly name: string;
  readonly question: Question;
  readonly words: AnyQuestionWords;
  readonly value: Raw;
  /** In which row of which list it is asked; null where it is the form's own. */
  readonly row: { readonly list: string; readonly index: number } | null;
  readonly state: 'open' | 'refused' | 'usual' | 'said';
  /** Asked only by tapping its line. */
  readonly isMore: boolean;
}

/** What a form asks now, and under what it is read. */
export interface SheetForm {
  readonly form: Form;
  readonly words: AnyFormWords;
  readonly raw: RawForm;
  readonly refusals: readonly FieldRefusal[];
  readonly context: AskContext;
  readonly units: UnitSettings;
}

const hasDefault = (question: Question): boolean => 'or' in question && question.or !== undefined;

/** The answers so far, as far as another question may depend on them: choices, and their defaults. */
const listChoices = (form: Form, raw: RawForm): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(form).map(([name, question]) => [
      name,
      raw[name] ?? ('or' in question ? question.or : undefined),
    ]),
  );

export const readRows = (value: Raw): readonly RawForm[] =>
  Array.isArray(value) ? (value as readonly RawForm[]) : [];

function findState(
  question: Question,
  value: Raw,
  path: string,
  { refusals, units }: SheetForm,
): Place['state'] {
  if (refusals.some((refusal) => refusal.path === path)) return 'refused';
  if (value === undefined || value === null || value === '') return hasDefault(question) ? 'usual' : 'open';
  return isDefault(question, value, units) ? 'usual' : 'said';
}

/** What is kept of a question nobody touched is its default: that is no more than usual. */
export function isDefault(question: Question, value: Raw, units: UnitSettings): boolean {
  if (!('or' in question) || question.or === undefined) return false;
  if (question.kind !== 'number' || question.or === 'unknown') return value === question.or;
  return value === writeNumber(question.or, question.field, units);
}

function listOf(sheet: SheetForm, prefix: string, row: Place['row']): readonly Place[] {
  const choices = listChoices(sheet.form, sheet.raw);
  return Object.entries(sheet.form)
    .filter(([, question]) => isAsked(question, choices, sheet.context))
    .flatMap(([name, question]): readonly Place[] => {
      const path = prefix + name;
      const value = sheet.raw[name];
      const words = sheet.words[name] ?? { ask: name };
      const place: Place = {
        path,
        name,
        question,
        words,
        value,
        row,
        state: findState(question, value, path, sheet),
        isMore: question.more === true,
      };
      return question.kind === 'list' ? [place, ...listRows(sheet, place, question)] : [place];
    });
}

const listRows = (sheet: SheetForm, { path, value, words }: Place, question: ListQuestion) =>
  readRows(value).flatMap((raw, index) =>
    listOf({ ...sheet, form: question.of, words: words.rows ?? {}, raw }, `${path}.${index}.`, {
      list: path,
      index,
    }),
  );

/** Every question that is asked now, in order; those of a list's rows right after the list. */
export const listPlaces = (sheet: SheetForm): readonly Place[] => listOf(sheet, '', null);

/** Does somebody still have to say this, or to mend it? */
export const isOpen = (place: Place): boolean =>
  place.state === 'refused' || (place.state === 'open' && !place.isMore);

/** In which row does the first question of a list's rows stand? It is asked by the tiles that begin a row. */
export const findFirstOfRow = (question: ListQuestion): string => Object.keys(question.of)[0] ?? '';

/**
 * Which question comes after this one? The rest of its row first, then its list; else the next nobody has answered, from
 * here on and round again; null once all is said. Checked in tests/src/parts/sheet.test.tsx.
 */
export function findNext(places: readonly Place[], path: string | null): string | null {
  const at = places.findIndex((place) => place.path === path);
  const here = places[at];
  if (here?.row != null) {
    const { list, index } = here.row;
    const rest = places.find(
      (place) => place.row?.list === list && place.row.index === index && isOpen(place),
    );
    return rest?.path ?? list;
  }
  const round = [...places.slice(at + 1), ...places.slice(0, Math.max(at, 0))];
  return round.find(isOpen)?.path ?? null;
}
