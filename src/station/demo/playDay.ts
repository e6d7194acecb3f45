import { accept, type Result } from '../../../shared/result';
import type { tellInventedDay } from '../../demo/inventedDay';
import type { Station } from '../station';
import type { SubmitRefusal } from '../submitRefusal';

type InventedDay = ReturnType<typeof tellInventedDay>;

/**
 * Writes an invented day through the real station, tap by tap, each at its own time: nothing of it is put into a store
 * that judge and chart have not let through. `turnClock` sets the clock the station reads. Stops at the first refusal.
 * Checked in tests/src/station/demoDay.test.ts.
 */
export async function playDay(
  station: Station,
  day: InventedDay,
  turnClock: (atMs: number) => void,
): Promise<Result<void, SubmitRefusal>> {
  const ids = new Map<string, string>();
  const began = [...day.taps, ...day.skinTests].map(({ atMs }) => atMs);
  turnClock(Math.min(...began));
  await station.startWriting();
  const saved = await station.saveSettings(day.settings.staff[0] ?? '', day.settings);
  if (!saved.ok) return saved;
  const all = [
    ...day.taps.map((tap) => ({ atMs: tap.atMs, write: () => writeTap(tap) })),
    ...day.skinTests.map(({ atMs, by, answers }) => ({
      atMs,
      write: () => station.putOnSkinTest(by, answers) as Promise<Result<unknown, SubmitRefusal>>,
    })),
  ].sort((one, other) => one.atMs - other.atMs);

  async function writeTap({
    client,
    by,
    raw,
  }: InventedDay['taps'][number]): Promise<Result<unknown, SubmitRefusal>> {
    if (raw.type !== 'OPENED') return station.submit(ids.get(client) ?? '', by, raw);
    const opened = await station.open(by, raw.answers ?? {});
    if (opened.ok) ids.set(client, opened.value);
    return opened;
  }

  for (const { atMs, write } of all) {
    turnClock(atMs);
    const written = await write();
    if (!written.ok) return written;
  }
  return accept(undefined);
}
