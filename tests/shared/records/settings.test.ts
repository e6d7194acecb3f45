import * as v from 'valibot';
import { expect, it } from 'vitest';
import { defaultSettings, settingsSchema } from '../../../shared/records/settings';

const takes = (skinTestWaitH: number): boolean =>
  v.is(settingsSchema, { ...defaultSettings, profile: { ...defaultSettings.profile, skinTestWaitH } });

it('a new station’s own settings are among those it takes', () =>
  expect(v.is(settingsSchema, defaultSettings)).toBe(true));

// Half an hour: makers’ open-application protocols (published: Cosmetics Europe 2023); four days: ASSUMED range.
it('a skin test waits for at least half an hour and at most four days', () => {
  expect(takes(0.5)).toBe(true);
  expect(takes(0.49)).toBe(false);
  expect(takes(0)).toBe(false);
  expect(takes(Number.NaN)).toBe(false);
  expect(takes(96)).toBe(true);
  expect(takes(96.1)).toBe(false);
});
