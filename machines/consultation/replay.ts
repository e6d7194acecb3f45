import { findConflict } from '../../shared/records/conflict';
import type { ConsultationEvent, EventOf, EventType } from '../../shared/records/event';
import { MODEL_VERSION } from '../../shared/records/event';
import { judge, judgeTime } from '../../shared/records/judge';
import { type EntryFault, parseEvent } from '../../shared/records/parseEvent';
import type { Settings } from '../../shared/records/settings';
import { accept, type Result, refuse } from '../../shared/result';
import { type AdvanceRefusal, advance, beginConsultation, type Consultation } from './consultation';

/** Why a stored log is not taken up, and at which entry. */
export interface ReplayFault {
  readonly seq: number;
  readonly code: EntryFault | AdvanceRefusal | 'wentBackInTime' | 'saysOtherwise' | 'empty';
}

/** The settings of a given id; of an edition that is lost or never was, the newest one kept from before it. */
export type FindSettings = (settingsId: number) => Settings;

const isSame = (one: unknown, other: unknown): boolean => toSorted(one) === toSorted(other);

/** JSON with the names of every object in order, so that equal contents give equal texts. */
const toSorted = (value: unknown): string =>
  JSON.stringify(value, (_name, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([one], [other]) => (one < other ? -1 : 1)))
      : inner,
  );

/**
 * Does the event mean what it says it means?
 * Judged anew under the settings it was judged under. A model version that is no longer shipped is trusted: the chart
 * and the record's own check still apply.
 */
function saysOtherwise(
  before: Consultation,
  after: Consultation,
  event: ConsultationEvent,
  find: FindSettings,
): boolean {
  const settings = find(event.settingsId);
  if (event.modelVersion !== MODEL_VERSION) return false;
  const inheritsStop = event.type === 'OPENED' && event.tokens.inherits;
  const context = { settings, atMs: event.atMs, inheritsStop };
  if (findConflict(before.record, event, context) !== null) return true;
  const said = event as EventOf<EventType>;
  const tokens = {
    ...judge(before.record, said.type, said.payload, context),
    ...judgeTime(after.record, settings, event.atMs),
  };
  return !isSame(tokens, event.tokens);
}

function takeUp(
  before: Consultation,
  entry: unknown,
  find: FindSettings,
): Result<Consultation, ReplayFault['code']> {
  const event = parseEvent(entry);
  if (!event.ok) return event;
  const { atMs, type } = event.value;
  if (atMs < before.record.newestAtMs && type !== 'CLOCK_CORRECTED') return refuse('wentBackInTime');
  const after = advance(before, event.value);
  if (!after.ok) return after;
  if (saysOtherwise(before, after.value, event.value, find)) return refuse('saysOtherwise');
  return after;
}

/**
 * What consultation does this stored log make, or what is wrong with it?
 * Every entry passes the schema, the judge, the chart and the record's own check again; the first that does not,
 * refuses the whole log, which is then set aside untouched.
 */
export function replay(
  id: string,
  entries: readonly unknown[],
  find: FindSettings,
): Result<Consultation, ReplayFault> {
  if (entries.length === 0) return refuse({ seq: 0, code: 'empty' });
  let consultation = beginConsultation(id);
  for (const [seq, entry] of entries.entries()) {
    const next = takeUp(consultation, entry, find);
    if (!next.ok) return refuse({ seq, code: next.error });
    consultation = next.value;
  }
  return accept(consultation);
}
