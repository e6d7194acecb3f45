import { computeIronMinutes, hasShortPasses, sumExposure } from '../../../shared/heat/exposure';
import type { HeatHabit } from '../../../shared/heat/habit';
import { listThresholdsMet } from '../../../shared/heat/thresholds';
import type { HabitAnswers } from '../../../shared/records/forms/hotTools';
import { brand } from '../../../shared/units/brand';
import { formatQuantity, formatRange, formatTemperature } from '../../../shared/units/format';
import { roundTo, type UnitSettings } from '../../../shared/units/quantity';
import { add, exactly, type Range } from '../../../shared/units/range';
import { toWeeks } from '../../../shared/units/time';
import type { HairThresholdId } from '../../words/hairThreshold';
import type { Words } from '../../words/words';

/** One habit as the dose is reckoned from it. */
const readHabit = (habit: HabitAnswers): HeatHabit => ({
  ...habit,
  weeks: habit.forMonths === 'unknown' ? 'unknown' : toWeeks(habit.forMonths),
});

const roundAll = ({ low, typical, high }: Range, digits: number): Range => ({
  low: roundTo(low, digits),
  typical: roundTo(typical, digits),
  high: roundTo(high, digits),
});

/** What heat has done, in words: the likely figure first, its range where she did not know. */
export interface HeatSaid {
  readonly ironMinutes: string;
  readonly boils: string;
  readonly byWetness: readonly string[];
  readonly tools: readonly { readonly title: string; readonly reached: readonly HairThresholdId[] }[];
}

/** What the setting does to hair; that the iron itself stays hot is said elsewhere. */
export const listHairThresholds = (
  settingC: number | 'unknown',
  wetness: HeatHabit['wetness'],
  pace: 'short' | 'unknown' = 'unknown',
): readonly HairThresholdId[] =>
  listThresholdsMet(settingC === 'unknown' ? 'unknown' : brand(settingC), wetness, pace).filter(
    (id): id is HairThresholdId => id !== 'staysHotAfterUse',
  );

/** What do the told habits come to? Rounded for reading: whole minutes, tenths of a boil equivalent. */
export function sayHeat(habits: readonly HabitAnswers[], words: Words, units: UnitSettings): HeatSaid {
  const told = habits.map(readHabit);
  const { wet, damp, dry, boilEquivalents } = sumExposure(told);
  const say = (range: Range, quantity: 'minutes' | 'count') => {
    const likely = formatQuantity(range.typical, quantity, units, words.locale);
    if (range.low === range.high) return likely;
    return words.heat.likely(likely, formatRange(range, quantity, units, words.locale));
  };
  const total = told.map(computeIronMinutes).reduce<Range>(add, exactly(0));
  const parts = [
    [words.heat.wet, wet],
    [words.heat.damp, damp],
    [words.heat.dry, dry],
  ] as const;
  return {
    ironMinutes: say(roundAll(total, 0), 'minutes'),
    boils: say(roundAll(boilEquivalents, 1), 'count'),
    byWetness: parts
      .filter(([, minutes]) => minutes.high > 0)
      .map(([name, minutes]) => words.heat.part(name, say(roundAll(minutes, 0), 'minutes'))),
    tools: told.map(({ tool, settingC, wetness, ...pace }) => ({
      title: words.heat.toolAt(
        words.asked.hotTools.habits.rows.tool.options[tool],
        settingC === 'unknown' ? null : formatTemperature(brand(settingC), units, words.locale),
      ),
      reached: listHairThresholds(settingC, wetness, hasShortPasses({ tool, ...pace }) ? 'short' : 'unknown'),
    })),
  };
}
