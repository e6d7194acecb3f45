import { expect, it } from 'vitest';
import { defaultSettings } from '../../../../shared/records/settings';
import { settlePractice } from '../../../../src/station/practice/createPractice';

it('takes the salon’s own limits, units and people along into practice, and nothing else', () => {
  const profile = { ...defaultSettings.profile, skinTestWaitH: 96, ceilingPercent: 6 };
  const staff = ['Inka'];
  const units = { ...defaultSettings.units, temperature: 'C' as const };
  const salon = { ...defaultSettings, profile, staff, units, keepMonths: 5 };
  expect(settlePractice(salon)).toEqual({ ...defaultSettings, profile, staff, units });
});
