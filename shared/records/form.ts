import type { NumberField } from '../units/numberField';

interface Asked {
  /** Shown only behind "more"; its default is right for most. */
  readonly more?: true;
  /** Does not bear on the plan: changing it leaves a tested strand current. */
  readonly aside?: true;
  /** Asked only when another question of the same form has one of these answers; a list with a row answers `some`. */
  readonly when?: { readonly question: string; readonly is: readonly string[] };
  /**
   * The model version that first asked it. It lets a stored log lack the answer, in the type and in the schema, and when
   * a log of a model before it is read again, a step without it counts as whole. Whoever is open is asked it all the
   * same. That such a log is read by its own questions at all is what raising MODEL_VERSION is for.
   */
  readonly addedIn?: number;
  /** Asked only where the station's local profile draws an age line. */
  readonly whenAgeLine?: true;
  /** Given by the station itself, never by a screen: what a screen sends under this name is dropped. */
  readonly stamped?: true;
}

/** One of a few options. `absolute` options stop at once and are given by press-and-hold. */
export interface ChoiceQuestion extends Asked {
  readonly kind: 'choice';
  readonly options: readonly string[];
  readonly absolute?: readonly string[];
  readonly or?: string;
}

/** Any number of options; `none` excludes every other. */
export interface ChoicesQuestion extends Asked {
  readonly kind: 'choices';
  readonly options: readonly string[];
  readonly none: string;
  readonly absolute?: readonly string[];
}

/** A typed number in the station's unit, kept in the canonical one that its name ends in. */
export interface NumberQuestion extends Asked {
  readonly kind: 'number';
  readonly field: NumberField;
  readonly unknown?: true;
  readonly or?: number | 'unknown';
}

/** A short text: a ticket, a batch, a reason. `hasLines`: a long one, kept as it was pasted, line breaks and tabs too. */
export interface TextQuestion extends Asked {
  readonly kind: 'text';
  readonly maxLength: number;
  readonly hasLines?: true;
  /** Stands for a person: no date of birth and no number to call. */
  readonly isTicket?: true;
  readonly or?: string;
}

/** A moment, in milliseconds since 1970-01-01 UTC; never later than now unless it says what is to come. */
export interface TimeQuestion extends Asked {
  readonly kind: 'time';
  readonly tense: 'past' | 'coming';
}

/** The same few questions asked again for each of several things. */
export interface ListQuestion extends Asked {
  readonly kind: 'list';
  readonly of: Form;
  readonly min: number;
  readonly max: number;
}

/** One question of a form. "Don't know" is an answer where the question says so. */
export type Question =
  | ChoiceQuestion
  | ChoicesQuestion
  | NumberQuestion
  | TextQuestion
  | TimeQuestion
  | ListQuestion;

/** What one event or one step asks, by the name under which each answer is stored. */
export interface Form {
  readonly [name: string]: Question;
}

type AnswerOf<Q> = Q extends { kind: 'choice'; options: readonly (infer O)[] }
  ? O
  : Q extends { kind: 'choices'; options: readonly (infer O)[] }
    ? readonly O[]
    : Q extends { kind: 'number'; unknown: true }
      ? number | 'unknown'
      : Q extends { kind: 'number' | 'time' }
        ? number
        : Q extends { kind: 'text' }
          ? string
          : Q extends { kind: 'list'; of: infer F }
            ? readonly AnswersOf<F>[]
            : never;

type Conditional<F> = {
  [K in keyof F]: F[K] extends
    | { when: unknown }
    | { whenAgeLine: true }
    | { addedIn: number }
    | { stamped: true }
    ? K
    : never;
}[keyof F];

/** The answers to a form, typed from its table. A question asked only sometimes, or not always, may be absent. */
export type AnswersOf<F> = {
  readonly [K in Exclude<keyof F, Conditional<F>>]: AnswerOf<F[K]>;
} & { readonly [K in Conditional<F>]?: AnswerOf<F[K]> };
