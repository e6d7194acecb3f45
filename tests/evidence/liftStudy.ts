import { fitLiftCurve } from '../../shared/chemistry/liftCurve';
import {
  findMinutesTo,
  findTimes,
  forecastLift,
  type LiftForecast,
} from '../../shared/chemistry/liftForecast';
import { readSaturation, type Saturation } from '../../shared/chemistry/saturation';

/** How strands are drawn, read and looked at. */
export interface StudyOf {
  readonly readings: number;
  /** Error of a reading before it is rounded to the half level: standard deviation, in levels. */
  readonly sd: number;
  readonly everyMin: number;
  /** It dries out: the lift stops at a moment after the last look, anywhere up to the end. */
  readonly dries?: boolean;
  /** By how much a wet look is darker than the start, which was told dry. */
  readonly darkerWet?: number;
}

/** One strand that was said something of. */
export interface Told {
  readonly forecast: Exclude<LiftForecast, { kind: 'none' }>;
  /** When it truly gets there; Infinity where not in its time. */
  readonly trueMin: number;
  /** The look that shows it, or the end; Infinity likewise. */
  readonly trueLook: number;
  readonly nextLook: number;
  readonly isInBand: boolean;
  /** No curve of the band gets there in its time. */
  readonly isBandTooLate: boolean;
  /** The look nearest to where the fitted curve alone gets there; null where that is not in its time. */
  readonly nearestOfFit: number | null;
  /** In the band of the one fitted curve shifted by half a level up and down. */
  readonly isInShifted: boolean;
}

const WHOLE_MIN = 45;
const FIRST_LOOK_MIN = 2;
const DRAWN = 600;

/** Chance that can be repeated: mulberry32, from memory: public domain, T. Ettinger. */
function makeChance(from: number) {
  let state = from | 0;
  const draw = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (low: number, high: number): number => low + draw() * (high - low);
  const bell = (): number => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
  return { between, bell };
}

const toHalf = (level: number): number => Math.min(10, Math.max(1, Math.round(level * 2) / 2));

/** What is said of strands that were read so often and not seen at their level yet; ranges of the curves are assumed. */
export function studyLift(seed: number, of: StudyOf): readonly Told[] {
  const { readings, sd, everyMin, dries = false, darkerWet = 0 } = of;
  const { between, bell } = makeChance(seed + readings * 100 + sd * 1000 + everyMin * 7);
  const times = Array.from({ length: readings }, (_, look) =>
    look === 0 ? 0 : FIRST_LOOK_MIN + (look - 1) * everyMin,
  );
  const lastMin = times.at(-1) ?? 0;
  const looks = { firstLookMin: FIRST_LOOK_MIN, lookEveryMin: everyMin, wholeMin: WHOLE_MIN };
  return Array.from({ length: DRAWN }).flatMap(() => {
    const truth: Saturation = { base: between(3, 6), rise: between(2, 6), rate: Math.LN2 / between(4, 16) };
    const target = toHalf(truth.base + truth.rise * between(0.5, 1.1));
    const stopsMin = dries ? between(lastMin, WHOLE_MIN) : WHOLE_MIN;
    const passesMin = findMinutesTo(truth, target);
    const trueMin = passesMin > stopsMin ? Number.POSITIVE_INFINITY : passesMin;
    const seen = times.map((atMin) => {
      const darker = atMin === 0 ? 0 : darkerWet;
      return { atMin, level: toHalf(readSaturation(truth, atMin) - darker + sd * bell()) };
    });
    const curve = fitLiftCurve(seen);
    if (passesMin <= lastMin || !curve.ok) return [];
    const forecast = forecastLift({ seen, target, lastLookMin: lastMin, ...looks }, curve);
    if (forecast.kind === 'none') return [];
    const { earliest, latest } = findTimes(curve.value, target);
    const [lighter, darker] = [target - 0.5, target + 0.5].map((level) =>
      findMinutesTo(curve.value.likely, level),
    );
    const toLook = (atMin: number, round: (value: number) => number): number =>
      Math.min(FIRST_LOOK_MIN + round((atMin - FIRST_LOOK_MIN) / everyMin) * everyMin, WHOLE_MIN);
    const nextLook = toLook(lastMin + everyMin, Math.round);
    const fitted = findMinutesTo(curve.value.likely, target);
    return [
      {
        forecast,
        trueMin,
        trueLook: trueMin > WHOLE_MIN ? trueMin : toLook(trueMin, Math.ceil),
        nextLook,
        nearestOfFit: fitted > WHOLE_MIN ? null : Math.max(toLook(fitted, Math.round), nextLook),
        isBandTooLate: earliest > WHOLE_MIN,
        isInBand: earliest <= trueMin && trueMin <= latest,
        isInShifted: (lighter ?? 0) <= trueMin && trueMin <= (darker ?? 0),
      },
    ];
  });
}
