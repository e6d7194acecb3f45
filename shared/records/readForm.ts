import { accept, type Result, refuse } from '../result';
import { type NumberRefusal, readNumber } from '../units/numberField';
import type { UnitSettings } from '../units/quantity';
import type { AnswersOf, Form, Question, TextQuestion } from './form';
import { type AskContext, isAsked } from './isAsked';
import { findTooPersonal, type TooPersonal } from './ticket';

/** What was tapped or typed, as the screen has it: texts and lists of texts, nothing judged yet. */
export type Raw = string | number | readonly string[] | readonly RawForm[] | null | undefined;
export interface RawForm {
  readonly [name: string]: Raw;
}

/** What is wrong with an answer that its field alone could not tell. */
export type ConflictCode =
  | 'overLimit'
  | 'timeNotUp'
  | 'readTooEarly'
  | 'earlierThanNoted'
  | 'anotherService'
  | 'tonerLifts'
  | 'tonerNotOnShelf'
  | 'tonerTested'
  | 'needsCorrection'
  | 'noStrandHeld'
  | 'hasBadSigns'
  | 'growsSo'
  | 'callFirst'
  | 'notHomeYet'
  | 'notAsTested'
  | 'stepTooCoarse'
  | 'moreThanABowl'
  | 'bottlesDoNotMakeIt'
  | 'notTheParts'
  | 'madeStronger'
  | 'notToldYet';

/** What is wrong with one field; `path` is its name, with the row of a list in between (`habits.0.settingC`). */
export type FieldRefusal = { readonly path: string } & (
  | NumberRefusal
  | {
      readonly code:
        | 'notAnswered'
        | 'notAnOption'
        | 'noneAndOthers'
        | 'empty'
        | 'malformed'
        | 'tooLong'
        | 'tooMany'
        | 'tooFew';
      readonly most?: number;
    }
  | { readonly code: 'notYet' | 'alreadyPast' | TooPersonal | ConflictCode }
);

/**
 * `isPartial`: questions of the form itself may still be unanswered; what is answered must be right.
 * `isStation`: the station itself says it, and may give what no screen gives.
 */
export interface ReadingContext extends AskContext {
  readonly isPartial?: boolean;
  readonly isStation?: boolean;
  readonly units: UnitSettings;
  readonly nowMs: number;
}

type Read = Result<unknown, readonly FieldRefusal[]>;
const no = (refusal: FieldRefusal): Read => refuse([refusal]);

// A visible text holds no control characters; a pasted line break would break a label or a table.
const hasControlCharacter = (text: string): boolean => /\p{Cc}/u.test(text);
/** In a long text lines end, and a pasted table has tabs: nothing else that cannot be seen is kept. */
const hasOtherThanLines = (text: string): boolean => /[^\P{Cc}\t\n\r]/u.test(text);

function readText(question: TextQuestion, raw: Raw, path: string): Read {
  const text = typeof raw === 'string' ? raw.trim() : '';
  if (text === '') return question.or === undefined ? no({ path, code: 'empty' }) : accept(question.or);
  const isBroken = question.hasLines === true ? hasOtherThanLines : hasControlCharacter;
  if (isBroken(text)) return no({ path, code: 'malformed' });
  if ([...text].length > question.maxLength) return no({ path, code: 'tooLong', most: question.maxLength });
  const personal = question.isTicket === true ? findTooPersonal(text) : null;
  return personal === null ? accept(text) : no({ path, code: personal });
}

function readChoices(question: { options: readonly string[]; none: string }, raw: Raw, path: string): Read {
  if (!Array.isArray(raw) || raw.length === 0) return no({ path, code: 'notAnswered' });
  const chosen = question.options.filter((option) => (raw as readonly unknown[]).includes(option));
  if (chosen.length !== new Set(raw).size) return no({ path, code: 'notAnOption' });
  if (chosen.includes(question.none) && chosen.length > 1) return no({ path, code: 'noneAndOthers' });
  return accept(chosen);
}

function readTime(tense: 'past' | 'coming', raw: Raw, path: string, context: ReadingContext): Read {
  const { nowMs, isStation } = context;
  if (typeof raw !== 'number' || !Number.isSafeInteger(raw)) return no({ path, code: 'notAnswered' });
  // What the station keeps from before a clock was set back may lie ahead of it.
  if (tense === 'past' && raw > nowMs && isStation !== true) return no({ path, code: 'notYet' });
  if (tense === 'coming' && raw <= nowMs) return no({ path, code: 'alreadyPast' });
  return accept(raw);
}

function readList(
  question: { of: Form; min: number; max: number },
  raw: Raw,
  path: string,
  context: ReadingContext,
): Read {
  const rows: readonly unknown[] = Array.isArray(raw) ? Array.from(raw) : [];
  if (rows.length < question.min) return no({ path, code: 'tooFew', most: question.min });
  if (rows.length > question.max) return no({ path, code: 'tooMany', most: question.max });
  const read = rows.map((row, index) =>
    isRawForm(row)
      ? readAnswers(question.of, row, context, `${path}.${index}.`)
      : no({ path: `${path}.${index}`, code: 'malformed' }),
  );
  const refusals = read.flatMap((row) => (row.ok ? [] : row.error));
  return refusals.length > 0 ? refuse(refusals) : accept(read.map((row) => (row.ok ? row.value : null)));
}

const isRawForm = (raw: unknown): raw is RawForm =>
  typeof raw === 'object' && raw !== null && !Array.isArray(raw);

function readQuestion(question: Question, raw: Raw, path: string, context: ReadingContext): Read {
  switch (question.kind) {
    case 'choice': {
      const value = raw === undefined || raw === null || raw === '' ? question.or : raw;
      if (value === undefined) return no({ path, code: 'notAnswered' });
      return question.options.includes(value as string) ? accept(value) : no({ path, code: 'notAnOption' });
    }
    case 'choices':
      return readChoices(question, raw, path);
    case 'number': {
      if (raw === 'unknown' && question.unknown === true) return accept('unknown');
      if ((raw === undefined || raw === null) && question.or !== undefined) return accept(question.or);
      const number = readNumber(typeof raw === 'string' ? raw : '', question.field, context.units);
      return number.ok ? number : no({ path, ...number.error });
    }
    case 'text':
      return readText(question, raw, path);
    case 'time':
      return readTime(question.tense, raw, path, context);
    case 'list':
      return readList(question, raw, path, context);
  }
}

function readAnswers(form: Form, raw: RawForm, context: ReadingContext, prefix: string): Read {
  const answers: Record<string, unknown> = {};
  const refusals: FieldRefusal[] = [];
  for (const [name, question] of Object.entries(form)) {
    if (!isAsked(question, answers, context)) continue;
    const given = Object.hasOwn(raw, name) ? raw[name] : undefined;
    if (question.stamped === true && (context.isStation !== true || given === undefined)) continue;
    if (given === undefined && !hasDefault(question) && context.isPartial === true && prefix === '') continue;
    const read = readQuestion(question, given, prefix + name, context);
    if (read.ok) answers[name] = read.value;
    else refusals.push(...read.error);
  }
  return refusals.length > 0 ? refuse(refusals) : accept(answers);
}

const hasDefault = (question: Question): boolean => 'or' in question && question.or !== undefined;

/**
 * What do these taps and texts say, as answers to this form?
 * All refusals at once, each at its field; what was typed is the screen's to keep. Unknown names are dropped.
 * Checked in tests/shared/records/readForm.test.ts.
 */
export const readForm = <F extends Form>(
  form: F,
  raw: RawForm,
  context: ReadingContext,
): Result<AnswersOf<F>, readonly FieldRefusal[]> =>
  readAnswers(form, raw, context, '') as Result<AnswersOf<F>, readonly FieldRefusal[]>;
