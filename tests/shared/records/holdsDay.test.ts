import { describe, expect, it } from 'vitest';
import { findHoldsDay } from '../../../shared/records/holdsDay';
import { playUntil, tap } from '../../src/screens/playStory';

const of = (...to: Parameters<typeof playUntil>) => findHoldsDay(playUntil(...to).consultation.record);

describe('what holds the end of the day', () => {
  it('is nothing before a strand runs, between strand and bowl, and once all is rinsed', () => {
    expect(of('OPENED')).toBe(null);
    expect(of('DECIDED')).toBe(null);
    expect(of('BOWL_RINSED')).toBe(null);
  });

  it('is a strand that runs, a bowl that stands, and above all what is on a head', () => {
    expect(of('STRAND_STARTED')).toBe('strandRuns');
    expect(of('BOWL_WEIGHED')).toBe('bowlStands');
    expect(of('BOWL_APPLIED')).toBe('onHead');
  });

  it('is a reaction that nobody has answered, and a record that is not written yet', () => {
    const suspected = tap(playUntil('BOWL_RINSED'), 60_000, { type: 'REACTION_SUSPECTED' });
    expect(findHoldsDay(suspected.consultation.record)).toBe('reaction');
    expect(of('whole')).toBe('notWritten');
  });
});
