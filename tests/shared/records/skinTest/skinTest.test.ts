import { describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import { judgeTest } from '../../../../shared/judgement/skinTest';
import { replaySkinTest } from '../../../../shared/records/skinTest/replay';
import {
  clear,
  correctClock,
  day,
  hour,
  judge,
  type Kept,
  keep,
  nothing,
  putAhead,
  putOn,
  read,
  startAtMs,
  takeBack,
  waiting,
} from './makeTest';

const statusOf = ({ test }: Kept, atMs: number) =>
  test === null ? null : judgeTest({ ...test, readAtMs: test.read?.atMs ?? null }, salon.profile, atMs);
const replay = (log: readonly unknown[]) => replaySkinTest('test1', log, () => salon);

describe('a skin test by ticket', () => {
  it('waits, is due to the minute, and lapses unread', () => {
    expect(statusOf(waiting, startAtMs + 48 * hour - 1)).toBe('waiting');
    expect(statusOf(waiting, startAtMs + 48 * hour)).toBe('due');
    expect(statusOf(waiting, startAtMs + 28 * day)).toBe('due');
    expect(statusOf(waiting, startAtMs + 28 * day + 1)).toBe('lapsedUnread');
  });

  it('is clear once read, names who read it, and lapses', () => {
    expect(clear.test?.read).toEqual({ atMs: startAtMs + 49 * hour, by: 'Juno' });
    expect(statusOf(clear, startAtMs + 28 * day)).toBe('clear');
    expect(statusOf(clear, startAtMs + 28 * day + 1)).toBe('lapsed');
  });

  it('is not read as nothing before its time, and says when that is', () => {
    const early = judge(waiting, read('nothing'), startAtMs + 48 * hour - 1);
    expect(early).toEqual({
      ok: false,
      error: { kind: 'skinTestTooEarly', readableAtMs: startAtMs + 48 * hour },
    });
    const brought = judge(nothing, putOn({ seen: 'nothing', putOnAtMs: startAtMs }), startAtMs + 47 * hour);
    expect(brought).toMatchObject({ ok: false, error: { kind: 'skinTestTooEarly' } });
  });

  it('is not read as nothing once it lapsed', () => {
    expect(judge(waiting, read('nothing'), startAtMs + 29 * day)).toEqual({
      ok: false,
      error: { kind: 'permit', permit: { code: 'skinTestLapsed' } },
    });
  });

  it.each([
    ['waiting', waiting, startAtMs + hour],
    ['clear', clear, startAtMs + 5 * day],
    ['lapsed unread', waiting, startAtMs + 40 * day],
  ])('takes a reaction at any time: %s', (_name, before, atMs) => {
    expect(statusOf(keep(before, read('reaction'), atMs), atMs)).toBe('reaction');
  });

  it('stays a reaction for ever, until the reading is taken back by name', () => {
    const reacted = keep(waiting, read('reaction'), startAtMs + hour);
    expect(statusOf(reacted, startAtMs + 400 * day)).toBe('reaction');
    expect(judge(reacted, read('nothing'), startAtMs + 50 * hour)).toMatchObject({ ok: false });
    const back = keep(reacted, takeBack('reading'), startAtMs + 50 * hour, 'Juno');
    expect(statusOf(back, startAtMs + 50 * hour)).toBe('due');
    expect(back.test?.readingsTakenBack).toEqual([
      { atMs: startAtMs + 50 * hour, by: 'Juno', code: 'wrongTap', words: 'tapped for another' },
    ]);
  });

  it('takes nothing more once it is taken back whole', () => {
    const gone = keep(waiting, takeBack('test', 'cameOff'), startAtMs + hour);
    expect(gone.test?.takenBack).toMatchObject({ code: 'cameOff', by: 'Opal' });
    for (const raw of [read('reaction'), read('nothing'), takeBack('test')]) {
      expect(judge(gone, raw, startAtMs + 50 * hour)).toEqual({ ok: false, error: { kind: 'notNow' } });
    }
  });

  it('has no reading to take back before there is one', () => {
    expect(judge(waiting, takeBack('reading'), startAtMs + hour)).toMatchObject({ ok: false });
    expect(judge(clear, takeBack('reading'), startAtMs + 50 * hour)).toMatchObject({ ok: true });
  });

  it('has waited for the shorter time and lapses after the longer where the clock was set back', () => {
    const back = keep(waiting, correctClock(-10 * hour), startAtMs - 9 * hour);
    expect(statusOf(back, startAtMs + 48 * hour - 1)).toBe('waiting');
    expect(statusOf(back, startAtMs + 28 * day - 10 * hour)).toBe('due');
    expect(statusOf(back, startAtMs + 28 * day - 10 * hour + 1)).toBe('lapsedUnread');
  });

  it('is read anew where the reading lies ahead of the corrected clock', () => {
    const doubted = keep(clear, correctClock(-4 * hour), startAtMs + 48 * hour);
    expect(statusOf(doubted, startAtMs + 48 * hour)).toBe('due');
    const fine = keep(clear, correctClock(-4 * hour), startAtMs + 49 * hour);
    expect(statusOf(fine, startAtMs + 49 * hour)).toBe('clear');
  });

  it('waits so much longer where the clock was put ahead, and lapses no later for it', () => {
    const ahead = keep(waiting, putAhead(10 * hour), startAtMs + 20 * hour);
    expect(statusOf(ahead, startAtMs + 58 * hour - 1)).toBe('waiting');
    expect(statusOf(ahead, startAtMs + 58 * hour)).toBe('due');
    expect(statusOf(ahead, startAtMs + 28 * day)).toBe('due');
    expect(statusOf(ahead, startAtMs + 28 * day + 1)).toBe('lapsedUnread');
    expect(replay(ahead.log)).toEqual({ ok: true, value: ahead.test });
  });

  it('is not moved by a clock once it was read, nor by more than it has been on', () => {
    const notNow = { error: { kind: 'notNow' } };
    expect(judge(clear, putAhead(hour), startAtMs + 50 * hour)).toMatchObject(notNow);
    expect(judge(waiting, putAhead(20 * hour + 1), startAtMs + 20 * hour)).toMatchObject(notNow);
    expect(judge(waiting, putAhead(20 * hour), startAtMs + 20 * hour).ok).toBe(true);
  });

  it('refuses what is written by nobody, in no way known here, or before its newest entry', () => {
    expect(judge(waiting, read('reaction'), startAtMs + hour, ' ')).toMatchObject({
      error: { kind: 'nobody' },
    });
    expect(judge(waiting, read('reaction'), startAtMs - 1)).toMatchObject({
      error: { kind: 'clockWentBack' },
    });
    expect(judge(nothing, putOn({ ticket: '' }), startAtMs)).toMatchObject({ error: { kind: 'fields' } });
    expect(judge(waiting, putOn(), startAtMs + hour)).toMatchObject({ error: { kind: 'notNow' } });
  });

  it('keeps a reaction before anybody says how it was done', () => {
    const answers = { ticket: 'Q.F.', putOnAtMs: startAtMs, seen: 'reaction' };
    const kept = keep(nothing, { type: 'SKIN_TEST_PUT_ON', answers }, startAtMs + hour);
    expect(kept.test).toMatchObject({ method: 'unknown', site: 'unknown', line: '', seen: 'reaction' });
  });
});

describe('the stored log of a skin test', () => {
  const reacted = keep(clear, read('reaction'), startAtMs + 60 * hour);
  const whole = keep(
    keep(reacted, takeBack('reading'), startAtMs + 61 * hour),
    correctClock(-hour),
    startAtMs + 60 * hour,
  );

  it('is taken up to the same test', () => {
    const again = replay(JSON.parse(JSON.stringify(whole.log)) as unknown[]);
    expect(again).toEqual({ ok: true, value: whole.test });
  });

  it.each([
    ['nothing at all', [], 'empty'],
    ['a reading before anything was put on', clear.log.slice(1), 'saysOtherwise'],
    [
      'a reading before its time',
      [clear.log[0], { ...clear.log[1], atMs: startAtMs + 47 * hour }],
      'saysOtherwise',
    ],
    [
      'an entry older than the one before',
      [reacted.log[0], { ...reacted.log[2], atMs: 5 }],
      'wentBackInTime',
    ],
    ['a newer edition', [{ ...clear.log[0], v: 2 }], 'newerVersion'],
    ['an unknown kind', [{ ...clear.log[0], type: 'SKIN_TEST_GUESSED' }], 'unknownType'],
    [
      'an unknown answer',
      [{ ...clear.log[0], payload: { ...clear.log[0]?.payload, seen: 'safe' } }],
      'badPayload',
    ],
    ['no entry', ['x'], 'notAnEvent'],
  ])('is refused with %s', (_name, log, code) => {
    expect(replay(log)).toMatchObject({ ok: false, error: { code } });
  });
});
