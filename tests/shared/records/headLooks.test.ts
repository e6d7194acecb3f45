import { describe, expect, it } from 'vitest';
import type { RawEvent } from '../../../shared/records/classify';
import { findBreakOnHead, hasWeakenedOnHead } from '../../../shared/records/headLooks';
import { andThen, find, ofType, type Told, tell, until } from './telling';

const zone = 'lengths';
const on = andThen(andThen(tell(until('BOWL_WEIGHED')), find(ofType('BOWL_WEIGHED'))), {
  type: 'BOWL_APPLIED',
  answers: { zone, skinFirst: 'calm' },
});
const look = (hair: string): RawEvent => ({
  type: 'LOOKED',
  answers: { of: 'head', zone, stinging: 'no', hair },
});
const bowlOf = ({ record }: Told) => {
  const bowl = record.bowls.at(-1);
  if (bowl === undefined) throw new Error('no bowl');
  return bowl;
};
const clockOf = (told: Told) => told.record.clocks.find(({ id }) => id === bowlOf(told).clock);

describe('a look at the head', () => {
  it('that finds sound hair changes nothing of its time', () => {
    const told = andThen(on, look('sound'));
    expect(findBreakOnHead(bowlOf(told))).toBeUndefined();
    expect(hasWeakenedOnHead(told.record, bowlOf(told).clock ?? '')).toBe(false);
    expect(clockOf(told)?.dueAtMs).toBe(clockOf(on)?.dueAtMs);
  });

  it('that finds it stretchy is remembered, and leaves its time', () => {
    const told = andThen(andThen(on, look('stretchy')), look('sound'));
    expect(findBreakOnHead(bowlOf(told))).toBeUndefined();
    expect(hasWeakenedOnHead(told.record, bowlOf(told).clock ?? '')).toBe(true);
    expect(clockOf(told)?.dueAtMs).toBe(clockOf(on)?.dueAtMs);
  });

  it('that finds it breaking ends its time then, and its limit', () => {
    const told = andThen(on, look('breaking'));
    const broken = findBreakOnHead(bowlOf(told));
    expect(broken).toMatchObject({ hair: 'breaking' });
    expect(hasWeakenedOnHead(told.record, bowlOf(told).clock ?? '')).toBe(true);
    expect(clockOf(told)).toMatchObject({ dueAtMs: broken?.atMs, limitAtMs: broken?.atMs, endedAtMs: null });
  });
});
