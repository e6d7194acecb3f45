import { benchKinds } from '../../hair/benchTrial';
import type { AnswersOf, Form } from '../form';
import { correctedForm } from './course';

/** What is tried, and on which cut hair? Never on a head. */
export const benchStartedForm = {
  kind: { kind: 'choice', options: benchKinds },
  hair: { kind: 'choice', options: ['untouched', 'coloured', 'bleached', 'unknown'] },
} as const satisfies Form;

/** Off its rod and dry: does the curl stay? */
export const curlReadForm = {
  curl: { kind: 'choice', options: ['stays', 'partly', 'fellOut'] },
} as const satisfies Form;

const pulled = { kind: 'choice', options: ['springsBack', 'slow', 'snaps'] } as const;

/** Both pieces wetted and pulled lightly: how does each come back? */
export const piecesReadForm = { dryPiece: pulled, wetPiece: pulled } as const satisfies Form;

/** What was noted wrongly, the reading or the whole trial, and how did that come? Ranges: ASSUMED, as for corrections. */
export const benchTakenBackForm = {
  what: { kind: 'choice', options: ['reading', 'trial'] },
  code: { kind: 'choice', options: ['wrongTap', 'misheard', 'hasChanged'] },
  words: correctedForm.words,
} as const satisfies Form;

/** What each event of a bench trial carries. Types are for ever: they are what is stored. */
export const benchForms = {
  BENCH_STARTED: benchStartedForm,
  BENCH_TAKEN_OUT: {},
  BENCH_CURL_READ: curlReadForm,
  BENCH_PIECES_READ: piecesReadForm,
  BENCH_TAKEN_BACK: benchTakenBackForm,
} as const;

export type BenchHair = AnswersOf<typeof benchStartedForm>['hair'];
export type CurlAnswer = AnswersOf<typeof curlReadForm>['curl'];
export type PiecesAnswer = AnswersOf<typeof piecesReadForm>;
