import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../../shared/records/settings';
import { msPerHour, msPerMinute } from '../../../shared/units/time';
import { type AnyOthers, sayOthers } from '../../../src/words/sayOthers';
import { findWords } from '../../../src/words/words';

const atMs = new Date(2026, 2, 5, 14, 2).getTime();
const say = (others: AnyOthers, laterMs = 0) =>
  sayOthers(others, findWords('en'), defaultSettings.units, atMs + laterMs).replaceAll('\u00a0', ' ');
const inStep: AnyOthers = { kind: 'inStep', atMs, refused: [] };
const apart = { kind: 'apart', why: 'gone', inStepAtMs: atMs, waiting: 3, refused: [] } as const;

describe('how it stands with other stations', () => {
  it.each([
    [msPerMinute - 1, 'In step, just now'],
    [msPerMinute, 'In step, 1 minute ago'],
    [2.9 * msPerMinute, 'In step, 2 minutes ago'],
    [msPerHour - 1, 'In step, 59 minutes ago'],
    [msPerHour, 'In step, 1 hour ago'],
    [-5_000, 'In step, just now'],
  ])('is in step, %d ms ago', (laterMs, said) => expect(say(inStep, laterMs)).toBe(said));

  it('is apart since a time of today, or of a day', () => {
    expect(say(apart)).toBe('Not reached since 14:02, 3 records wait');
    expect(say({ ...apart, waiting: 1 })).toBe('Not reached since 14:02, 1 record waits');
    expect(say({ ...apart, waiting: 0 })).toBe('Not reached since 14:02, nothing waits to go out');
    expect(say({ ...apart, waiting: null })).toBe('Not reached since 14:02');
    expect(say(apart, 12 * msPerHour)).toBe('Not reached since Thu, Mar 5, 14:02, 3 records wait');
    expect(say({ ...apart, inStepAtMs: null })).toBe('Not reached yet');
  });

  it('is off, or not known yet', () => {
    expect(say({ kind: 'off' })).toBe('None: records stay on this tablet');
    expect(say({ kind: 'asking' })).toBe('Looking for them');
  });
});
