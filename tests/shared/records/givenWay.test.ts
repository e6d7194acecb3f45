import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { RawEvent } from '../../../shared/records/classify';
import { findGivenWay } from '../../../shared/records/givenWay';
import { andThen, find, hour, lowRisk, ofType, type Told, tell, tryRaw, until } from './telling';

const weigh = (zone: string): RawEvent => {
  const raw = find(ofType('BOWL_WEIGHED'));
  return { ...raw, answers: { ...raw.answers, zone } } as RawEvent;
};
const apply = (zone: string): RawEvent => ({ type: 'BOWL_APPLIED', answers: { zone, skinFirst: 'calm' } });
const look = (hair: string): RawEvent => ({
  type: 'LOOKED',
  answers: { of: 'head', zone: 'lengths', stinging: 'no', hair },
});
const feel = (stretch: string): RawEvent => ({
  type: 'STRETCH_NOTED',
  answers: { zone: 'lengths', stretch, before: 'stands' },
});
const rinse: RawEvent = { type: 'BOWL_RINSED', answers: { zone: 'lengths' } };
/** Lengths on, the bowl of the ends weighed beside it. */
const bothWeighed = [weigh('lengths'), weigh('ends'), apply('lengths')].reduce(
  (told, raw) => andThen(told, raw),
  tell(until('BOWL_WEIGHED', lowRisk)),
);
const play = (...taps: readonly RawEvent[]): Told =>
  taps.reduce((told, raw) => andThen(told, raw), bothWeighed);
const given = ({ record, atMs }: Told, afterMs = 0) => findGivenWay(record, atMs + afterMs);
/** What becomes of the bowl that waits. */
const putOn = (told: Told) => {
  const event = tryRaw(told, apply('ends'), told.atMs + 1000, salon);
  return event.ok ? 'on' : event.error;
};

describe('hair that gives way on the head', () => {
  it('lets the other bowl go on where it holds', () => {
    expect(given(play(look('sound')))).toBeNull();
    expect(putOn(play(look('sound')))).toBe('on');
  });

  it('and broke keeps every bowl off for that day, rinsed and felt or not', () => {
    for (const told of [play(look('breaking')), play(look('breaking'), rinse, feel('springsBack'))]) {
      expect(given(told)).toBe('broke');
      expect(putOn(told)).toEqual({ kind: 'permit', permit: { code: 'hairBroke' } });
    }
    // ASSUMED_SAME_DAY_MS: twelve hours.
    const broke = play(look('breaking'));
    expect(given(broke, 12 * hour)).toBe('broke');
    expect(given(broke, 12 * hour + 1)).toBeNull();
  });

  it('and was stretchy keeps them off until it was rinsed and felt to spring back', () => {
    for (const told of [
      play(look('stretchy')),
      play(look('stretchy'), look('sound')),
      play(look('stretchy'), rinse),
      play(look('stretchy'), rinse, feel('staysLong')),
      play(look('stretchy'), rinse, feel('staysLong'), feel('springsBack')),
    ]) {
      expect(given(told)).toBe('stretchy');
      expect(putOn(told)).toEqual({ kind: 'permit', permit: { code: 'hairStretchy' } });
    }
    const springs = play(look('stretchy'), rinse, feel('springsBack'));
    expect(given(springs)).toBeNull();
    expect(putOn(springs)).toBe('on');
  });
});
