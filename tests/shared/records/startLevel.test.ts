import { describe, expect, it } from 'vitest';
import type { Answers } from '../../../shared/records/forms/asked';
import { findStartLevel } from '../../../shared/records/startLevel';
import { tell, until } from './telling';

const { client, hotTools } = tell(until('STRAND_STARTED')).record.answers;
if (client === undefined || hotTools === undefined) throw new Error('the story asks both');

const told = (history: typeof hotTools.history & {}): Answers => ({
  client: { ...client, naturalLevel: 4, endsLevel: 6 },
  hotTools: { ...hotTools, history },
});

describe('the level a strand begins at', () => {
  it.each([
    ['ends', ['lightener'], 6],
    ['ends', ['none'], 6],
    ['roots', ['lightener'], 4],
    ['lengths', ['none'], 4],
    ['lengths', ['lightener'], null],
    ['lengths', ['none', 'lightener'], null],
  ] as const)('of %s with %j behind them is %s', (zone, history, level) => {
    expect(findStartLevel(told(history), { zone })).toBe(level);
  });

  it('is nobody’s to know where nothing was told', () => {
    expect(findStartLevel({}, { zone: 'lengths' })).toBeNull();
    expect(findStartLevel({}, { zone: 'ends' })).toBeNull();
    const unknown = { ...told(['none']), client: { ...client, naturalLevel: 'unknown' } } as const;
    expect(findStartLevel(unknown, { zone: 'roots' })).toBeNull();
  });
});
