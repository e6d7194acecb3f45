import { findConflict } from '../../shared/records/conflict';
import type { ConsultationEvent, EventOf, EventType } from '../../shared/records/event';
import { MODEL_VERSION } from '../../shared/records/event';
import { judge, judgeTime } from '../../shared/records/judge';
import { fillAsOlder, readAsOlder } from '../../shared/records/olderModel';
import { type EntryFault, parseEvent } from '../../shared/records/parseEvent';
import { passDay } from '../../shared/records/passedDay';
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

/** Would both be written alike, whatever the order of their names? */
export const isSame = (one: unknown, other: unknown): boolean => toSorted(one) === toSorted(other);

/** JSON with the names of every object in order, so that equal contents give equal texts. */
const toSorted = (value: unknown): string =>
  JSON.stringify(value, (_name, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([one], [other]) => (one < other ? -1 : 1)))
      : inner,
  );

/** What the table of an older model suggested, and the time it left, is its own; every other word is judged anew. */
const ownWords: Readonly<Partial<Record<EventType, readonly string[]>>> = {
  BOWL_WEIGHED: ['maxMinutes'],
  DECIDED: ['suggested', 'isFreer'],
};

/** Words that were not said before this model, which an entry of an older one therefore lacks. */
const addedWords: Readonly<Partial<Record<EventType, Readonly<Record<string, number>>>>> = {
  LOOKED: { breaks: 5 },
  NO_REACTION: { stillOn: 5 },
  BOWL_THROWN: { asksSkin: 5 },
  BOWL_WEIGHED: { maxMinutes: 5 },
  CLOCK_EXTENDED: { hasWeakened: 3 },
  OVERRIDDEN: { isRaised: 5 },
};

const withoutOwn = ({ type, modelVersion }: ConsultationEvent, tokens: object): object =>
  Object.fromEntries(
    Object.entries(tokens).filter(
      ([name]) => ownWords[type]?.includes(name) !== true && modelVersion >= (addedWords[type]?.[name] ?? 0),
    ),
  );

/**
 * Does the event mean what it says it means?
 * Judged anew under the settings it was judged under, and with the questions its model asked. Of a model before
 * `modelVersion` only what its table suggested is taken at its word: stops, outcome, permit and bowl are judged whatever
 * version an entry claims.
 */
function saysOtherwise(
  before: Consultation,
  after: Consultation,
  event: ConsultationEvent,
  find: FindSettings,
  modelVersion: number,
): boolean {
  const settings = find(event.settingsId);
  const isOlder = event.modelVersion < modelVersion;
  const today = { ...passDay(before.record, event.atMs), modelVersion: event.modelVersion };
  const record = isOlder ? readAsOlder(today, event.modelVersion) : today;
  const said = (isOlder ? fillAsOlder(event) : event) as EventOf<EventType>;
  const inheritsStop = event.type === 'OPENED' && event.tokens.inherits;
  const lastTime = event.type === 'OPENED' ? (event.payload.lastTime ?? null) : null;
  const context = { settings, atMs: event.atMs, inheritsStop, lastTime };
  if (findConflict(record, said as ConsultationEvent, context) !== null) return true;
  const tokens = {
    ...judge(record, said.type, said.payload, context),
    ...judgeTime(before.record, after.record, settings, event.atMs),
  };
  return isOlder
    ? !isSame(withoutOwn(event, tokens), withoutOwn(event, event.tokens))
    : !isSame(tokens, event.tokens);
}

/** A station never goes back to an older model: an entry that claims it was edited. */
const claimsOlder = ({ log }: Consultation, event: ConsultationEvent): boolean =>
  event.modelVersion < (log.at(-1)?.modelVersion ?? 1);

function takeUp(
  before: Consultation,
  entry: unknown,
  find: FindSettings,
  modelVersion: number,
): Result<Consultation, ReplayFault['code']> {
  const event = parseEvent(entry, modelVersion);
  if (!event.ok) return event;
  const { atMs, type } = event.value;
  if (atMs < before.record.newestAtMs && type !== 'CLOCK_CORRECTED') return refuse('wentBackInTime');
  const after = advance(before, event.value);
  if (!after.ok) return after;
  if (claimsOlder(before, event.value)) return refuse('saysOtherwise');
  if (saysOtherwise(before, after.value, event.value, find, modelVersion)) return refuse('saysOtherwise');
  return after;
}

/**
 * What consultation does this stored log make, or what is wrong with it?
 * Every entry passes the schema, the judge, the chart and the record's own check again; the first that does not,
 * refuses the whole log, which is then set aside untouched. `modelVersion` is the model this station judges by.
 */
export function replay(
  id: string,
  entries: readonly unknown[],
  find: FindSettings,
  modelVersion = MODEL_VERSION,
): Result<Consultation, ReplayFault> {
  if (entries.length === 0) return refuse({ seq: 0, code: 'empty' });
  let consultation = beginConsultation(id);
  for (const [seq, entry] of entries.entries()) {
    const next = takeUp(consultation, entry, find, modelVersion);
    if (!next.ok) return refuse({ seq, code: next.error });
    consultation = next.value;
  }
  // What is tapped from now on is judged by this model.
  return accept({ ...consultation, record: { ...consultation.record, modelVersion } });
}
