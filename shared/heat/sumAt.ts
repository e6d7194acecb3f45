import { BLEACH_LOG_LOSS, type BleachReach, findBleachReach, findEndsFrom } from '../chemistry/bleach';
import type { Account } from '../units/account';
import { accountFor, countWeeks, type HabitAccount } from './account';
import type { Assumptions } from './assumptions';
import type { HairHistory } from './hairHistory';

/** What one place has gone through in one account. Losses as −ln of what is left, so that they add up. */
export interface Sum {
  readonly iron: number;
  readonly wet: number;
  readonly damp: number;
  readonly dry: number;
  readonly contact: number;
  readonly bleaches: number;
  readonly tryptophan: number;
  readonly helix: number;
  readonly matrix: number;
  readonly isTryptophanBeyond: boolean;
  readonly isHelixBeyond: boolean;
}

/** One account of the history: what holds for every place, reckoned once. */
export interface Reckoning {
  readonly habits: readonly HabitAccount[];
  readonly bleaches: readonly BleachReach[];
}

export function reckon(history: HairHistory, assumptions: Assumptions, account: Account): Reckoning {
  const { habits, bleaches, growth, lengthCm, pigment } = history;
  const strand = { endsFromCm: findEndsFrom(lengthCm.typical), tipCm: lengthCm.typical };
  return {
    habits: habits
      .map((habit) => accountFor(habit, lengthCm, pigment, assumptions, account))
      .filter(({ ironMin }) => ironMin > 0),
    bleaches: bleaches
      .map((bleach) => findBleachReach(bleach, growth, strand, account))
      .filter((reach) => reach !== null),
  };
}

/** What the hair at this place has gone through. Plain loops and no objects inside: it runs for every centimetre. */
export function sumAt({ habits, bleaches }: Reckoning, cm: number, ageWeeks: number): Sum {
  let count = 0;
  let firstBleachWeeksAgo = 0;
  for (const { fromCm, toCm, weeksAgo } of bleaches) {
    if (cm < fromCm || cm > toCm) continue;
    count += 1;
    firstBleachWeeksAgo = Math.max(firstBleachWeeksAgo, weeksAgo);
  }
  let iron = 0;
  let wet = 0;
  let damp = 0;
  let dry = 0;
  let contact = 0;
  let tryptophan = 0;
  let helix = count * BLEACH_LOG_LOSS;
  let matrix = 0;
  let isTryptophanBeyond = false;
  let isHelixBeyond = false;
  for (const habit of habits) {
    const weeks = countWeeks(habit, ageWeeks);
    if (weeks === 0) continue;
    const weeksBleached = countWeeks(habit, Math.min(ageWeeks, firstBleachWeeksAgo));
    iron += weeks * habit.ironMin;
    wet += weeks * habit.wetMin;
    damp += weeks * habit.dampMin;
    dry += weeks * habit.dryMin;
    contact += weeks * habit.contactMin;
    tryptophan += weeks * habit.tryptophan;
    helix += weeks * habit.helix;
    matrix += weeks * habit.matrixUntreated + weeksBleached * (habit.matrixBleached - habit.matrixUntreated);
    isTryptophanBeyond ||= habit.isTryptophanBeyond;
    isHelixBeyond ||= habit.isHelixBeyond;
  }
  return {
    iron,
    wet,
    damp,
    dry,
    contact,
    bleaches: count,
    tryptophan,
    helix,
    matrix,
    isTryptophanBeyond,
    isHelixBeyond,
  };
}
