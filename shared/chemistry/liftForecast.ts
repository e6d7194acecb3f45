import type { Result } from '../result';
import { listPossibleCurves } from './liftBand';
import type { LiftCurve, LiftRefusal } from './liftCurve';
import type { LevelSeen } from './liftReadings';
import type { Saturation } from './saturation';

/** What one strand is asked: its readings in order of time, what it is to reach, when it is looked at, how long it is on. */
export interface LiftQuestion {
  readonly seen: readonly LevelSeen[];
  readonly target: number;
  /** When it was last looked at, also where nobody could read the level; 0 where nobody looked. */
  readonly lastLookMin: number;
  readonly firstLookMin: number;
  readonly lookEveryMin: number;
  /** The strand's own time. Nothing is said of what comes after it. */
  readonly wholeMin: number;
}

/**
 * When does it get there? Minutes after the start, each a look's or the end of the strand's own time.
 * `expected`: the likely time and the earliest; `latestMin` null where it may as well not get there in time.
 * `perhapsNot`: perhaps not in time, an early look may show it. `notInTime`: not even then. `earliestMin` null where that
 * look is past: it may be there already. `none`: why nothing is said.
 */
export type LiftForecast =
  | {
      readonly kind: 'expected';
      readonly atMin: number;
      readonly earliestMin: number | null;
      readonly latestMin: number | null;
    }
  | { readonly kind: 'perhapsNot'; readonly earliestMin: number | null }
  | { readonly kind: 'notInTime' }
  | { readonly kind: 'none'; readonly why: LiftRefusal | 'notAbove' | 'reached' };

/**
 * That it will not get there is said only if it could not even were each reading off by so many levels. Assumed because
 * somebody who believes it mixes stronger: by half a level alone, about half of such sentences were wrong on readings with
 * half a level of noise, and they were one in ten (tests/evidence/liftCurveNoise.test.ts).
 */
const ASSUMED_DOUBTED_GRAIN = 0.75;

/** After how many minutes does this curve pass that level? 0 where it begins above it, Infinity where it never does. */
export function findMinutesTo({ base, rise, rate }: Saturation, level: number): number {
  if (base >= level) return 0;
  const share = (level - base) / rise;
  return share < 1 ? -Math.log1p(-share) / rate : Number.POSITIVE_INFINITY;
}

/**
 * At which look is the level she wants expected?
 * Earliest and latest: the outermost of all curves that pass each reading within half a level (`liftBand.ts`). Likely: the
 * later of the fitted curve and of the middle one of those; either alone is early, see
 * tests/evidence/liftCurveNoise.test.ts. Rounded to the looks of this strand, never finer: up to the look that can show
 * it, only the earliest down; never before the look after the last one, never beyond the strand's own time. It moves no
 * clock: how long a strand may be on is the maker's and hers to say. Nothing here knows whether lightener dries out, and
 * then it stops lifting. Checked in tests/shared/chemistry/liftForecast.test.ts.
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
  const { earliest, likely, latest } = findTimes(curve.value, target);
  if (earliest > wholeMin && isOutOfReach(question)) return { kind: 'notInTime' };
  const earliestMin = roundToLook(question, earliest, Math.floor);
  if (likely > wholeMin) return { kind: 'perhapsNot', earliestMin };
  return {
    kind: 'expected',
    atMin: roundToLook(question, likely, Math.ceil),
    earliestMin,
    latestMin: latest > wholeMin ? null : roundToLook(question, latest, Math.ceil),
  };
}

const isOutOfReach = ({ seen, target, wholeMin }: LiftQuestion): boolean =>
  listPossibleCurves(seen, ASSUMED_DOUBTED_GRAIN).every((curve) => findMinutesTo(curve, target) > wholeMin);

/** In minutes after the start, before anything is rounded; Infinity where a curve never gets there. */
export function findTimes(
  { likely, possible }: LiftCurve,
  target: number,
): { readonly earliest: number; readonly likely: number; readonly latest: number } {
  const fitted = findMinutesTo(likely, target);
  const times = possible.map((each) => findMinutesTo(each, target)).sort((one, other) => one - other);
  const middle = times[Math.floor(times.length / 2)] ?? fitted;
  return {
    earliest: Math.min(fitted, ...times),
    likely: Math.max(fitted, middle),
    latest: Math.max(fitted, ...times),
  };
}

/** The look that this time is rounded to: one still to come, or the end. */
function roundToLook(
  { lastLookMin, firstLookMin, lookEveryMin, wholeMin }: LiftQuestion,
  atMin: number,
  round: (value: number) => number,
): number {
  const countLooks = (untilMin: number): number => (untilMin - firstLookMin) / lookEveryMin;
  const next = Math.max(0, Math.floor(countLooks(lastLookMin)) + 1);
  const look = Math.max(round(countLooks(atMin)), next);
  return Math.min(firstLookMin + look * lookEveryMin, wholeMin);
}

/** What of it is still to come? An earliest that is past, looked at or not, is no news: it may be there already. */
export function dropPast(forecast: LiftForecast, nowMin: number): LiftForecast {
  if (forecast.kind !== 'expected' && forecast.kind !== 'perhapsNot') return forecast;
  const { earliestMin } = forecast;
  return earliestMin !== null && earliestMin < nowMin ? { ...forecast, earliestMin: null } : forecast;
}
