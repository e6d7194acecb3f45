import { endsIronedWet } from '../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../shared/records/classify';
import { msPerDay } from '../../../shared/units/time';
import { makeStation } from '../../../src/station/makeStation';
import type { Station } from '../../../src/station/station';
import type { StationState } from '../../../src/station/stationState';
import { switchOn, type Tablet } from '../storage/tablet';
import { play, type StationUnderTest, startAtMs, startSalon, startStation } from './stationUnderTest';

const hives: RawEvent = { type: 'ANSWERED', step: 'client', answers: { reactions: ['hives'] } };
const sayNo: RawEvent = { type: 'WE_SAID_NO', answers: { reason: 'notSafeToday' } };
const callOff: RawEvent = { type: 'CALLED_OFF', answers: { reason: 'noTime' } };

/** Starts somebody of this ticket and plays these, a minute apart; answers her id. */
export const openAnd = (
  under: StationUnderTest,
  ticket: string,
  ...raws: readonly RawEvent[]
): Promise<string> => {
  const taken = [...under.station.readState().open.values()].map(({ record }) => record.chair);
  const chair = [8, 7, 6, 5].find((each) => !taken.includes(each));
  const opened: RawEvent = { type: 'OPENED', answers: { ticket, chair: String(chair) } };
  return play(
    under,
    [opened, ...raws].map((raw) => ({ afterMs: 60_000, by: 'Opal', raw })),
  );
};

/** How long the months lie back, the oldest first. */
const monthsBack = [3, 2, 1, 0];
export const oldest = nameMonth(3);

function nameMonth(back: number): string {
  return `closed-${new Date(startAtMs - back * 31 * msPerDay).toISOString().slice(0, 7)}`;
}
export const months: readonly string[] = monthsBack.map(nameMonth);

/** Two clients a month for four months, then the station is closed: in the oldest S.T. was stopped. */
export async function keepMonths(tablet: Tablet): Promise<void> {
  for (const back of monthsBack) {
    const atMs = startAtMs - back * 31 * msPerDay;
    const under = await startStation(tablet, undefined, undefined, atMs, `of${back}`);
    if (back === 3) await openAnd(under, 'S.T.', hives, sayNo);
    else await openAnd(under, `A${back}`, callOff);
    await openAnd(under, `B${back}`, callOff);
    await under.station.stopWriting();
  }
}

/** Everything of the story up to its bowl: she sits there while the station is started again. */
export async function leaveOpen(tablet: Tablet): Promise<{ readonly id: string; readonly atMs: number }> {
  const under = await startSalon(tablet);
  const upTo = endsIronedWet.steps.findIndex(({ raw }) => raw.type === 'BOWL_WEIGHED');
  const id = await play(under, endsIronedWet.steps.slice(0, upTo));
  await under.station.stopWriting();
  return { id, atMs: under.clock.atMs + 60_000 };
}

/** Holds the journal back from reading months until they are let. */
export function makeHold() {
  const free = new Set<string>();
  let isFree = false;
  let waiting: (() => void)[] = [];
  const change: Parameters<typeof switchOn>[2] = ({ journal }) => ({
    journal: {
      ...journal,
      read: async (name) => {
        while (name.startsWith('closed-') && !isFree && !free.has(name)) {
          await new Promise<void>((resolve) => waiting.push(resolve));
        }
        return journal.read(name);
      },
    },
  });
  const letRead = (...names: readonly string[]): void => {
    isFree ||= names.length === 0;
    for (const name of names) free.add(name);
    const woken = waiting;
    waiting = [];
    for (const wake of woken) wake();
  };
  return { change, letRead };
}

export interface SlowStart {
  readonly station: Station;
  readonly clock: { atMs: number };
  readonly published: StationState[];
  /** Answers when all was read. */
  readonly started: Promise<void>;
  /** Lets the months be read that were named so far; without names all that come. */
  letRead(...names: readonly string[]): void;
}

/** Starts a station whose months are read only when the test lets them; answers as soon as the bar may be used. */
export async function startSlowly(tablet: Tablet, atMs = startAtMs + msPerDay): Promise<SlowStart> {
  const clock = { atMs };
  const published: StationState[] = [];
  const { change, letRead } = makeHold();
  const { store } = switchOn(tablet, undefined, change);
  let ids = 0;
  const station = makeStation({
    store,
    now: () => clock.atMs,
    makeId: () => {
      ids += 1;
      return `later${String(ids).padStart(4, '0')}`;
    },
    publish: (state) => published.push(state),
    onAcknowledged: () => undefined,
    onDropped: () => undefined,
  });
  let started: Promise<void> = Promise.resolve();
  await new Promise<void>((resolve) => {
    started = station.startWriting(resolve);
  });
  return {
    station,
    clock,
    published,
    started,
    letRead,
  };
}
