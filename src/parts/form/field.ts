import type { FieldRefusal, Raw } from '../../../shared/records/readForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { AnyQuestionWords } from '../../words/formWords';

/** What is offered in one tap, by the question's own name: texts as they would be typed. */
export type Picks = Readonly<Record<string, readonly string[]>>;

/** Which options cannot be taken now, by the question's own name; what else is on the page says why. */
export type Waiting = Readonly<Record<string, readonly string[]>>;

/** What every kind of field is given. `path` is the name under which a refusal finds it. */
export interface FieldProps<Question> {
  readonly path: string;
  readonly name: string;
  readonly question: Question;
  readonly words: AnyQuestionWords;
  readonly value: Raw;
  readonly onChange: (value: Raw) => void;
  readonly refusals: readonly FieldRefusal[];
  readonly units: UnitSettings;
  readonly nowMs: number;
  readonly picks: Picks | undefined;
}
