import type { Result } from '../result';
import type { LiftCurve, LiftRefusal } from './liftCurve';
import type { LevelSeen } from './liftReadings';
import type { Saturation } from './saturation';

/** What one strand is asked: its readings in order of time, what it is to reach, when it is looked at, how long it is on. */
export interface LiftQuestion {
  readonly seen: readonly LevelSeen[];
  readonly target: number;
  readonly firstLookMin: number;
  readonly lookEveryMin: number;
  /** The strand's own time. Nothing is said of what comes after it. */
  readonly wholeMin: number;
}

/**
 * When does it get there? Minutes after the start, each a look's or the end of the strand's own time.
 * `expected`: the likely time and the earliest; `latestMin` null where it may as well not get there in time.
 * `hardly`: likely not in time, an early look may show it. `notInTime`: not even then. `none`: why nothing is said.
 */
export type LiftForecast =
  | {
      readonly kind: 'expected';
      readonly atMin: number;
      readonly earliestMin: number;
      readonly latestMin: number | null;
    }
  | { readonly kind: 'hardly'; readonly earliestMin: number }
  | { readonly kind: 'notInTime' }
  | { readonly kind: 'none'; readonly why: LiftRefusal | 'notAbove' | 'reached' };

/** After how many minutes does this curve pass that level? 0 where it begins above it, Infinity where it never does. */
export function findMinutesTo({ base, rise, rate }: Saturation, level: number): number {
  if (base >= level) return 0;
  const share = (level - base) / rise;
  return share < 1 ? -Math.log1p(-share) / rate : Number.POSITIVE_INFINITY;
}

/**
 * At which look is the level she wants expected?
 * Likely: the fitted curve. Earliest and latest: the outermost of all curves that pass each reading within half a level
 * (`liftBand.ts`). Rounded to the looks of this strand, never finer; the earliest down, the latest up; never
 * before the look after the last one, never beyond the strand's own time. It moves no clock: how long a strand may be
 * on is the maker's and hers to say. Nothing here knows whether lightener dries out, and then it stops lifting.
 * Checked in tests/shared/chemistry/liftForecast.test.ts.
 */
export function forecastLift(question: LiftQuestion, curve: Result<LiftCurve, LiftRefusal>): LiftForecast {
  const { seen, target, wholeMin } = question;
  // What is no reading has reached nothing.
  const isNoReading = !curve.ok && (curve.error === 'notALevel' || curve.error === 'beforeStart');
  if (isNoReading) return { kind: 'none', why: curve.error };
  const [first] = seen;
  if (first?.atMin === 0 && first.level >= target) return { kind: 'none', why: 'notAbove' };
  if (seen.some(({ level }) => level >= target)) return { kind: 'none', why: 'reached' };
  if (!curve.ok) return { kind: 'none', why: curve.error };
  const { likely, possible } = curve.value;
  const likelyMin = findMinutesTo(likely, target);
  const times = possible.map((each) => findMinutesTo(each, target));
  const earliest = Math.min(likelyMin, ...times);
  const latest = Math.max(likelyMin, ...times);
  if (earliest > wholeMin) return { kind: 'notInTime' };
  const earliestMin = roundToLook(question, earliest, Math.floor);
  if (likelyMin > wholeMin) return { kind: 'hardly', earliestMin };
  return {
    kind: 'expected',
    atMin: roundToLook(question, likelyMin, Math.round),
    earliestMin,
    latestMin: latest > wholeMin ? null : roundToLook(question, latest, Math.ceil),
  };
}

/** The look that this time is rounded to: one still to come, or the end. */
function roundToLook(
  { seen, firstLookMin, lookEveryMin, wholeMin }: LiftQuestion,
  atMin: number,
  round: (value: number) => number,
): number {
  const countLooks = (untilMin: number): number => (untilMin - firstLookMin) / lookEveryMin;
  const next = Math.floor(countLooks(seen.at(-1)?.atMin ?? 0)) + 1;
  const look = Math.max(round(countLooks(atMin)), next);
  return Math.min(firstLookMin + look * lookEveryMin, wholeMin);
}
