import type { FieldProps, Waiting } from '../field';

/** What the control of one question on a sheet is given beside the field. */
export interface ControlProps<Question> extends FieldProps<Question> {
  /** On to the next question, now that this one is said. */
  readonly onDone: () => void;
  readonly waiting?: Waiting | undefined;
}
