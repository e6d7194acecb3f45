import { makeRange, type Range } from '../units/range';
import { ASSUMED_SETTING_C } from './assumedHabit';
import type { HeatHabit } from './habit';

/**
 * By how much is hair cooler under a plate that glides than under the irons of the papers? °C.
 * Assumed because those stayed on for minutes and are told by the temperature of the iron, while a pass is over in
 * seconds and meets a section of many fibres on its outside. None at the least: a setting read as theirs is the careful
 * end.
 */
export const ASSUMED_GAP_GLIDING_C: Range = makeRange(0, 20, 50);

/**
 * By how much is hair cooler under a tool that stays than under the irons of the papers? °C.
 * Assumed because a hold is what they did; a thick coil, or seconds instead of minutes, may keep it a little cooler.
 */
export const ASSUMED_GAP_HELD_C: Range = makeRange(0, 0, 20);

/** No hot tool cools hair below this, °C. Assumed because salons and bathrooms are about as warm. */
export const ASSUMED_ROOM_C = 20;

/**
 * How hot does the hair itself get? °C: the setting less the gap, never below the room. Wet hair too: that it stays near
 * the boil while water is in it is left out, and what water does is in the wet multiplier.
 * "Don't know", or a figure that is none, is the wide ASSUMED_SETTING_C. Low is the coolest hair.
 * Checked by tests/shared/heat/doses.test.ts.
 */
export function computeHairTemperature(settingC: HeatHabit['settingC'], gapC: Range): Range {
  const isTold = settingC !== 'unknown' && Number.isFinite(settingC);
  const setting = isTold ? { low: settingC, typical: settingC, high: settingC } : ASSUMED_SETTING_C;
  const lessBy = (from: number, by: number) => Math.max(from - by, Math.min(from, ASSUMED_ROOM_C), 0);
  return makeRange(
    lessBy(setting.low, gapC.high),
    lessBy(setting.typical, gapC.typical),
    lessBy(setting.high, gapC.low),
  );
}
