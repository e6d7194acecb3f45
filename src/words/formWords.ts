import type { Form } from '../../shared/records/form';

export interface AskWords {
  /** The question as it is asked aloud. */
  readonly ask: string;
  /** How to find out, in a few words. */
  readonly hint?: string;
  /** The question in a word or two, for its line in the ledger. */
  readonly short?: string;
  /** A figure as an answer: "3 days a week". */
  readonly told?: (figure: string) => string;
}

/** The words of any question, as the fields of a form need them. */
export interface AnyQuestionWords extends AskWords {
  readonly options?: Readonly<Record<string, string>>;
  readonly rows?: AnyFormWords;
  readonly rowTitle?: (row: string) => string;
  readonly addRow?: string;
  readonly removeRow?: (row: string) => string;
  /** Asked once there is a row: "Another tool?" */
  readonly askAnother?: string;
  /** Said instead of rows, where none at all is an answer. */
  readonly noRows?: string;
}

export type AnyFormWords = Readonly<Record<string, AnyQuestionWords>>;

type WordsOf<Q> = Q extends {
  kind: 'choice' | 'choices';
  options: readonly (infer O extends string)[];
}
  ? AskWords & { readonly options: Readonly<Record<O, string>> }
  : Q extends { kind: 'list'; of: infer F extends Form }
    ? AskWords & {
        readonly rows: FormWords<F>;
        readonly rowTitle: (row: string) => string;
        readonly addRow: string;
        readonly removeRow: (row: string) => string;
        readonly askAnother?: string;
        readonly noRows?: string;
      }
    : AskWords;

/** The words of one form: every question and every option of it, or it does not compile. */
export type FormWords<F extends Form> = { readonly [K in keyof F]: WordsOf<F[K]> };
