import { ASSUMED_SAME_DAY_MS } from '../judgement/lapse';
import { rules } from '../judgement/rules';
import type { Answers } from './forms/asked';
import type { ClientAnswers } from './forms/client';
import type { ConsultationRecord } from './record';
import { undecide } from './reduce/undecide';
import { isStoppedBy } from './standingStop';

/** What is asked anew on another day, whatever was said before: reactions, scalp and face, age. */
export const forgetToday = ({ client, ...others }: Answers): Answers => {
  if (client === undefined) return others;
  const { reactions: _reactions, scalp: _scalp, ageBand: _ageBand, ...rest } = client;
  return { ...others, client: rest };
};

const ofToday = ({ reactions, scalp, ageBand }: Partial<ClientAnswers>): string =>
  JSON.stringify([reactions, scalp, ageBand]);

/** When was told what holds for today, after this answer? Another question of the same step makes it no newer. */
export function findTodayAt(
  { answers, todayAtMs }: Pick<ConsultationRecord, 'answers' | 'todayAtMs'>,
  now: Partial<ClientAnswers>,
  atMs: number,
): number | null {
  if (now.reactions === undefined && now.scalp === undefined) return null;
  const before = answers.client ?? {};
  const isToldAnew = ofToday(before) !== ofToday(now) || JSON.stringify(before) === JSON.stringify(now);
  return todayAtMs === null || isToldAnew ? atMs : todayAtMs;
}

/** Reactions, scalp and age are asked anew: what somebody judged of them lifts nothing. */
export const askAnew = ({
  answers,
  overrides,
}: ConsultationRecord): Pick<ConsultationRecord, 'answers' | 'todayAtMs' | 'overrides'> => ({
  answers: forgetToday(answers),
  todayAtMs: null,
  overrides: overrides.filter(({ rule }) => rules[rule].step !== 'client'),
});

/** What is left once the day is over: nothing of that day's skin, nothing judged of it, and no decision. */
export const forgetDay = (record: ConsultationRecord): Partial<ConsultationRecord> => {
  const anew = askAnew(record);
  return { ...anew, stretches: [], ...undecide({ ...record, ...anew }) };
};

/**
 * Has she sat here for so long that reactions, scalp and age were told on another day? Who is away is asked when she is
 * back; what stops for good is never asked again.
 */
export const isAnotherDay = (record: ConsultationRecord, atMs: number): boolean =>
  record.todayAtMs !== null &&
  record.parked === null &&
  record.ended === null &&
  !isStoppedBy('client', record.answers) &&
  atMs - record.todayAtMs > ASSUMED_SAME_DAY_MS;

/** The record as the day has made it by this moment, before anything else happens in it. */
export const passDay = (record: ConsultationRecord, atMs: number): ConsultationRecord =>
  isAnotherDay(record, atMs) ? { ...record, ...forgetDay(record) } : record;
