import { describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import {
  ASSUMED_READ_SOON_MS,
  ASSUMED_READ_TODAY_MS,
  findNotNow,
} from '../../../../src/screens/practice/whyNotPractise';
import type { StationState } from '../../../../src/station/stationState';
import { play, startAtMs, startSalon, storyUpTo } from '../../station/stationUnderTest';
import { makeTablet } from '../../storage/tablet';

const hourMs = 3_600_000;
const waitMs = salon.profile.skinTestWaitH * hourMs;

/** The station after the story up to this event, and what keeps practice back then. */
async function findAfter(type: string, more: Parameters<typeof play>[1] = []) {
  const under = await startSalon(makeTablet());
  const id = await play(under, storyUpTo(type));
  await play(under, more, id);
  return findNotNow(under.station.readState(), under.clock.atMs);
}

const empty = async (): Promise<StationState> => (await startSalon(makeTablet())).station.readState();

describe('practice', () => {
  it('is open where nobody is there', async () => {
    expect(findNotNow(await empty(), startAtMs)).toBeNull();
  });

  it.each([
    ['OPENED', 'atBar'],
    ['STRAND_STARTED', 'onHead'],
    ['BOWL_WEIGHED', 'onHead'],
    ['BOWL_APPLIED', 'onHead'],
    ['BOWL_RINSED', 'atBar'],
    ['PLAN_GIVEN', null],
  ] as const)('after %s is kept back by %s', async (type, why) => {
    expect(await findAfter(type)).toBe(why);
  });

  it('is open while somebody is parked', async () => {
    const park = { type: 'PARKED', answers: { untilAtMs: startAtMs + 48 * hourMs } } as const;
    expect(await findAfter('STEP_CONFIRMED', [{ afterMs: 1_000, by: 'Opal', raw: park }])).toBeNull();
  });

  it('waits for a skin test from an hour before it may be read until half a day after', async () => {
    const under = await startSalon(makeTablet());
    const answers = {
      ticket: 'A.K.',
      method: 'makersMethod',
      site: 'behindEar',
      line: '',
      putOnAtMs: startAtMs,
      seen: 'notReadYet',
    };
    const put = await under.station.putOnSkinTest('Opal', answers);
    if (!put.ok) throw new Error(JSON.stringify(put.error));
    const at = (ms: number) => findNotNow(under.station.readState(), startAtMs + ms);
    expect(at(waitMs - ASSUMED_READ_SOON_MS - 1)).toBeNull();
    expect(at(waitMs - ASSUMED_READ_SOON_MS)).toBe('skinTest');
    expect(at(waitMs)).toBe('skinTest');
    expect(at(waitMs + ASSUMED_READ_TODAY_MS)).toBe('skinTest');
    expect(at(waitMs + ASSUMED_READ_TODAY_MS + 1)).toBeNull();
    under.clock.atMs = startAtMs + waitMs;
    await under.station.changeSkinTest(put.value, 'Opal', {
      type: 'SKIN_TEST_READ',
      answers: { seen: 'nothing' },
    });
    expect(at(waitMs)).toBeNull();
  });

  it('is entered by the window that writes alone', async () => {
    expect(findNotNow({ ...(await empty()), mode: 'watching' }, startAtMs)).toBe('watching');
  });
});
