import { describe, expect, it } from 'vitest';
import type { RawEvent } from '../../../shared/records/classify';
import { readClock } from '../../../shared/records/clock';
import { ASSUMED_DRYING_MIN, findDryingClock } from '../../../shared/records/damp';
import { andThen, minute, type Told, tell, until } from './telling';

const feel = (answers: Readonly<Record<string, string>>): RawEvent => ({
  type: 'ANSWERED',
  step: 'feelHair',
  answers,
});
const damp = { nape: 'dry', mid: 'damp' };
const before = tell(until('SKIN_TEST_NOTED'));
const told: Told = andThen(before, feel(damp));

describe('damp hair', () => {
  it('dries from when it was felt, and not from another tap of the same step', () => {
    expect(before.record.dampSinceMs).toBeNull();
    expect(told.record.dampSinceMs).toBe(told.atMs);
    const also = andThen(told, feel({ ...damp, porosity: 'high' }), 3 * minute);
    expect(also.record.dampSinceMs).toBe(told.atMs);
  });

  it('dries anew when it was felt again and is still damp, all of it or some', () => {
    const again = andThen(told, feel(damp), 3 * minute);
    expect(again.record.dampSinceMs).toBe(again.atMs);
    const elsewhere = andThen(told, feel({ nape: 'damp', mid: 'dry' }), 3 * minute);
    expect(elsewhere.record.dampSinceMs).toBe(elsewhere.atMs);
  });

  it('is over once it is dry, and while she is away', () => {
    expect(andThen(told, feel({ nape: 'dry', mid: 'dry' })).record.dampSinceMs).toBeNull();
    const away = { type: 'PARKED', answers: { untilAtMs: told.atMs + 60 * minute } } as const;
    expect(andThen(told, away).record.dampSinceMs).toBeNull();
  });

  it('has a clock that is read like any other, and none while nothing dries', () => {
    expect(findDryingClock(before.record)).toBeNull();
    const clock = findDryingClock(told.record);
    if (clock === null) throw new Error('nothing dries');
    expect(readClock(clock, told.atMs)).toMatchObject({ phase: 'running', nextLookAtMs: null });
    expect(readClock(clock, told.atMs + ASSUMED_DRYING_MIN * minute)).toMatchObject({
      phase: 'over',
      remainingMs: 0,
    });
  });

  it('has dried as long as it has when the clock is set back', () => {
    const back: RawEvent = { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(-30 * minute) } };
    const corrected = andThen(told, back, -29 * minute);
    expect(corrected.record.dampSinceMs).toBe(told.atMs - 30 * minute);
  });
});
