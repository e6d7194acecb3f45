import type { AnswersOf, Form } from '../form';
import { clockCorrectedForm, clockPutAheadForm, correctedForm, openedForm } from './course';
import { skinTestForm } from './test';

/**
 * On whom, where, how and with which product line was a skin test put on? One that was read elsewhere says so at once.
 * Method, site, contact time and reading are the maker's (published: Cosmetics Europe 2023).
 */
const putOnForm = {
  ticket: openedForm.ticket,
  method: skinTestForm.method,
  site: skinTestForm.site,
  line: { kind: 'text', maxLength: 40, or: '' },
  putOnAtMs: skinTestForm.putOnAtMs,
  seen: skinTestForm.seen,
  /**
   * Does she agree that it is kept under her ticket, which is a record of her health? `thisVisit`: no, it counts for this
   * visit alone. Nobody was asked where a reaction is held before anything else, and in logs of models before 5.
   */
  consent: { kind: 'choice', options: ['notAsked', 'kept', 'thisVisit'], or: 'notAsked', addedIn: 5 },
  /** The consultation it counts for alone, where she did not agree that it is kept. */
  forVisit: { kind: 'text', maxLength: 32, stamped: true, addedIn: 5 },
} as const satisfies Form;

/** What is seen now that it is read? */
const readForm = {
  seen: { kind: 'choice', options: ['nothing', 'reaction'], absolute: ['reaction'] },
} as const satisfies Form;

/** What was noted wrongly, the reading or the whole test, and how did that come? Ranges: ASSUMED, as for corrections. */
const takenBackForm = {
  what: { kind: 'choice', options: ['reading', 'test'] },
  code: { kind: 'choice', options: [...correctedForm.code.options, 'cameOff'] },
  words: correctedForm.words,
} as const satisfies Form;

/** What each event of a skin test carries. Types are for ever: they are what is stored. */
export const skinTestForms = {
  SKIN_TEST_PUT_ON: putOnForm,
  SKIN_TEST_READ: readForm,
  SKIN_TEST_TAKEN_BACK: takenBackForm,
  CLOCK_CORRECTED: clockCorrectedForm,
  CLOCK_PUT_AHEAD: clockPutAheadForm,
} as const;

export type PutOnAnswers = AnswersOf<typeof putOnForm>;
