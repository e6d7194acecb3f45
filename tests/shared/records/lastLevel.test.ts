import { describe, expect, it } from 'vitest';
import { ASSUMED_FAR_LEVELS, compareLevel, findLastLevel } from '../../../shared/records/lastLevel';
import { andThen, minute, tell, until } from './telling';

const started = tell(until('LOOKED'));
const look = (level: string) =>
  ({ type: 'LOOKED', answers: { of: 'strand', zone: 'ends', level, feel: 'sound' } }) as const;

describe('the level last seen', () => {
  it('is the one told before the start until a look reads one', () => {
    expect(findLastLevel(started.record, 'ends')).toEqual({ level: 5, seenAt: 'start' });
    const unread = andThen(started, look('unknown'), minute);
    expect(findLastLevel(unread.record, 'ends')).toEqual({ level: 5, seenAt: 'start' });
  });

  it('is that of the last look that read one', () => {
    const looked = ['7.5', '6', 'unknown'].reduce(
      (told, level) => andThen(told, look(level), minute),
      started,
    );
    expect(findLastLevel(looked.record, 'ends')).toEqual({ level: 6, seenAt: 'look' });
  });

  it('is nobody’s to know where none was told', () => {
    expect(findLastLevel({ ...started.record, answers: {} }, 'ends')).toBeNull();
    const { client } = started.record.answers;
    if (client === undefined) throw new Error('no client');
    const answers = { client: { ...client, endsLevel: 'unknown' } } as const;
    expect(findLastLevel({ ...started.record, strands: [], answers }, 'ends')).toBeNull();
  });
});

describe('a level beside the last one', () => {
  it.each([
    [7, 7.5, 'darker'],
    [1, 10, 'darker'],
    [7.5, 7.5, null],
    [9, 7.5, null],
    [7.5 + ASSUMED_FAR_LEVELS - 0.5, 7.5, null],
    [7.5 + ASSUMED_FAR_LEVELS, 7.5, 'farLighter'],
    [10, 5, 'farLighter'],
    [Number.NaN, 5, null],
  ] as const)('%d after %d is %s', (level, last, expected) => {
    expect(compareLevel(level, last)).toBe(expected);
  });
});
