import { brand } from '../units/brand';
import type { Celsius } from '../units/temperature';
import { type HeatHabit, isIron } from './habit';
import type { HairHistory } from './hairHistory';
import { hasShortPasses } from './passes';
import { type HeatThresholdId, heatThresholds, listThresholdsMet } from './thresholds';

/** For what a tool was set hot enough, and on which hair: from here outwards, cm from the scalp. */
export interface Reached {
  readonly id: HeatThresholdId;
  readonly fromCm: number;
  readonly mark: string;
  /** Some setting that was told reaches it; else only one that nobody knows. */
  readonly isTold: boolean;
}

/** Hair that grew after she had stopped met nothing of it. Slow growth, and unknown as still going on: the careful side. */
const findFrom = ({ stoppedWeeksAgo }: HeatHabit, { growth }: HairHistory): number =>
  stoppedWeeksAgo === 'unknown' ? 0 : stoppedWeeksAgo * growth.low;

/**
 * For which thresholds was a tool set hot enough on this head, and from where outwards? Coolest first, each once.
 * By the setting, which is hotter than the hair. A dryer reaches none: its air is far cooler than what it is set to
 * (published: Lee et al., Ann. Dermatol. 23:455–462, 2011: 47 to 95 °C at the hair).
 * Checked by tests/shared/heat/reached.test.ts.
 */
export function listReached(history: HairHistory, boilsAt: Celsius): readonly Reached[] {
  const met = history.habits
    .filter(({ tool }) => isIron(tool))
    .map((habit) => ({
      fromCm: findFrom(habit, history),
      isTold: habit.settingC !== 'unknown',
      ids: listThresholdsMet(
        habit.settingC === 'unknown' ? 'unknown' : brand<Celsius>(habit.settingC),
        habit.wetness,
        hasShortPasses(habit) ? 'short' : 'unknown',
        boilsAt,
      ),
    }));
  return heatThresholds.flatMap(({ id, mark }) => {
    const by = met.filter(({ ids }) => ids.includes(id));
    if (by.length === 0) return [];
    const fromCm = Math.min(...by.map((each) => each.fromCm));
    return [{ id, mark, fromCm, isTold: by.some(({ isTold }) => isTold) }];
  });
}
