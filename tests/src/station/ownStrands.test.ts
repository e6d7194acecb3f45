import { describe, expect, it } from 'vitest';
import type { Consultation } from '../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { closeRecord } from '../../../shared/records/closedRecord';
import { msPerDay } from '../../../shared/units/time';
import { countDay, listOwnLessons } from '../../../src/station/learning/ownStrands';
import { playAlone } from '../../browser/makeLog';

const { steps, startAtMs } = endsIronedWet;
const nextDayMs = startAtMs + msPerDay;

const play = (id: string, count = steps.length): Consultation =>
  playAlone(steps.slice(0, count), startAtMs, salon, id);
const close = ({ record, log }: Consultation) => {
  const closed = closeRecord(record, log);
  if (closed === null) throw new Error('she is still open');
  return closed;
};
const gather = (
  closed: readonly ReturnType<typeof close>[],
  open: readonly Consultation[],
  nowMs: number,
) => {
  const pieces = listOwnLessons({ closed, open: new Map(open.map((each) => [each.record.id, each])) }, nowMs);
  for (let next = pieces.next(); ; next = pieces.next()) if (next.done === true) return next.value;
};

const done = play('onee');
const hasBroken = gather([close(done)], [], nextDayMs).map((lesson) => lesson.hasBroken);

describe('the strands of this station', () => {
  it('teach from the day after on, in the order in which they were known', () => {
    expect(hasBroken.length).toBeGreaterThan(0);
    expect(gather([close(done)], [], startAtMs + 6 * 3_600_000)).toEqual([]);
    const days = gather([close(done), close(play('twoo'))], [], nextDayMs).map(({ day }) => day);
    expect(days).toHaveLength(2 * hasBroken.length);
    expect(days.every((day) => day === countDay(startAtMs))).toBe(true);
  });

  it('teach while she is open, and once where her record is written and her log not gone yet', () => {
    expect(gather([], [done], nextDayMs)).toHaveLength(hasBroken.length);
    expect(gather([close(done)], [done], nextDayMs)).toHaveLength(hasBroken.length);
  });

  it('are not those that came in from a file, or of a log that nobody can read', () => {
    const brought = { ...close(done), broughtIn: { atMs: nextDayMs, settings: [] } };
    expect(gather([brought], [], nextDayMs + msPerDay)).toEqual([]);
    expect(gather([{ ...close(done), log: [{ type: 'FROM_AFAR' }] }], [], nextDayMs)).toEqual([]);
  });
});

describe('a day', () => {
  it('begins at midnight on the wall, on the days the clock changes too', () => {
    const midnight = (day: number) => new Date(2026, 2, day).getTime();
    for (const day of [1, 8, 9]) {
      expect(countDay(midnight(day)) - countDay(midnight(day) - 1)).toBe(1);
      expect(countDay(midnight(day + 1) - 1)).toBe(countDay(midnight(day)));
    }
  });
});
