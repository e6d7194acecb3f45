import { describe, expect, it } from 'vitest';
import { findReadableAtMs, judgeSkinTest } from '../../../shared/judgement/skinTest';
import type { RawEvent } from '../../../shared/records/classify';
import type { ConsultationRecord } from '../../../shared/records/record';
import {
  ASSUMED_SKIN_TEST_LAPSES_DAYS,
  defaultSettings,
  type LocalProfile,
} from '../../../shared/records/settings';
import { andThen, day, hour, minute, type Told, tell, until } from '../records/telling';

/** 48 h: published, Cosmetics Europe 2023, one maker's protocol. 28 days: ASSUMED. */
const { profile } = defaultSettings;
const putOnAtMs = Date.UTC(2026, 2, 1, 9, 0);
const told = tell(until('SKIN_TEST_NOTED'));

const noted = (seen: string): Pick<ConsultationRecord, 'answers' | 'skinTest'> =>
  ({
    answers: { client: { service: 'lighten' } },
    skinTest: { method: 'makersMethod', site: 'behindEar', putOnAtMs, seen },
  }) as unknown as ConsultationRecord;
const judge = (seen: string, agoMs: number, by: LocalProfile = profile) =>
  judgeSkinTest(noted(seen), by, putOnAtMs + agoMs);

describe('a skin test', () => {
  it('is missing until one is put on', () =>
    expect(judgeSkinTest({ ...noted('nothing'), skinTest: null }, profile, putOnAtMs)).toBe('missing'));

  it('waits its 48 hours out to the millisecond, even when nothing was seen', () => {
    expect(profile.skinTestWaitH).toBe(48);
    expect(findReadableAtMs(putOnAtMs, profile)).toBe(putOnAtMs + 48 * hour);
    expect(judge('nothing', 48 * hour - 1)).toBe('waiting');
    expect(judge('nothing', 48 * hour)).toBe('clear');
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
    expect(judge('nothing', 0, { ...onlyColour, skinTestFor: ['lighten'] })).toBe('waiting');
    const unsaid = { answers: {}, skinTest: null };
    expect(judgeSkinTest(unsaid, { ...profile, skinTestFor: [] }, putOnAtMs)).toBe('missing');
  });

  it('takes the waiting time of the local profile, to the millisecond', () => {
    const open: LocalProfile = { ...profile, skinTestWaitH: 0.75 };
    expect(judge('nothing', 45 * minute - 1, open)).toBe('waiting');
    expect(judge('nothing', 45 * minute, open)).toBe('clear');
  });
});

describe('setting the tablet’s clock back', () => {
  it('takes a skin test to have waited for the shorter time', () => {
    const putOn = { putOnAtMs: told.atMs - 48 * hour, seen: 'notReadYet' };
    const noted = andThen(told, { type: 'SKIN_TEST_NOTED', answers: putOn });
    const back: RawEvent = { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(-day) } };
    const read = ({ record, atMs }: Told, afterMs = 0) =>
      judgeSkinTest(
        { ...record, skinTest: record.skinTest && { ...record.skinTest, seen: 'nothing' } },
        profile,
        atMs + afterMs,
      );
    expect(read(noted)).toBe('clear');
    const corrected = andThen(noted, back, -day);
    expect(read(corrected)).toBe('waiting');
    expect(read(corrected, day - 1001)).toBe('waiting');
    expect(read(corrected, day)).toBe('clear');
  });
});
