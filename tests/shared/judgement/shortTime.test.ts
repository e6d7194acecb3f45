import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import { issuePermit } from '../../../shared/judgement/permit';
import { findShortTime } from '../../../shared/judgement/shortTime';
import { findStrand } from '../../../shared/records/record';
import { andThen, lowRisk, minute, ofType, tell, tryRaw, until } from '../records/telling';

/** Both strands hold; that of the lengths was begun just now and is taken off after so many ms of its 25 min. */
const started = tell(until('LOOKED', lowRisk));
const offAfter = (onMs: number) =>
  andThen(started, { type: 'STRAND_TAKEN_OFF', answers: { zone: 'lengths', why: 'levelReached' } }, onMs);
const shortOf = (told: ReturnType<typeof tell>) => {
  const strand = findStrand(told.record, 'lengths');
  return strand === undefined ? 'no strand' : findShortTime(strand);
};

describe('a strand that came off before its time', () => {
  it.each([
    [24 * minute, { onMin: 24, plannedMin: 25 }],
    [25 * minute - 1, { onMin: 24, plannedMin: 25 }],
    [25 * minute, null],
    [40 * minute, null],
  ])('after %d ms of 25 min is told as %j', (onMs, expected) => {
    expect(shortOf(offAfter(onMs))).toEqual(expected);
  });

  it('is none while it runs, and none where it broke', () => {
    const ended = { seq: 1, by: 'Opal', atMs: 1 };
    expect(findShortTime({ ended: null, minutesOn: null, minutes: 25 })).toBeNull();
    expect(findShortTime({ ended: { ...ended, how: 'broke' }, minutesOn: 9, minutes: 25 })).toBeNull();
    expect(findShortTime({ ended: { ...ended, how: 'discarded' }, minutesOn: 9, minutes: 25 })).toBeNull();
    expect(findShortTime({ ended: { ...ended, how: 'takenOff' }, minutesOn: 0, minutes: 25 })).toEqual({
      onMin: 0,
      plannedMin: 25,
    });
  });
});

describe('the gate after a strand of one minute of its 25', () => {
  const isAfterwards = ({ raw }: StoryStep) =>
    ['OUTCOME_RECORDED', 'DECIDED'].includes(raw.type) || ofType('STRAND_TAKEN_OFF', 'ends')(raw);
  const decided = (onMs: number) => tell(lowRisk.filter(isAfterwards), salon, offAfter(onMs));
  const weigh = (minutes: string) => {
    const bowl = lowRisk.find(({ raw }) => raw.type === 'BOWL_WEIGHED' && raw.answers?.zone === 'lengths');
    return {
      type: 'BOWL_WEIGHED',
      answers: { ...bowl?.raw.answers, zone: 'lengths', minutes },
    } as const;
  };

  it('allows one minute, and not one more', () => {
    const told = decided(minute);
    const permit = issuePermit(told.record, 'lengths', salon, told.atMs);
    expect(permit).toMatchObject({ ok: true, value: { maxMinutes: 1, tested: { minutes: 1 } } });
    const refused = tryRaw(told, weigh('2'), told.atMs + 1000);
    expect(refused).toMatchObject({ ok: false, error: { kind: 'mixture', mixture: { code: 'longer' } } });
    expect(tryRaw(told, weigh('1'), told.atMs + 1000)).toMatchObject({ ok: true });
  });

  it('allows none after less than a minute', () => {
    const told = decided(minute - 1);
    expect(tryRaw(told, weigh('1'), told.atMs + 1000)).toMatchObject({
      ok: false,
      error: { kind: 'permit', permit: { code: 'strandTooShort' } },
    });
  });
});
