import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { isAnotherDay, passDay } from '../../../shared/records/passedDay';
import { andThen, day, find, hour, lowRisk, ofStep, ofType, type Told, tell, tryRaw, until } from './telling';

const atMix = tell(until('BOWL_WEIGHED', lowRisk));
const weigh = find(ofType('BOWL_WEIGHED'));
const client = find(ofStep('client'));
const askedAtMs = atMix.record.todayAtMs ?? 0;
const codeOf = (told: Told, atMs: number): string => {
  const tried = tryRaw(told, weigh, atMs);
  if (tried.ok) return 'taken';
  return tried.error.kind === 'permit' ? tried.error.permit.code : tried.error.kind;
};
const change = (answers: object) =>
  ({ ...client, answers: { ...client.answers, ...answers } }) as typeof client;

describe('what was told for the day', () => {
  it('holds for twelve hours at her chair (ASSUMED), and not a millisecond longer', () => {
    expect(codeOf(atMix, askedAtMs + 12 * hour)).toBe('taken');
    expect(codeOf(atMix, askedAtMs + 12 * hour + 1)).toBe('anotherDay');
  });

  it('is forgotten by whatever happens next, with what was judged of it and decided on it; the strand stays', () => {
    const back = andThen(atMix, { type: 'REOPENED', answers: { step: 'client' } }, 15 * hour);
    expect(back.record.answers.client).not.toHaveProperty('reactions');
    expect(back.record.answers.client).not.toHaveProperty('ageBand');
    expect(back.record.answers.client).toMatchObject({ service: 'lighten', targetLevel: 7 });
    expect(back.record.decision).toBeNull();
    const again = andThen(andThen(back, client), find(ofType('DECIDED')));
    expect(codeOf(again, again.atMs)).not.toBe('anotherDay');
    expect(again.record.strands.map(({ outcome }) => outcome?.grade)).toEqual(['sound', 'sound']);
  });

  it('grows no newer by another question of the same step, and does by being told again as it was', () => {
    const grey = andThen(atMix, change({ greyPercent: '30' }), 10 * hour);
    expect(grey.record.todayAtMs).toBe(askedAtMs);
    const again = andThen(grey, change({ greyPercent: '30' }), hour);
    expect(again.record.todayAtMs).toBe(again.atMs);
    const scalp = andThen(grey, change({ greyPercent: '30', scalp: 'tight' }), hour);
    expect(scalp.record.todayAtMs).toBe(scalp.atMs);
  });

  it('is not asked of who is away, nor of who is stopped by it, nor after the end', () => {
    const away = andThen(atMix, { type: 'PARKED', answers: { untilAtMs: atMix.atMs + 3 * day } });
    const stopped = andThen(atMix, change({ reactions: ['hives'] }));
    const ended = andThen(atMix, { type: 'CALLED_OFF', answers: { reason: 'noTime' } });
    for (const { record, atMs } of [away, stopped, ended]) {
      expect(isAnotherDay(record, atMs + 2 * day)).toBe(false);
      expect(passDay(record, atMs + 2 * day)).toBe(record);
    }
  });

  it('is as old as it is when the clock is set back', () => {
    const back = { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(-5 * hour) } } as const;
    const corrected = andThen(atMix, back, -5 * hour + 1000, salon);
    expect(isAnotherDay(corrected.record, askedAtMs + 7 * hour)).toBe(false);
    expect(isAnotherDay(corrected.record, askedAtMs + 7 * hour + 1)).toBe(true);
  });
});
