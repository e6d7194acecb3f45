import * as v from 'valibot';
import { type Answers, askForms } from './forms/asked';
import { type BowlAnswers, bowlForm } from './forms/bowl';
import { type OutcomeAnswers, outcomeForm, type StrandAnswers, strandForm } from './forms/test';
import { schemaOfForm } from './schema';
import { type AskStep, askSteps } from './steps';

/** What one zone got last time: the bowl that was on the head, and the strand it stood on. */
export interface LastZone {
  readonly bowl: BowlAnswers;
  readonly strand: StrandAnswers;
  /** For how many whole minutes the strand was on: what was really tested. */
  readonly minutesOn: number;
  readonly outcome: OutcomeAnswers;
  /** The worst of the zone's strands, as far as a bowl was weighed on it. */
  readonly grade: 'sound' | 'rough';
  /** When the strand itself came off, however often its outcome was carried since. */
  readonly strandAtMs: number;
}

/**
 * What an earlier consultation of the same client leaves to this one, as it was when a person said "same client".
 * It is copied into the log by the station, so that the log means next year what it meant today.
 */
export interface LastTime {
  readonly id: string;
  readonly endedAtMs: number;
  /** It went to its end; anything else carries nothing. */
  readonly isDone: boolean;
  readonly hasStandingStop: boolean;
  readonly answers: Answers;
  readonly zones: readonly LastZone[];
}

/** What may have been said at each step so far, any answer of it absent. */
export const answerSchemas = Object.fromEntries(
  askSteps.map((step) => [step, schemaOfForm(askForms[step], 'partial')] as const),
) as Readonly<Record<AskStep, v.GenericSchema>>;

/** What was said at all steps together; one not yet said is absent. */
export const answersSchema = v.strictObject(
  Object.fromEntries(askSteps.map((step) => [step, v.optional(answerSchemas[step])])),
);

const moment = v.pipe(v.number(), v.safeInteger());

/** What is stored of last time is parsed like any other answer; of its steps any question may be missing. */
export const lastTimeSchema: v.GenericSchema = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z0-9]{4,32}$/)),
  endedAtMs: moment,
  isDone: v.boolean(),
  hasStandingStop: v.boolean(),
  answers: answersSchema,
  zones: v.array(
    v.strictObject({
      bowl: schemaOfForm(bowlForm),
      strand: schemaOfForm(strandForm),
      minutesOn: v.pipe(v.number(), v.integer(), v.minValue(0)),
      outcome: schemaOfForm(outcomeForm),
      grade: v.picklist(['sound', 'rough']),
      strandAtMs: moment,
    }),
  ),
});
