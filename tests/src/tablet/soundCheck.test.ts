import { describe, expect, it } from 'vitest';
import { findSoundCheck, keepSoundCheck, readSoundCheck } from '../../../src/tablet/soundCheck';

const hour = 3_600_000;
const atMs = Date.UTC(2026, 2, 3, 9);

function makeKeep(kept: string | null = null) {
  let value = kept;
  return {
    getItem: () => value,
    setItem: (_key: string, next: string) => {
      value = next;
    },
  };
}

describe('the sound at the start of a day', () => {
  it.each([
    ['is offered where nobody has tried it', null, atMs, 'offer'],
    ['is not offered once it was heard', { answer: 'heard', atMs }, atMs + 12 * hour, null],
    ['is offered again after twelve hours', { answer: 'heard', atMs }, atMs + 12 * hour + 1, 'offer'],
    ['is not offered once it was put off', { answer: 'later', atMs }, atMs + hour, null],
    ['is offered again on the day after that', { answer: 'later', atMs }, atMs + 24 * hour, 'offer'],
    ['is offered where the clock was set back behind it', { answer: 'heard', atMs }, atMs - 1, 'offer'],
    ['stays told as not heard', { answer: 'notHeard', atMs }, atMs + 1, 'notHeard'],
    [
      'stays told as not heard on the next day too',
      { answer: 'notHeard', atMs },
      atMs + 24 * hour,
      'notHeard',
    ],
  ] as const)('%s', (_title, check, nowMs, expected) => {
    expect(findSoundCheck(check, nowMs)).toBe(expected);
  });

  it('is kept over a reload', () => {
    const keep = makeKeep();
    expect(readSoundCheck(keep)).toBeNull();
    keepSoundCheck(keep, { answer: 'notHeard', atMs });
    expect(readSoundCheck(keep)).toEqual({ answer: 'notHeard', atMs });
  });

  it.each([
    '{',
    'null',
    '7',
    '{"answer":"loud","atMs":1}',
    '{"answer":"heard"}',
    '{"answer":"heard","atMs":null}',
  ])('is offered where %s is kept', (kept) => expect(readSoundCheck(makeKeep(kept))).toBeNull());

  it('is no trouble where the browser keeps nothing', () => {
    const refuse = () => {
      throw new DOMException('no storage', 'SecurityError');
    };
    const keep = { getItem: refuse, setItem: refuse };
    expect(readSoundCheck(keep)).toBeNull();
    expect(() => keepSoundCheck(keep, { answer: 'heard', atMs })).not.toThrow();
  });
});
