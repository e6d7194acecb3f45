import { expect, it } from 'vitest';
import { settleLesson } from '../../../machines/practice/practiceRoom';
import { defaultSettings, type LocalProfile } from '../../../shared/records/settings';
import { findLesson } from './findLesson';

const lesson = findLesson('safeClient');
const usual = defaultSettings.profile;
const settle = (profile: Partial<LocalProfile>) =>
  settleLesson(lesson, { ...defaultSettings, profile: { ...usual, ...profile } }).profile;

it('keeps each rule of a house that is stricter', () => {
  const strict: LocalProfile = {
    ageLine: 18,
    skinTestWaitH: 72,
    skinTestLapsesDays: 7,
    skinTestFor: usual.skinTestFor,
    ceilingPercent: 6,
    isAnyReactionAbsolute: true,
  };
  expect(settle(strict)).toEqual(strict);
});

it('takes over none that is laxer', () => {
  expect(
    settle({ ageLine: null, skinTestWaitH: 1, skinTestLapsesDays: 300, skinTestFor: ['lighten'] }),
  ).toEqual({ ...usual, skinTestFor: expect.arrayContaining(usual.skinTestFor) });
  expect(settle({ ageLine: 12 }).ageLine).toBe(usual.ageLine);
});

it('takes units from the house, and the place and the shelf from the lesson', () => {
  const house = {
    ...defaultSettings,
    units: { temperature: 'C', mass: 'oz', length: 'cm' } as const,
    altitudeM: 9,
  };
  const settled = settleLesson(findLesson('highAltitude'), house);
  expect(settled.units).toEqual(house.units);
  expect(settled.altitudeM).toBe(2400);
  expect(settled.shelf.map(({ name }) => name)).toContain('Sandbar powder');
});
