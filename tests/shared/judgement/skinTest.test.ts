import { describe, expect, it } from 'vitest';
import { findReadableAtMs, judgeSkinTest } from '../../../shared/judgement/skinTest';
import type { RawEvent } from '../../../shared/records/classify';
import type { ConsultationRecord } from '../../../shared/records/record';
import {
  ASSUMED_SKIN_TEST_LAPSES_DAYS,
  defaultSettings,
  type LocalProfile,
} from '../../../shared/records/settings';
import { andThen, day, hour, minute, type Told, tell, tryRaw, until } from '../records/telling';

/** 48 h: published, Cosmetics Europe 2023, one maker's protocol. 28 days: ASSUMED. */
const { profile } = defaultSettings;
const putOnAtMs = Date.UTC(2026, 2, 1, 9, 0);
const told = tell(until('SKIN_TEST_NOTED'));

const noted = (
  seen: string,
  readAtMs = putOnAtMs + 48 * hour,
): Pick<ConsultationRecord, 'answers' | 'skinTest'> =>
  ({
    answers: { client: { service: 'lighten' } },
    skinTest: { method: 'makersMethod', site: 'behindEar', putOnAtMs, seen, readAtMs, olderByMs: 0 },
  }) as unknown as ConsultationRecord;
const judge = (seen: string, agoMs: number, by: LocalProfile = profile) =>
  judgeSkinTest(noted(seen), by, putOnAtMs + agoMs);
/** Read so long after it was put on, and judged two weeks later. */
const readAfter = (waitMs: number, by: LocalProfile = profile) =>
  judgeSkinTest(noted('nothing', putOnAtMs + waitMs), by, putOnAtMs + 14 * day);

describe('a skin test', () => {
  it('is missing until one is put on', () =>
    expect(judgeSkinTest({ ...noted('nothing'), skinTest: null }, profile, putOnAtMs)).toBe('missing'));

  it('is clear only when it was read after its whole 48 hours, to the millisecond', () => {
    expect(profile.skinTestWaitH).toBe(48);
    expect(findReadableAtMs({ putOnAtMs }, profile)).toBe(putOnAtMs + 48 * hour);
    expect(readAfter(48 * hour - 1)).toBe('waiting');
    expect(readAfter(48 * hour)).toBe('clear');
  });

  it('goes on waiting while nobody has read it', () => {
    expect(judge('notReadYet', 48 * hour)).toBe('waiting');
    expect(judge('notReadYet', 28 * day)).toBe('waiting');
  });

  it('is clear for exactly 28 days from when it was put on, then lapsed, read or not (ASSUMED)', () => {
    expect(profile.skinTestLapsesDays).toBe(ASSUMED_SKIN_TEST_LAPSES_DAYS);
    expect(judge('nothing', 28 * day)).toBe('clear');
    expect(judge('nothing', 28 * day + 1)).toBe('lapsed');
    expect(judge('notReadYet', 28 * day + 1)).toBe('lapsed');
  });

  it('stays positive for ever, before its time and after it, and for a service that asks for none', () => {
    for (const agoMs of [0, 48 * hour, 400 * day]) expect(judge('reaction', agoMs)).toBe('positive');
    expect(judge('reaction', hour, { ...profile, skinTestFor: [] })).toBe('positive');
  });

  it('is not needed for a service the local profile leaves out, and for every other it is', () => {
    const onlyColour: LocalProfile = { ...profile, skinTestFor: ['depositOnly', 'gloss', 'tone'] };
    expect(judge('nothing', 0, onlyColour)).toBe('notNeeded');
    expect(judge('notReadYet', 0, { ...onlyColour, skinTestFor: ['lighten'] })).toBe('waiting');
    const unsaid = { answers: {}, skinTest: null };
    expect(judgeSkinTest(unsaid, { ...profile, skinTestFor: [] }, putOnAtMs)).toBe('missing');
  });

  it('takes the waiting time of the local profile, to the millisecond', () => {
    const open: LocalProfile = { ...profile, skinTestWaitH: 0.75 };
    expect(readAfter(45 * minute - 1, open)).toBe('waiting');
    expect(readAfter(45 * minute, open)).toBe('clear');
    expect(readAfter(45 * minute, profile)).toBe('waiting');
  });
});

describe('setting the tablet’s clock back', () => {
  const shift = (ms: number): RawEvent => ({ type: 'CLOCK_CORRECTED', answers: { shiftMs: String(ms) } });
  const note = (from: Told, putOnAtMs: number, seen: string, afterMs = 0): Told =>
    andThen(from, { type: 'SKIN_TEST_NOTED', answers: { putOnAtMs, seen } }, afterMs);
  const read = ({ record, atMs }: Told) => judgeSkinTest(record, profile, atMs);

  it('takes a skin test to have waited for the shorter time', () => {
    const putOnAtMs = told.atMs - 24 * hour;
    const corrected = andThen(note(told, putOnAtMs, 'notReadYet'), shift(-day), -day);
    const early = tryRaw(
      corrected,
      { type: 'SKIN_TEST_NOTED', answers: { putOnAtMs, seen: 'nothing' } },
      putOnAtMs + 48 * hour - 1,
    );
    expect(early).toMatchObject({ error: { fields: [{ path: 'seen', code: 'readTooEarly' }] } });
    expect(read(note(corrected, putOnAtMs, 'nothing', 48 * hour))).toBe('clear');
  });

  it('voids a reading that was stamped ahead of the corrected clock', () => {
    const putOnAtMs = told.atMs;
    const ahead = note(note(told, putOnAtMs, 'notReadYet'), putOnAtMs, 'nothing', 3 * day);
    expect(read(ahead)).toBe('clear');
    const corrected = andThen(ahead, shift(-3 * day), -3 * day + hour);
    expect(corrected.record.skinTest?.seen).toBe('notReadYet');
    expect(read({ ...corrected, atMs: putOnAtMs + 5 * day })).toBe('waiting');
  });

  it('takes a skin test to lapse after the longer time, however often', () => {
    const putOnAtMs = told.atMs - 48 * hour;
    const once = andThen(note(told, putOnAtMs, 'nothing'), shift(-9 * day), 1000);
    const twice = andThen(once, shift(-9 * day), 1000);
    const at = (agoMs: number) => read({ ...twice, atMs: putOnAtMs + agoMs });
    expect(at(10 * day)).toBe('clear');
    expect(at(10 * day + 1)).toBe('lapsed');
  });
});
