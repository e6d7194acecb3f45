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
const unread = { startLevel: 'unknown' } as const;

describe('the level a strand begins at', () => {
  it('is its own, wherever it was snipped, where somebody looked', () => {
    for (const zone of ['roots', 'lengths', 'ends'] as const) {
      expect(findStartLevel(told(['lightener']), { zone, startLevel: 7.5 })).toBe(7.5);
    }
  });

  it.each([
    ['ends', ['lightener'], 6],
    ['ends', ['none'], 6],
    ['roots', ['lightener'], 4],
    ['lengths', ['none'], 4],
    ['lengths', ['lightener'], null],
    ['lengths', ['none', 'lightener'], null],
  ] as const)('of %s with %j behind them is %s where nobody did', (zone, history, level) => {
    expect(findStartLevel(told(history), { zone, ...unread })).toBe(level);
  });

  it('is nobody’s to know where nothing was told', () => {
    expect(findStartLevel({}, { zone: 'lengths', ...unread })).toBeNull();
    expect(findStartLevel({}, { zone: 'ends', ...unread })).toBeNull();
    const unknown = { ...told(['none']), client: { ...client, naturalLevel: 'unknown' } } as const;
    expect(findStartLevel(unknown, { zone: 'roots', ...unread })).toBeNull();
  });
});
