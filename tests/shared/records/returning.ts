import { firstGloss, returningGloss } from '../../../seeds/returningGloss';
import type { StoryStep } from '../../../seeds/story';
import { classify, type RawEvent } from '../../../shared/records/classify';
import { type ClosedRecord, closeRecord } from '../../../shared/records/closedRecord';
import { findLastTime } from '../../../shared/records/findLastTime';
import type { LastTime } from '../../../shared/records/lastTime';
import { beginRecord } from '../../../shared/records/record';
import { reduce } from '../../../shared/records/reduce';
import type { Settings } from '../../../shared/records/settings';
import { type Told, tell, tryRaw } from './telling';

export const { settings, startAtMs: todayAtMs } = returningGloss;

/** The closed record of what was told. */
export function close(told: Told, id = 'gloss001'): ClosedRecord {
  const closed = closeRecord({ ...told.record, id }, told.log);
  if (closed === null) throw new Error('this story has no end');
  return closed;
}

const begin = (atMs: number): Told => ({ record: beginRecord('told'), log: [], atMs });

/** The first visit, with its steps changed where said. */
export const tellFirst = (steps: readonly StoryStep[] = firstGloss.steps, inForce = settings): Told =>
  tell(steps, inForce, begin(firstGloss.startAtMs));

export function lastOf(told: Told): LastTime {
  const last = findLastTime([close(told)], 'L.M.');
  if (last === null) throw new Error('nothing is known of last time');
  return last;
}

export const last = lastOf(tellFirst());

/** Opened as the same client as last time; null: nobody said so. */
export function openAgain(lastTime: LastTime | null = last, atMs = todayAtMs): Told {
  const { record } = begin(atMs);
  const raw: RawEvent = {
    type: 'OPENED',
    answers: { ticket: 'L.M.', chair: '2', lastTimeId: lastTime?.id ?? '' },
  };
  const context = { settings, settingsId: 1, atMs, by: 'Juno', inheritsStop: false, lastTime };
  const event = classify(record, raw, context);
  if (!event.ok) throw new Error(JSON.stringify(event.error));
  return { record: reduce(record, event.value), log: [event.value], atMs };
}

const asked = returningGloss.steps.filter(
  ({ raw }) => raw.type === 'ANSWERED' || raw.type === 'STEP_CONFIRMED',
);

/** Today's answers, changed where said, up to where the outcome would be carried. */
export const askAgain = (
  change: (steps: readonly StoryStep[]) => readonly StoryStep[] = (steps) => steps,
  from: Told = openAgain(),
  inForce: Settings = settings,
): Told => tell(change(asked), inForce, from);

export const carry: RawEvent = { type: 'OUTCOME_CARRIED' };
export const tryCarry = (told: Told, inForce: Settings = settings, atMs = told.atMs + 1000) =>
  tryRaw(told, carry, atMs, inForce);
/** Why it is not carried, by its code; 'carried' when it is. */
export function codeOf(tried: ReturnType<typeof tryCarry>): string {
  if (tried.ok) return 'carried';
  return tried.error.kind === 'carry' ? tried.error.carry.code : tried.error.kind;
}
