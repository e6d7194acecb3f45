import { describe, expect, it } from 'vitest';
import type { RawEvent } from '../../../shared/records/classify';
import { andThen, find, minute, ofType, tell, tryRaw, until } from './telling';

const running = andThen(tell(until('STRAND_STARTED')), find(ofType('STRAND_STARTED', 'lengths')));
const off = (why?: string): RawEvent => ({
  type: 'STRAND_TAKEN_OFF',
  answers: { zone: 'lengths', ...(why === undefined ? {} : { why }) },
});
const tryAt = (raw: RawEvent, afterMs: number) => tryRaw(running, raw, running.atMs + afterMs);
const tooEarly = { ok: false, error: { kind: 'fields', fields: [{ path: 'why', code: 'timeNotUp' }] } };

describe('why a strand comes off', () => {
  it('goes without saying once its clock is over, and not a millisecond before', () => {
    expect(tryAt(off(), 25 * minute)).toMatchObject({ ok: true, value: { payload: { why: 'timeIsUp' } } });
    expect(tryAt(off(), 25 * minute - 1)).toEqual(tooEarly);
    expect(tryAt(off('timeIsUp'), 25 * minute - 1)).toEqual(tooEarly);
  });

  it('is said before that, and may be said after it', () => {
    for (const why of ['levelReached', 'looksWeak', 'clientLeaves']) {
      expect(tryAt(off(why), minute).ok).toBe(true);
      expect(tryAt(off(why), 26 * minute).ok).toBe(true);
    }
  });
});
