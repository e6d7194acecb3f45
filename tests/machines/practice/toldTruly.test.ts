import { expect, it } from 'vitest';
import { isToldTruly, showAt } from '../../../machines/practice/toldTruly';
import type { Answers } from '../../../shared/records/forms/asked';
import { defaultSettings } from '../../../shared/records/settings';

const habit = {
  tool: 'flatIron',
  wetness: 'wet',
  daysAWeek: 3,
  forMonths: 24,
  settingC: 200,
  secondsASection: 60,
  plateWidthCm: 2.54,
  passes: 'unknown',
} as const;
const other = { ...habit, tool: 'wand' } as const;
const told = (hotTools: Answers['hotTools']): Answers => ({ hotTools: { ...hotTools } });
const isTrue = told({ habits: [habit, other], history: ['perm', 'gloss'], bleaches: 2 });
const check = (hotTools: Answers['hotTools'], path: string) => isToldTruly(told(hotTools), isTrue, path);

it('takes lists in any order, and no list that is shorter, longer or another', () => {
  expect(check({ history: ['gloss', 'perm'] }, 'hotTools.history')).toBe(true);
  expect(check({ history: ['perm'] }, 'hotTools.history')).toBe(false);
  expect(check({ history: ['perm', 'relaxer'] }, 'hotTools.history')).toBe(false);
  expect(check({ history: ['perm', 'gloss', 'relaxer'] }, 'hotTools.history')).toBe(false);
  expect(check({ habits: [other, habit] }, 'hotTools.habits')).toBe(true);
  expect(check({ habits: [habit] }, 'hotTools.habits')).toBe(false);
});

it('takes a temperature within a few degrees, a figure within a twentieth, and "don’t know" for none', () => {
  const with_ = (settingC: number | 'unknown') => ({ habits: [{ ...habit, settingC }, other] });
  expect(check(with_(204.4), 'hotTools.habits')).toBe(true);
  expect(check(with_(206), 'hotTools.habits.0.settingC')).toBe(true);
  expect(check(with_(206.5), 'hotTools.habits.0.settingC')).toBe(false);
  expect(check(with_(193), 'hotTools.habits')).toBe(false);
  expect(check(with_('unknown'), 'hotTools.habits')).toBe(false);
  expect(check({ bleaches: 3 }, 'hotTools.bleaches')).toBe(false);
  expect(check({}, 'hotTools.bleaches')).toBe(false);
});

it('takes what neither asks as told truly', () => {
  expect(check({}, 'hotTools.relaxedWithinTwoWeeks')).toBe(true);
  expect(check({ relaxedWithinTwoWeeks: 'yes' }, 'hotTools.relaxedWithinTwoWeeks')).toBe(false);
});

it('shows what stands there as it would stand in the field', () => {
  expect(showAt(isTrue, 'hotTools.habits.0.settingC', defaultSettings.units)).toBe('392');
  expect(showAt(isTrue, 'hotTools.history', defaultSettings.units)).toEqual(['perm', 'gloss']);
  expect(showAt(isTrue, 'hotTools.smoke', defaultSettings.units)).toBeNull();
  expect(showAt(isTrue, 'strandTest.zone', defaultSettings.units)).toBeNull();
});
