import type { Bleach, BleachPlace } from '../chemistry/bleach';
import { measureGrowth, usualGrowth } from '../heat/growth';
import type { HeatHabit } from '../heat/habit';
import type { HairHistory } from '../heat/hairHistory';
import type { Pigment } from '../heat/tryptophan';
import type { Answers } from '../records/forms/asked';
import type { HabitAnswers, HotToolsAnswers } from '../records/forms/hotTools';
import { brand } from '../units/brand';
import type { Centimetre } from '../units/length';
import { exactly, makeRange, type Range } from '../units/range';
import { toWeeks } from '../units/time';
import { readLength } from './landmarks';

type HotTools = Partial<HotToolsAnswers>;

/**
 * How often was it bleached, when lightener was on it and she doesn't know how often?
 * Assumed because once is certain then, and more than six times is rare on hair that is still there.
 */
export const ASSUMED_BLEACHES: Range = makeRange(1, 2, 6);

/**
 * How many weeks ago was the last bleach, when she doesn't know?
 * Assumed because it may have been last week, and what is years away has mostly been cut off.
 */
export const ASSUMED_LAST_BLEACH_WEEKS: Range = makeRange(0, 12, 104);

/** How many weeks lie between two bleaches, when only the last is told? Assumed because they are done about so often. */
export const ASSUMED_BLEACH_EVERY_WEEKS: Range = makeRange(4, 8, 26);

const weeksOf = (months: number | 'unknown'): number | 'unknown' =>
  months === 'unknown' ? 'unknown' : toWeeks(months);

/** One habit as the dose is reckoned from it: months as the trade's weeks, still done where nothing else was told. */
export const readHabit = ({ forMonths, stoppedMonthsAgo = 0, ...habit }: HabitAnswers): HeatHabit => ({
  ...habit,
  weeks: weeksOf(forMonths),
  stoppedWeeksAgo: weeksOf(stoppedMonthsAgo),
});

/** New growth only: all hair had it once, when it was new; the further times that are told lie on the oldest ends. */
const placeOf = (reach: HotTools['bleachReach'], before: number): BleachPlace => {
  if (reach === 'roots') return before === 0 ? 'newGrowth' : 'oldest';
  return reach ?? 'unknown';
};

/** Every time bleach was on it, the last one first; how sure each is, when, and where, as far as it was told. */
function readBleaches({
  history = [],
  bleaches,
  lastBleachMonthsAgo,
  bleachReach,
}: HotTools): readonly Bleach[] {
  const isTold = history.includes('lightener');
  if (!isTold && !history.includes('unknown')) return [];
  const isCountTold = bleaches !== undefined && bleaches !== 'unknown';
  const count = isCountTold ? exactly(bleaches) : ASSUMED_BLEACHES;
  const last = weeksOf(lastBleachMonthsAgo ?? 'unknown');
  const lastWeeksAgo = last === 'unknown' ? ASSUMED_LAST_BLEACH_WEEKS : exactly(last);
  // A band was bleached where it lies, each time on the hair that was new the last time.
  const every = bleachReach === 'band' ? exactly(0) : ASSUMED_BLEACH_EVERY_WEEKS;
  return Array.from({ length: count.high }, (_, before) => ({
    weeksAgo: makeRange(
      lastWeeksAgo.low + before * every.low,
      lastWeeksAgo.typical + before * every.typical,
      lastWeeksAgo.high + before * every.high,
    ),
    place: placeOf(bleachReach, before),
    // That she was bleached at all is told by "lightener" alone; not knowing what was on it rules nothing out.
    sureness:
      before < count.low && (isCountTold || isTold) ? 'told' : before < count.typical ? 'likely' : 'possible',
  }));
}

/** Which kinds of hair may be on this head: white and bleached hair lose tryptophan faster than pigmented. */
function readPigment(greyPercent: number | 'unknown' | undefined, isBleached: boolean): Pigment {
  if (greyPercent === 100) return 'unpigmented';
  return greyPercent === 0 && !isBleached ? 'pigmented' : 'both';
}

function readGrowth({ growth, regrowthCm, regrowthWeeks }: HotTools): Range {
  if (growth !== 'measured' || regrowthCm === undefined || regrowthWeeks === undefined) return usualGrowth;
  return measureGrowth(brand<Centimetre>(regrowthCm), regrowthWeeks);
}

/**
 * What do her answers say of this head of hair, as far as heat and bleach are reckoned?
 * "Don't know" is a wide range, never none; what was not asked stands at the answer its form gives it (shared/records/
 * forms/hotTools.ts). Relaxer, perm, colour and all else that has been on it is left out here, and said so on the screen.
 * Checked by tests/shared/hair/readHistory.test.ts.
 */
export function readHistory({ client = {}, hotTools = {} }: Answers): HairHistory {
  const bleaches = readBleaches(hotTools);
  return {
    habits: (hotTools.habits ?? []).map(readHabit),
    bleaches,
    growth: readGrowth(hotTools),
    lengthCm: readLength(client.length, client.lengthCm),
    pigment: readPigment(client.greyPercent, bleaches.length > 0),
  };
}
