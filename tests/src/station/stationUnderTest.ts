import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { makeStation } from '../../../src/station/makeStation';
import type { Station } from '../../../src/station/station';
import type { Json } from '../../../src/storage/json';
import type { Power } from '../storage/power';
import { switchOn, type Tablet } from '../storage/tablet';

/** A station over a pretended tablet, with a clock that the test turns. */
export interface StationUnderTest {
  readonly station: Station;
  readonly clock: { atMs: number };
  /** What other windows were told. */
  readonly told: { readonly name: string; readonly seq: number; readonly entry: Json }[];
  readonly dropped: string[];
  /** So often the station was shown anew. */
  readonly shown: { times: number };
}

export const startAtMs = endsIronedWet.startAtMs;

/** Starts a station on this tablet; `power` may fail in the middle of a write, `change` puts a faulty copy in place. */
export async function startStation(
  tablet: Tablet,
  power?: Power,
  change?: Parameters<typeof switchOn>[2],
  atMs = startAtMs,
  idBegins = 'client',
): Promise<StationUnderTest> {
  const clock = { atMs };
  const told: StationUnderTest['told'] = [];
  const dropped: string[] = [];
  const shown = { times: 0 };
  let ids = 0;
  const station = makeStation({
    store: switchOn(tablet, power, change).store,
    now: () => clock.atMs,
    makeId: () => {
      ids += 1;
      return `${idBegins}${String(ids).padStart(4, '0')}`;
    },
    publish: () => {
      shown.times += 1;
    },
    onAcknowledged: (name, seq, entry) => told.push({ name, seq, entry }),
    onDropped: (name) => dropped.push(name),
  });
  await station.startWriting();
  return { station, clock, told, dropped, shown };
}

/** The same with the invented salon's settings saved first. */
export async function startSalon(
  tablet: Tablet,
  change?: Parameters<typeof switchOn>[2],
): Promise<StationUnderTest> {
  const under = await startStation(tablet, undefined, change);
  await under.station.saveSettings('Opal', salon);
  return under;
}

/** Plays steps of a story on one consultation; answers its id. Throws at the first refusal. */
export async function play(
  { station, clock }: StationUnderTest,
  steps: readonly StoryStep[],
  openId?: string,
): Promise<string> {
  let id = openId ?? '';
  for (const { afterMs, by, raw } of steps) {
    clock.atMs += afterMs;
    const done =
      raw.type === 'OPENED' ? await station.open(by, raw.answers ?? {}) : await station.submit(id, by, raw);
    if (!done.ok) throw new Error(`${raw.type} was refused: ${JSON.stringify(done.error)}`);
    if (typeof done.value === 'string') id = done.value;
  }
  return id;
}

/** The story up to and with the first step of this type. */
export const storyUpTo = (type: string): readonly StoryStep[] =>
  endsIronedWet.steps.slice(0, endsIronedWet.steps.findIndex(({ raw }) => raw.type === type) + 1);
