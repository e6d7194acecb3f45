import { type ClosedRecord, parseClosedLog } from '../../../shared/records/closedRecord';
import { fold } from '../../../shared/records/reduce';
import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import { formatQuantity } from '../../../shared/units/format';
import { isStopStanding, isTestStop, type Kept } from '../../station/keeping';
import type { StationState } from '../../station/stationState';
import type { Words } from '../../words/words';

/** One thing that is kept: a closed record or a skin test. */
export type KeptThing = ClosedRecord | SkinTest;

const isRecord = (thing: KeptThing): thing is ClosedRecord => 'endedAtMs' in thing;

/** When it closed, or was written to last. */
export const findKeptAtMs = (thing: KeptThing): number =>
  isRecord(thing) ? thing.endedAtMs : thing.newestAtMs;

/** Both kinds in one row, the oldest first. */
export const listThings = ({ closed, skinTests }: Kept): readonly KeptThing[] =>
  [...closed, ...skinTests].sort((one, other) => findKeptAtMs(one) - findKeptAtMs(other));

/** How many of each kind: "2 closed records and 1 skin test". */
export function sayThings(
  things: readonly KeptThing[],
  words: Words,
  write: (count: number) => string,
): string {
  const records = things.filter(isRecord).length;
  return words.kept.things(write(records), write(things.length - records));
}

/** Does something stop her for good in it, so that erasing it takes a protection away? */
export const protectsHer = (thing: KeptThing, state: StationState): boolean =>
  isRecord(thing) ? isStopStanding(state, thing) : isTestStop(thing);

/** What is said of one thing that may go. */
export interface KeptRow {
  readonly id: string;
  readonly ticket: string;
  readonly title: string;
  readonly rest: string;
  readonly hasStop: boolean;
}

/** One thing as a row: whose, of when, and how it ended or what was seen. */
export function viewThing(thing: KeptThing, state: StationState, words: Words): KeptRow {
  const said = words.kept;
  const write = (count: number) =>
    formatQuantity(count, 'count', state.settings.settings.units, words.locale);
  const date = words.moments.date(findKeptAtMs(thing));
  const hasStop = protectsHer(thing, state);
  if (!isRecord(thing)) {
    const seen = thing.takenBack === null ? said.testSeen[thing.seen] : said.takenBack;
    return { id: thing.id, ticket: thing.ticket, title: said.test(date), rest: seen, hasStop };
  }
  const log = parseClosedLog(thing);
  const record = log === null ? null : fold(thing.id, log);
  return {
    id: thing.id,
    ticket: record?.ticket ?? thing.ticketKey,
    title: said.record(date, words.day.endings[thing.how]),
    rest:
      record === null
        ? said.unreadable
        : `${words.day.strands(write(record.strands.length))} · ${words.day.bowls(write(record.bowls.length))}`,
    hasStop,
  };
}

/** Does a record that stays say what it took over from one that goes? */
export function isReadLater(going: readonly KeptThing[], { closed }: StationState): boolean {
  const ids = new Set(going.map(({ id }) => id));
  const tickets = new Set(going.map(({ ticketKey }) => ticketKey));
  return closed.some((each) => {
    if (ids.has(each.id) || !tickets.has(each.ticketKey)) return false;
    const first = parseClosedLog({ log: each.log.slice(0, 1) })?.[0];
    return first?.type === 'OPENED' && ids.has(first.payload.lastTime?.id ?? '');
  });
}
