import type { Form, Question } from '../../shared/records/form';
import { askForms } from '../../shared/records/forms/asked';
import { type Raw, type RawForm, readForm } from '../../shared/records/readForm';
import { askSteps } from '../../shared/records/steps';
import { writeForm } from '../../shared/records/writeForm';
import type { UnitSettings } from '../../shared/units/quantity';
import type { Lesson } from './lesson';
import { findWish, lessonUnits } from './readTruth';

/** What she says to one question. `words` null: she says what is true, in the option's own plain words. */
export interface Heard {
  readonly words: string | null;
  /** The answer that means; null where it answers nothing, or where there is nothing to ask. */
  readonly means: Raw;
}

/** What she says on sitting down answers this question, in her own words. */
const SITTING_DOWN = 'client.service';

const isObject = (raw: unknown): raw is RawForm => typeof raw === 'object' && raw !== null;

/** What stands under the rest of a path: `0.wetness` in a list of rows. */
const dig = (told: Raw | RawForm, rest: readonly string[]): Raw =>
  rest.reduce<Raw | RawForm>(
    (inner, name) => (isObject(inner) && Object.hasOwn(inner, name) ? inner[name] : null),
    told,
  ) as Raw;

/** What is true of this question, as it would be tapped; null where nothing is. */
export function findTrue({ truth }: Lesson, path: string): Raw {
  const [step, ...rest] = path.split('.');
  const asked = askSteps.find((each) => each === step);
  if (asked === undefined || asked === 'heatSpray' || findQuestion(path) === null) return null;
  return dig(truth[asked], rest);
}

/** What the script has for this question: for itself, or for the whole list it is a row of. */
function findScript({ says }: Lesson, path: string) {
  const names = path.split('.');
  for (let length = names.length; length >= 2; length -= 1) {
    const script = says[names.slice(0, length).join('.')];
    if (script !== undefined) return { script, rest: names.slice(length) };
  }
  return null;
}

/**
 * What is so of a question that does not apply to her: what the form takes where nothing is said, and else none of it. Only
 * where there is no such answer does she not know.
 */
function findUsual(path: string): Raw {
  const question = findQuestion(path);
  switch (question?.kind) {
    case 'choice': {
      const usual = [question.or, 'no', 'never', 'unknown'];
      return usual.find((each) => each !== undefined && question.options.includes(each)) ?? null;
    }
    case 'choices':
      return question.none === undefined ? null : [question.none];
    case 'number': {
      if (question.or !== undefined) return String(question.or);
      const { field } = question;
      const isCount = field.quantity === 'count' && field.min === 0 && field.countsBack !== true;
      return isCount ? '0' : question.unknown === true ? 'unknown' : null;
    }
    default:
      return null;
  }
}

/** How she would like it finished, and what she agrees to where she is asked closer about something she may give way in. */
function hearFinish(lesson: Lesson, rest: readonly string[], isCloser: boolean): Heard {
  const { agreesTo } = lesson;
  const wished = dig(findWish(lesson), rest);
  const agreed = agreesTo === undefined ? wished : dig(agreesTo.finish, rest);
  const givesWay = JSON.stringify(agreed) !== JSON.stringify(wished);
  return isCloser && givesWay
    ? { words: agreesTo?.words ?? null, means: agreed }
    : { words: null, means: wished };
}

/**
 * What does she say to this question, at first or asked closer?
 * Of what the lesson does not script she says what is true, and none of what does not apply to her. Of how it is finished
 * she says what she would like; of the hair itself fingers tell. Checked in tests/machines/practice/asking.test.ts.
 */
export function hear(lesson: Lesson, path: string, isCloser: boolean): Heard {
  const [step, ...rest] = path.split('.');
  if (step === 'heatSpray') return hearFinish(lesson, rest, isCloser);
  const found = findScript(lesson, path);
  const wants = path === SITTING_DOWN && !isCloser ? lesson.wants : null;
  if (found === null) return { words: wants, means: findTrue(lesson, path) ?? findUsual(path) };
  const { first, closer } = found.script;
  const said = isCloser ? (closer ?? first) : first;
  return { words: wants ?? said.words, means: dig(said.means, found.rest) };
}

/** The question at this path, be it of a step or of a row in one of its lists; null of none. */
export function findQuestion(path: string): Question | null {
  const [step, ...names] = path.split('.');
  const asked = askSteps.find((each) => each === step);
  let form: Form = asked === undefined ? {} : askForms[asked];
  let found: Question | null = null;
  for (const name of names) {
    if (found?.kind === 'list' && /^\d+$/.test(name)) {
      form = found.of;
      found = null;
      continue;
    }
    if (found !== null || !Object.hasOwn(form, name)) return null;
    found = form[name] ?? null;
  }
  return found;
}

/**
 * What she means, as it is tapped or typed at this station: 200 °C is 392 where °F is shown. Null stays null, and what the
 * question does not take is handed on as it is. Checked in tests/machines/practice/asking.test.ts.
 */
export function writeHeard(path: string, means: Raw, units: UnitSettings): Raw {
  const question = findQuestion(path);
  if (question === null || means === null || means === undefined) return null;
  const { when: _when, whenAgeLine: _line, ...always } = question;
  const form: Form = { means: always as Question };
  const read = readForm(form, { means }, { units: lessonUnits, hasAgeLine: true, nowMs: 0 });
  return read.ok ? (writeForm(form, read.value, units).means ?? null) : means;
}
