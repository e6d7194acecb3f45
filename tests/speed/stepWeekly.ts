import { BLEACH_LOG_LOSS, findBleachReach, findEndsFrom } from '../../shared/chemistry/bleach';
import { accountFor, type HabitAccount } from '../../shared/heat/account';
import { stationAssumptions } from '../../shared/heat/assumptions';
import type { HairHistory } from '../../shared/heat/hairHistory';
import { type Account, accounts, pickOther } from '../../shared/units/account';

/** What one place has gone through in one account, as −ln of what is left and as minutes. */
export interface Stepped {
  readonly iron: number;
  readonly contact: number;
  readonly tryptophan: number;
  readonly helix: number;
  readonly matrix: number;
}

/** The part of one week, so many weeks ago, in which she did so and that hair was there. */
const partOf = (week: number, ageWeeks: number, { stoppedWeeksAgo, weeks }: HabitAccount): number =>
  Math.max(0, Math.min(week + 1, stoppedWeeksAgo + weeks, ageWeeks) - Math.max(week, stoppedWeeksAgo));

/**
 * The plain way to the same profile, to hold the closed form against: week by week backwards from today, what each
 * habit did to the hair that was there. Rates and the reach of bleach are the station's own: what is held against each
 * other are weeks and sums; the rates are checked under tests/evidence. It wastes nothing on purpose: rates are worked out once, no object is made in a
 * loop, and it ends with the hair's age.
 */
export function stepWeekly(
  { habits, bleaches, growth, lengthCm, pigment }: HairHistory,
  places: readonly number[],
): Readonly<Record<Account, readonly Stepped[]>> {
  const strand = { endsFromCm: findEndsFrom(lengthCm.typical), tipCm: lengthCm.typical };
  const stepOne = (account: Account): readonly Stepped[] => {
    const reckoned = habits.map((habit) => accountFor(habit, lengthCm, pigment, stationAssumptions, account));
    const reached = bleaches.flatMap((bleach) => findBleachReach(bleach, growth, strand, account) ?? []);
    const oldest = reckoned.reduce(
      (most, { stoppedWeeksAgo, weeks }) => Math.max(most, stoppedWeeksAgo + weeks),
      0,
    );
    return places.map((cm) => {
      const ageWeeks = cm / pickOther(growth, account);
      let helix = 0;
      let firstBleach = 0;
      for (const { fromCm, toCm, weeksAgo } of reached) {
        if (cm < fromCm || cm > toCm) continue;
        helix += BLEACH_LOG_LOSS;
        firstBleach = Math.max(firstBleach, weeksAgo);
      }
      let iron = 0;
      let contact = 0;
      let tryptophan = 0;
      let matrix = 0;
      const last = Math.min(ageWeeks, oldest);
      for (let week = 0; week < last; week += 1) {
        for (const habit of reckoned) {
          const part = partOf(week, ageWeeks, habit);
          if (part === 0) continue;
          const bleached = Math.min(part, Math.max(0, partOf(week, Math.min(ageWeeks, firstBleach), habit)));
          iron += part * habit.ironMin;
          contact += part * habit.contactMin;
          tryptophan += part * habit.tryptophan;
          helix += part * habit.helix;
          matrix += (part - bleached) * habit.matrixUntreated + bleached * habit.matrixBleached;
        }
      }
      return { iron, contact, tryptophan, helix, matrix };
    });
  };
  const [least, typical, most] = accounts.map(stepOne) as [
    readonly Stepped[],
    readonly Stepped[],
    readonly Stepped[],
  ];
  return { least, typical, most };
}
