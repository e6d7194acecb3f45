import { salon } from '../../../../seeds/salon';
import { classifySkinTest, type RawSkinTestEvent } from '../../../../shared/records/skinTest/classify';
import type { SkinTestEvent } from '../../../../shared/records/skinTest/event';
import { advanceSkinTest, type SkinTest } from '../../../../shared/records/skinTest/skinTest';

export const hour = 3_600_000;
export const day = 24 * hour;
export const startAtMs = Date.UTC(2026, 2, 3, 9, 0);

/** A skin test so far, with its log. */
export interface Kept {
  readonly test: SkinTest | null;
  readonly log: readonly SkinTestEvent[];
}

export const nothing: Kept = { test: null, log: [] };

/** What the judge says of one more tap at this moment. */
export const judge = (
  { test }: Kept,
  raw: RawSkinTestEvent,
  atMs: number,
  by = 'Opal',
  visit: string | null = null,
) => classifySkinTest(test, raw, { settings: salon, settingsId: 0, atMs, by, visit });

/** One more tap; a refused one breaks the test off. */
export function keep(before: Kept, raw: RawSkinTestEvent, atMs: number, by = 'Opal', id = 'test1'): Kept {
  const event = judge(before, raw, atMs, by);
  if (!event.ok) throw new Error(`${raw.type} refused: ${JSON.stringify(event.error)}`);
  return { test: advanceSkinTest(id, before.test, event.value), log: [...before.log, event.value] };
}

export const putOn = (answers: RawSkinTestEvent['answers'] = {}): RawSkinTestEvent => ({
  type: 'SKIN_TEST_PUT_ON',
  answers: {
    ticket: 'Q.F.',
    method: 'makersMethod',
    site: 'behindEar',
    line: 'Sandbar cream',
    putOnAtMs: startAtMs,
    seen: 'notReadYet',
    ...answers,
  },
});

export const read = (seen: string): RawSkinTestEvent => ({ type: 'SKIN_TEST_READ', answers: { seen } });

export const takeBack = (what: string, code = 'wrongTap'): RawSkinTestEvent => ({
  type: 'SKIN_TEST_TAKEN_BACK',
  answers: { what, code, words: 'tapped for another' },
});

export const correctClock = (shiftMs: number): RawSkinTestEvent => ({
  type: 'CLOCK_CORRECTED',
  answers: { shiftMs: String(shiftMs) },
});

export const putAhead = (aheadMs: number): RawSkinTestEvent => ({
  type: 'CLOCK_PUT_AHEAD',
  answers: { aheadMs: String(aheadMs) },
});

/** Put on at the start. */
export const waiting = keep(nothing, putOn(), startAtMs);
export const clear = keep(waiting, read('nothing'), startAtMs + 49 * hour, 'Juno');
