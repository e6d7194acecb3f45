import { type ClosedRecord, parseClosedLog } from '../../../shared/records/closedRecord';
import { fold } from '../../../shared/records/reduce';
import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import { formatQuantity } from '../../../shared/units/format';
import { isStopStanding, isTestStop, type Kept, type KeptOfHer } from '../../station/keeping';
import type { StationState } from '../../station/stationState';
import type { Unjudged } from '../../station/unjudged';
import type { Words } from '../../words/words';

/** One thing that is kept: a closed record or a skin test; or one of another station that nobody here can judge. */
export type KeptThing = ClosedRecord | SkinTest | Unjudged;

const isUnjudged = (thing: KeptThing): thing is Unjudged => 'cameAtMs' in thing;
const isRecord = (thing: KeptThing): thing is ClosedRecord => 'endedAtMs' in thing;

/** When it closed, was written to last, or came in. */
export function findKeptAtMs(thing: KeptThing): number {
  if (isUnjudged(thing)) return thing.cameAtMs;
  return isRecord(thing) ? thing.endedAtMs : thing.newestAtMs;
}

/** All kinds in one row, the oldest first. */
export const listThings = ({
  closed,
  skinTests,
  unjudged = [],
}: Kept & Partial<KeptOfHer>): readonly KeptThing[] =>
  [...closed, ...skinTests, ...unjudged].sort((one, other) => findKeptAtMs(one) - findKeptAtMs(other));

/** How many of each kind: "2 closed records and 1 skin test". */
export function sayThings(
  things: readonly KeptThing[],
  words: Words,
  write: (count: number) => string,
): string {
  const records = things.filter((each) =>
    isUnjudged(each) ? each.kind === 'consultation' : isRecord(each),
  ).length;
  return words.kept.things(write(records), write(things.length - records));
}

/** Does something stop her for good in it, so that erasing it takes a protection away? */
export function protectsHer(thing: KeptThing, state: StationState): boolean {
  if (isUnjudged(thing)) return isStopStanding(state, { ...thing, hasStandingStop: true });
  return isRecord(thing) ? isStopStanding(state, thing) : isTestStop(thing);
}

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
  if (isUnjudged(thing)) {
    const { id, ticket, kind, why } = thing;
    return {
      id,
      ticket,
      title: said.ofOthers(date, said.otherKinds[kind]),
      rest: said.notJudged[why],
      hasStop,
    };
  }
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
