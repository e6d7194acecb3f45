import { describe, expect, it } from 'vitest';
import type { Clock } from '../../../shared/records/clock';
import { defaultSettings } from '../../../shared/records/settings';
import { sayClock, sayNextDue } from '../../../src/parts/clockSaid';
import { findWords } from '../../../src/words/words';
import { makeStrandClock } from '../../shared/records/strandClock';

const minute = 60_000;
const words = findWords('en');
const { units } = defaultSettings;
const startedAtMs = Date.UTC(2026, 2, 3, 12);

const strand: Clock = { ...makeStrandClock(startedAtMs), id: 'strand-ends-2' };
const head: Clock = { ...strand, id: 'head-lengths-1', kind: 'head', zone: 'lengths' };
const glass: Clock = { ...strand, id: 'incompatibility-1', kind: 'incompatibility', zone: null, looks: null };
const looked: Clock = { ...strand, lookedAtMs: [2, 7, 12, 17, 22].map((at) => startedAtMs + at * minute) };

const say = (clock: Clock, afterMs: number) => sayClock(clock, 2, startedAtMs + afterMs, words, units);
const sayNext = (clock: Clock, afterMs: number) => sayNextDue(clock, 2, startedAtMs + afterMs, words, units);

describe('a clock', () => {
  it('says first what it is: a strand, a head, or the glass', () => {
    expect(say(strand, 0).name).toBe('STRAND 2 ends');
    expect(say(head, 0).name).toBe('HEAD lengths');
    expect(say(glass, 0).name).toBe('GLASS');
  });

  it.each([
    [strand, 90_000, 'running', 'take off in', '23:30', 'First look in 0:30'],
    [
      { ...strand, lookedAtMs: [startedAtMs + 40_000] },
      minute,
      'running',
      'take off in',
      '24:00',
      'Next look in 1:00',
    ],
    [
      { ...strand, lookedAtMs: [startedAtMs + 2 * minute] },
      4 * minute,
      'running',
      'take off in',
      '21:00',
      'Next look in 3:00',
    ],
    [strand, 2 * minute, 'look', 'look now · take off in', '23:00', 'Look now'],
    [looked, 23.5 * minute, 'warn', 'take off in', '1:30', null],
    [looked, 25 * minute, 'over', 'take off now', '0:00', null],
    [looked, 25 * minute + 41_000, 'over', 'take off now', '+0:41', null],
    [
      { ...head, lookedAtMs: looked.lookedAtMs },
      23.5 * minute,
      'warn',
      'to the basin · rinse in',
      '1:30',
      null,
    ],
    [glass, 26 * minute, 'over', 'read it now', '+1:00', null],
    [{ ...looked, endedAtMs: startedAtMs + 9 * minute }, 40 * minute, 'ended', 'off', '16:00', null],
  ] as const)('%#: tells its phase in words and digits', (clock, afterMs, tone, says, digits, look) => {
    expect(say(clock, afterMs)).toMatchObject({ tone, says, digits, look });
  });

  it('counts the looks that were missed', () => {
    expect(say(strand, 13 * minute).missed).toBe('Looks missed: 2');
    expect(say(strand, 3 * minute).missed).toBeNull();
  });
});

describe('what is due next', () => {
  it('is the next look while one is to come', () => {
    expect(sayNext(strand, 90_000)).toMatchObject({ says: 'look in', digits: '0:30', tone: 'running' });
  });

  it('counts up from a look that is due', () => {
    expect(sayNext(strand, 2 * minute + 20_000)).toMatchObject({ says: 'look now', digits: '+0:20' });
  });

  it('is the end once nobody looks any more', () => {
    expect(sayNext(looked, 23 * minute)).toMatchObject({ says: 'take off in', digits: '2:00', tone: 'warn' });
    expect(sayNext(looked, 25 * minute + 41_000)).toMatchObject({ says: 'take off now', digits: '+0:41' });
  });
});
