import type { Question } from '../../../../shared/records/form';
import type { Raw, RawForm } from '../../../../shared/records/readForm';
import { formatQuantity } from '../../../../shared/units/format';
import { readNumber } from '../../../../shared/units/numberField';
import type { UnitSettings } from '../../../../shared/units/quantity';
import type { AnyQuestionWords } from '../../../words/formWords';
import type { Words } from '../../../words/words';
import { isDefault, readRows } from './places';

/** What a line is said in. */
export interface Saying {
  readonly words: Words;
  readonly units: UnitSettings;
}

function sayNumber(
  question: Question & { kind: 'number' },
  said: AnyQuestionWords,
  value: Raw,
  { words, units }: Saying,
): string {
  if (value === 'unknown' && question.unknown === true) return words.general.dontKnow;
  const read = typeof value === 'string' ? readNumber(value, question.field, units) : null;
  const canonical = read === null ? question.or : read.ok ? read.value : undefined;
  if (canonical === 'unknown') return words.general.dontKnow;
  if (canonical === undefined) return typeof value === 'string' ? value : '';
  const figure = formatQuantity(canonical, question.field.quantity, units, words.locale);
  return said.told?.(figure) ?? figure;
}

/** A figure alone, without its question, says nothing where hardly anybody is asked and it is as usual. */
const isAsUsual = (question: Question, value: Raw, { units }: Saying): boolean =>
  question.more === true && isDefault(question, value, units);

/** One row of a list in one line: "Flat iron · Wet · 3 days a week · 390 °F". */
export const sayRow = (
  form: Readonly<Record<string, Question>>,
  words: Readonly<Record<string, AnyQuestionWords>>,
  row: RawForm,
  saying: Saying,
): string =>
  Object.entries(form)
    .filter(([name, question]) => row[name] !== undefined && !isAsUsual(question, row[name], saying))
    .map(([name, question]) => sayAnswer(question, words[name] ?? { ask: name }, row[name], saying))
    .filter((text) => text !== '')
    .join(' · ');

/** What was answered, in words and in the station's units; its default where nothing was said; else nothing. */
export function sayAnswer(question: Question, said: AnyQuestionWords, value: Raw, saying: Saying): string {
  const { words, units } = saying;
  const sayOption = (option: string) => said.options?.[option] ?? option;
  switch (question.kind) {
    case 'choice': {
      const chosen = typeof value === 'string' && value !== '' ? value : question.or;
      return chosen === undefined ? '' : sayOption(chosen);
    }
    case 'choices':
      return readChosen(value).map(sayOption).join(', ');
    case 'number':
      return sayNumber(question, said, value, saying);
    case 'text':
      return typeof value === 'string' && value !== '' ? value : (question.or ?? '');
    case 'time':
      return typeof value === 'number' ? words.moments.dayAndTime(value) : '';
    case 'list': {
      if (value === undefined || value === null) return '';
      const rows = readRows(value);
      return rows.length === 0
        ? (said.noRows ?? '')
        : formatQuantity(rows.length, 'count', units, words.locale);
    }
  }
}

/** Which options of a question with several answers stand. */
export const readChosen = (value: Raw): readonly string[] =>
  Array.isArray(value) ? (value as readonly string[]) : [];
