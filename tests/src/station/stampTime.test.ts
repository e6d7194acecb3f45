import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { ASSUMED_UNNOTICED_MS, stampTime } from '../../../src/station/stampTime';
import { makeTablet } from '../storage/tablet';
import { play, startSalon } from './stationUnderTest';

describe('a clock that the network set back a little', () => {
  it('writes no tap before the one that is written already', () => {
    expect(stampTime(999, 1_000)).toBe(1_000);
    expect(stampTime(1_000, 1_000)).toBe(1_000);
    expect(stampTime(1_001, 1_000)).toBe(1_001);
  });

  it('is taken as it is once it fell further behind', () => {
    expect(stampTime(1_000, 1_000 + ASSUMED_UNNOTICED_MS)).toBe(1_000 + ASSUMED_UNNOTICED_MS);
    expect(stampTime(1_000, 1_001 + ASSUMED_UNNOTICED_MS)).toBe(1_000);
  });

  it('refuses no rinse and no reaction, and a clock set back by more is asked about', async () => {
    const under = await startSalon(makeTablet());
    const until = endsIronedWet.steps.findIndex(({ raw }) => raw.type === 'BOWL_RINSED');
    const id = await play(under, endsIronedWet.steps.slice(0, until));
    const newest = () => under.station.readState().open.get(id)?.record.newestAtMs ?? 0;
    const rightAtMs = newest();
    under.clock.atMs = rightAtMs - ASSUMED_UNNOTICED_MS - 1;
    expect(await under.station.submit(id, 'Opal', { type: 'REACTION_SUSPECTED' })).toMatchObject({
      ok: false,
    });
    under.clock.atMs = rightAtMs - 1;
    expect(await under.station.submit(id, 'Opal', { type: 'REACTION_SUSPECTED' })).toMatchObject({
      ok: true,
    });
    const rinse = { type: 'BOWL_RINSED', answers: { zone: 'lengths' } } as const;
    expect(await under.station.submit(id, 'Opal', rinse)).toMatchObject({ ok: true });
    expect(newest()).toBe(rightAtMs);
  });
});
