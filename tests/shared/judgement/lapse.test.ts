import { describe, expect, it } from 'vitest';
import {
  ASSUMED_CARRIED_LAPSES_WEEKS,
  ASSUMED_OUTCOME_LAPSES_DAYS,
  findLapseAtMs,
  isLapsed,
} from '../../../shared/judgement/lapse';
import type { StrandRecord } from '../../../shared/records/record';
import { msPerDay } from '../../../shared/units/time';
import { playUntil } from '../../src/screens/playStory';

const { consultation } = playUntil('OUTCOME_RECORDED', 'lengths');
const found = consultation.record.strands.find(({ zone }) => zone === 'lengths');
if (found?.ended == null) throw new Error('the story has no strand of the lengths that came off');
const strand: StrandRecord = found;
const offAtMs = found.ended.atMs;
const carried: StrandRecord = {
  ...strand,
  carried: { fromId: 'last', maxDeveloperPercent: 6, maxMinutes: 20 },
};

describe('until when a strand counts', () => {
  it.each([
    ['tested', strand, ASSUMED_OUTCOME_LAPSES_DAYS],
    ['carried', carried, ASSUMED_CARRIED_LAPSES_WEEKS * 7],
  ])('is so many days from when it came off, if %s, the last moment included', (_, one, days) => {
    const lapsesAtMs = findLapseAtMs(one);
    expect(lapsesAtMs - offAtMs).toBe(days * msPerDay);
    expect([isLapsed(one, lapsesAtMs), isLapsed(one, lapsesAtMs + 1)]).toEqual([false, true]);
  });

  it('is never over where no outcome is recorded: there is nothing that could lapse', () => {
    expect(isLapsed({ ...strand, outcome: null }, offAtMs + 1000 * msPerDay)).toBe(false);
  });
});
