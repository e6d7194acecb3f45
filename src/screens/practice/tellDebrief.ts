import type { Debrief } from '../../../machines/practice/debrief';
import { type ClosedRecord, parseClosedLog } from '../../../shared/records/closedRecord';
import type { StationInUse } from '../../station/createStation';
import type { PracticeInUse } from '../../station/practice/createPractice';
import type { SittingKept } from './sittings';

const known = new WeakMap<ClosedRecord, { readonly log: unknown; readonly told: Debrief | null }>();

/**
 * How did this sitting go, once it is over? null where that cannot be told: it is under way, or its lesson was changed
 * since. A closed record and its practice log never change, so it is reckoned once.
 */
export function tellDebrief(
  { lesson, log, id }: SittingKept,
  closed: readonly ClosedRecord[],
  readSettings: StationInUse['readSettings'],
  school: ReturnType<PracticeInUse['school']>,
): Debrief | null {
  const record = closed.find((each) => each.id === id);
  if (record === undefined || lesson === null || school === null) return null;
  const before = known.get(record);
  if (before?.log === log) return before.told;
  const events = parseClosedLog(record);
  const settings = readSettings()(events?.[0]?.settingsId ?? 0);
  const told = events === null ? null : school.debrief(lesson, log, events, settings);
  known.set(record, { log, told });
  return told;
}
