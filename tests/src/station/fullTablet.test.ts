import { describe, expect, it } from 'vitest';
import { refuse } from '../../../shared/result';
import type { Station } from '../../../src/station/station';
import type { JournalCopy } from '../../../src/storage/copies';
import { nameFailure } from '../../../src/storage/copyFailure';
import { shipped, write } from '../../shared/records/json/leaving';
import { makeTablet } from '../storage/tablet';
import { play, startAtMs, startSalon, startStation, storyUpTo } from './stationUnderTest';

const laterMs = startAtMs + 60 * 24 * 60 * 60_000;
const ended = shipped.filter(({ record }) => record.ended !== null);

/** A journal in which so many more lines have room. */
const makeRoom = (lines: number) => {
  const room = { lines };
  const change = ({ journal }: { journal: JournalCopy }) => ({
    journal: {
      ...journal,
      append: async (...line: Parameters<JournalCopy['append']>) => {
        room.lines -= 1;
        const full = new DOMException('no room', 'QuotaExceededError');
        return room.lines < 0 ? refuse(nameFailure('journal', full)) : journal.append(...line);
      },
    },
  });
  return { room, change };
};
const held = (station: Station) => [...station.readLogs()].map(([name, log]) => [name, log.length]);
const sum = (station: Station) => held(station).reduce((lines, [, length]) => lines + Number(length), 0);

async function makeBackup(): Promise<string> {
  const old = await startSalon(makeTablet());
  await play(old, storyUpTo('DECIDED'));
  return [...old.station.backUp()].join('');
}

describe('a tablet that is full', () => {
  it.each([0, 1, 4, 20])(
    'names it where a backup finds room for %i lines, and takes the same file once there is more',
    async (lines) => {
      const file = await makeBackup();
      const whole = (await startStation(makeTablet())).station;
      await whole.bringIn(file);
      const tablet = makeTablet();
      const { room, change } = makeRoom(1_000);
      const { station } = await startStation(tablet, undefined, change);
      room.lines = lines;
      expect(await station.bringIn(file)).toMatchObject({
        ok: false,
        error: { kind: 'notSaved', failure: { kind: 'quotaExceeded' } },
      });
      const again = (await startStation(tablet)).station;
      expect(sum(again)).toBeLessThan(sum(whole));
      expect(await again.bringIn(file)).toMatchObject({ ok: true });
      expect(held(again).sort()).toEqual(held(whole).sort());
    },
  );

  it.each([0, 1, 3])('says that %i records of a file came, and keeps them and all else', async (lines) => {
    const tablet = makeTablet();
    const { room, change } = makeRoom(1_000);
    const under = await startStation(tablet, undefined, change, laterMs);
    await play(under, storyUpTo('OPENED'));
    room.lines = lines;
    expect(await under.station.bringInRecords(write(ended))).toEqual({
      ok: false,
      error: { kind: 'recordsNotSaved', came: lines },
    });
    const { station } = await startStation(tablet, undefined, undefined, laterMs);
    expect(station.readState().closed).toHaveLength(lines);
    expect(station.readState().open.size).toBe(1);
    expect(station.readState().notices).toEqual([]);
    expect(await station.bringInRecords(write(ended))).toMatchObject({
      ok: true,
      value: { came: ended.length - lines, here: lines },
    });
  });
});
