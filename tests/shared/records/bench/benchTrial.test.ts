import { describe, expect, it } from 'vitest';
import { replayBench } from '../../../../shared/records/bench/benchTrial';

const minute = 60_000;
const hour = 60 * minute;
const entry = (type: string, atMs: number, payload: object = {}, by = 'Opal') => ({
  v: 1,
  type,
  payload,
  atMs,
  by,
});
const started = entry('BENCH_STARTED', 0, { kind: 'boilSet', hair: 'bleached' });
const out = entry('BENCH_TAKEN_OUT', 31 * minute, {}, 'Wren');
const read = entry('BENCH_CURL_READ', 26 * hour, { curl: 'partly' }, 'Juno');
const pieces = entry('BENCH_PIECES_READ', 26 * hour, { dryPiece: 'springsBack', wetPiece: 'snaps' });
const back = (what: string, atMs: number) =>
  entry('BENCH_TAKEN_BACK', atMs, { what, code: 'wrongTap', words: 'other strand' });

describe('the log of a bench trial', () => {
  it('says what was tried, who took it out and what was seen', () => {
    expect(replayBench('t1', [started, out, read])).toMatchObject({
      ok: true,
      value: {
        id: 't1',
        kind: 'boilSet',
        hair: 'bleached',
        startedBy: 'Opal',
        outBy: 'Wren',
        isRead: true,
        reading: { curl: 'partly', by: 'Juno', atMs: 26 * hour },
        takenBack: null,
      },
    });
  });

  it('takes a reading back by name and lets it be read again', () => {
    const log = [started, out, read, back('reading', 27 * hour)];
    expect(replayBench('t1', log)).toMatchObject({
      value: { isRead: false, reading: null, readingsTakenBack: [{ by: 'Opal', words: 'other strand' }] },
    });
    const again = entry('BENCH_CURL_READ', 28 * hour, { curl: 'stays' });
    expect(replayBench('t1', [...log, again])).toMatchObject({ value: { reading: { curl: 'stays' } } });
  });

  it('stands for nothing once all of it was taken back', () => {
    expect(replayBench('t1', [started, back('trial', minute)])).toMatchObject({
      value: { takenBack: { code: 'wrongTap' } },
    });
    expect(replayBench('t1', [started, back('trial', minute), out])).toEqual({
      ok: false,
      error: { seq: 2, code: 'saysOtherwise' },
    });
  });

  it.each([
    ['out too early', [started, { ...out, atMs: 29 * minute }], 1, 'saysOtherwise'],
    ['read before it was out', [started, read], 1, 'saysOtherwise'],
    ['read while it dries', [started, out, { ...read, atMs: 24 * hour }], 2, 'saysOtherwise'],
    ['read twice', [started, out, read, { ...read, atMs: 27 * hour }], 3, 'saysOtherwise'],
    ['read as another kind', [started, out, pieces], 2, 'saysOtherwise'],
    ['begun twice', [started, started], 1, 'saysOtherwise'],
    ['not begun', [out], 0, 'saysOtherwise'],
    ['no reading to take back', [started, back('reading', minute)], 1, 'saysOtherwise'],
    ['back in time', [started, out, { ...read, atMs: 0 }], 2, 'wentBackInTime'],
    ['of a later edition', [{ ...started, v: 2 }], 0, 'newerVersion'],
    ['of no known kind', [{ ...started, type: 'BENCH_EATEN' }], 0, 'unknownType'],
    ['with an answer nobody could give', [{ ...started, payload: { kind: 'boilSet' } }], 0, 'badPayload'],
    ['by nobody', [{ ...started, by: '' }], 0, 'badPayload'],
    ['no event', ['boil'], 0, 'notAnEvent'],
    ['empty', [], 0, 'empty'],
  ] as const)('is refused: %s', (_, log, seq, code) => {
    expect(replayBench('t1', log)).toEqual({ ok: false, error: { seq, code } });
  });
});
