import { makeRange, type Range } from '../units/range';
import { ASSUMED_SETTING_C } from './assumedHabit';
import type { HeatHabit } from './habit';

/**
 * By how much is hair cooler than the plate that glides over it? °C.
 * Assumed because a section of many fibres meets the plate on its outside and for seconds only. None at the least: the
 * published rates name the iron's temperature, so that a setting read as theirs is the careful end.
 */
export const ASSUMED_GAP_GLIDING_C: Range = makeRange(0, 20, 50);

/**
 * By how much is hair cooler than a tool that stays? °C.
 * Assumed because a hold of many seconds brings it nearer to the metal than a pass does.
 */
export const ASSUMED_GAP_HELD_C: Range = makeRange(0, 10, 30);

/** No hot tool cools hair below this, °C. Assumed because salons and bathrooms are about as warm. */
export const ASSUMED_ROOM_C = 20;

/**
 * How hot does the hair itself get? °C: the setting less the gap, never below the room.
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
