import { describe, expect, it } from 'vitest';
import { viewMix } from '../../../../src/screens/mix/viewMix';
import { playUntil, settings, tap } from '../playStory';

const minute = 60_000;
const day = 24 * 60 * minute;
const view = ({ consultation, atMs }: ReturnType<typeof playUntil>, afterMs = 0) =>
  viewMix(consultation, settings, atMs + afterMs);

describe('at the scale', () => {
  const decided = playUntil('DECIDED');

  it('opens the lengths within what was tested, and says why not the ends', () => {
    const { zones, isAnyOpen, mayFinish } = view(decided);
    expect(zones.map(({ zone, bowlState }) => [zone, bowlState])).toEqual([
      ['lengths', 'none'],
      ['ends', 'none'],
    ]);
    expect(zones[0]?.permit).toMatchObject({
      ok: true,
      value: { maxDeveloperPercent: 3, maxMinutes: 25, tested: { line: 'Sandbar powder', ratio: 2 } },
    });
    expect(zones[1]?.permit).toEqual({ ok: false, error: { code: 'endsLeftOut' } });
    expect({ isAnyOpen, mayFinish }).toEqual({ isAnyOpen: true, mayFinish: false });
  });

  it('closes again when the outcome has lapsed while nobody looked', () => {
    expect(view(decided, 29 * day).isAnyOpen).toBe(false);
  });

  it('finishes only once every bowl is rinsed or thrown', () => {
    expect(view(playUntil('BOWL_WEIGHED')).mayFinish).toBe(false);
    expect(view(playUntil('BOWL_RINSED')).mayFinish).toBe(true);
  });

  it('says that the skin test stands in the way', () => {
    const putOnAtMs = decided.atMs - 60 * minute;
    const answers = { putOnAtMs, seen: 'notReadYet', site: 'behindEar', method: 'makersMethod' };
    const waiting = tap(decided, minute, { type: 'SKIN_TEST_NOTED', answers });
    expect(view(waiting)).toMatchObject({ isAnyOpen: false, isSkinTestOpen: true });
    expect(view(waiting).zones[0]?.permit).toEqual({ ok: false, error: { code: 'skinTestWaiting' } });
    expect(view(decided).isSkinTestOpen).toBe(false);
  });
});
