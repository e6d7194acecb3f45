import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { ASSUMED_SAME_DAY_MS } from '../../../shared/judgement/lapse';
import { findMixRefusal } from '../../../shared/judgement/permitRefusal';
import { listBreaks } from '../../../shared/records/breaks';
import type { RawEvent } from '../../../shared/records/classify';
import { findBreakOnHead, hasWeakenedOnHead } from '../../../shared/records/headLooks';
import { findFelt } from '../../../shared/records/tonerProof';
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

describe('a break at a look, once it is rinsed', () => {
  const note = (before: string, stretch: string): RawEvent => ({
    type: 'STRETCH_NOTED',
    answers: { zone, before, stretch, ...(before === 'wrongTap' ? { code: 'wrongTap', words: '' } : {}) },
  });
  const rinsed = andThen(andThen(on, look('breaking')), { type: 'BOWL_RINSED', answers: { zone } });
  const worst = ({ record }: Told) => findFelt(record, zone)?.stretch;

  it('is taken back by no wrong tap, which takes back what was felt', () => {
    expect(worst(rinsed)).toBe('snaps');
    expect(worst(andThen(rinsed, note('wrongTap', 'springsBack')))).toBe('snaps');
    const held = andThen(andThen(on, look('sound')), { type: 'BOWL_RINSED', answers: { zone } });
    const slow = andThen(held, note('stands', 'staysLong'));
    expect(worst(slow)).toBe('staysLong');
    expect(worst(andThen(slow, note('wrongTap', 'springsBack')))).toBe('springsBack');
  });

  it('closes the zone for that day, and leaves another visit to a new strand', () => {
    const [broken] = listBreaks(rinsed.record).filter(({ strand }) => strand === null);
    // Its strand is not the one that was used: another one was tested since.
    const bowls = rinsed.record.bowls.map((bowl) => ({ ...bowl, strand: 9 }));
    const refusal = (afterMs: number) =>
      findMixRefusal({ ...rinsed.record, bowls }, zone, salon, (broken?.atMs ?? 0) + afterMs);
    expect(refusal(0)).toEqual({ code: 'hairBroke' });
    expect(refusal(ASSUMED_SAME_DAY_MS)).toEqual({ code: 'hairBroke' });
    expect(refusal(ASSUMED_SAME_DAY_MS + 1)).toEqual({ code: 'anotherDay' });
  });

  it('is among what broke, under its mix and as no strand', () => {
    const [broken] = listBreaks(rinsed.record).filter(({ strand }) => strand === null);
    expect(broken).toMatchObject({
      zone,
      how: 'broken',
      mix: { line: 'Sandbar powder', developerPercent: 3 },
    });
    expect(broken?.atMs).toBe(rinsed.record.bowls.at(-1)?.looks.at(-1)?.atMs);
  });
});
