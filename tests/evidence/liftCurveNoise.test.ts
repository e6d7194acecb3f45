import { describe, expect, it } from 'vitest';
import { fitLiftCurve } from '../../shared/chemistry/liftCurve';
import { findMinutesTo, forecastLift, type LiftForecast } from '../../shared/chemistry/liftForecast';
import { readSaturation, type Saturation } from '../../shared/chemistry/saturation';

/**
 * How far may a predicted time be believed? Known curves, read as a person reads: with an error of her own, then to the
 * half level. Ranges of the curves are assumed; what it prints is what is asserted, with a margin.
 */
const seed = Number(process.env.SEED ?? 20_261_125);
const DRAWN = 1_000;
const EVERY_MIN = 5;
const WHOLE_MIN = 45;

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
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

interface Study {
  readonly strands: number;
  /** Of the likely time, in minutes, where the level is reached after the last look and in time. */
  readonly errors: readonly number[];
  /** How often the true time lies in the band, before it is rounded to looks. */
  readonly inBand: number;
  /** How often it would lie in the band of the one curve shifted by half a level up and down. */
  readonly inShifted: number;
  /** How often what is said is wrong, of all strands: another look than said, or in time against "will not". */
  readonly wrong: number;
}

/** May this be said of a strand that truly reaches its level at the look `trueMin`? Infinity: not in its time. */
function isTrue(forecast: LiftForecast, trueMin: number): boolean {
  switch (forecast.kind) {
    case 'expected':
      return forecast.earliestMin <= trueMin && trueMin <= (forecast.latestMin ?? Number.POSITIVE_INFINITY);
    case 'hardly':
      return forecast.earliestMin <= trueMin;
    case 'notInTime':
      return trueMin === Number.POSITIVE_INFINITY;
    case 'none':
      return true;
  }
}

/** Strands read so often, with this error before rounding, none of which was seen at its level yet. */
function study(readings: number, sd: number): Study {
  const { between, bell } = makeChance(seed + readings * 100 + sd * 1000);
  const times = Array.from({ length: readings }, (_, look) => (look === 0 ? 0 : 2 + (look - 1) * EVERY_MIN));
  const lastMin = times.at(-1) ?? 0;
  const told: { readonly error: number; readonly inBand: boolean; readonly inShifted: boolean }[] = [];
  let strands = 0;
  let wrong = 0;
  for (let drawn = 0; drawn < DRAWN; drawn += 1) {
    const truth: Saturation = { base: between(3, 6), rise: between(2, 6), rate: Math.LN2 / between(4, 16) };
    const target = toHalf(truth.base + truth.rise * between(0.5, 1.1));
    const trueMin = findMinutesTo(truth, target);
    const seen = times.map((atMin) => ({ atMin, level: toHalf(readSaturation(truth, atMin) + sd * bell()) }));
    const curve = fitLiftCurve(seen);
    if (trueMin <= lastMin || seen.some(({ level }) => level >= target) || !curve.ok) continue;
    strands += 1;
    const looks = { firstLookMin: 2, lookEveryMin: EVERY_MIN, wholeMin: WHOLE_MIN };
    const forecast = forecastLift({ seen, target, ...looks }, curve);
    const trueLook = Math.min(2 + Math.ceil((trueMin - 2) / EVERY_MIN) * EVERY_MIN, WHOLE_MIN);
    if (!isTrue(forecast, trueMin > WHOLE_MIN ? Number.POSITIVE_INFINITY : trueLook)) wrong += 1;
    if (trueMin > WHOLE_MIN) continue;
    const { likely, possible } = curve.value;
    const minutes = [likely, ...possible].map((each) => findMinutesTo(each, target));
    told.push({
      error: Math.min(Math.max(findMinutesTo(likely, target), lastMin), WHOLE_MIN) - trueMin,
      inBand: Math.min(...minutes) <= trueMin && trueMin <= Math.max(...minutes),
      inShifted:
        findMinutesTo(likely, target - 0.5) <= trueMin && trueMin <= findMinutesTo(likely, target + 0.5),
    });
  }
  return {
    strands,
    errors: told.map(({ error }) => error).sort((one, other) => one - other),
    inBand: mean(told.map(({ inBand }) => Number(inBand))),
    inShifted: mean(told.map(({ inShifted }) => Number(inShifted))),
    wrong: wrong / strands,
  };
}

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;
const at = ({ errors }: Study, share: number): number =>
  errors[Math.floor(errors.length * share)] ?? Number.NaN;
const say = (told: Study): string =>
  `${told.strands} strands, ${told.errors.length} of them in time; predicted time: bias ${mean(told.errors).toFixed(1)} min, ` +
  `median ${at(told, 0.5).toFixed(1)}, eight of ten from ${at(told, 0.1).toFixed(1)} to ${at(told, 0.9).toFixed(1)}; ` +
  `in the band ${percent(told.inBand)}, in one curve shifted by half a level ${percent(told.inShifted)}; ` +
  `what is said is wrong in ${percent(told.wrong)}`;

describe('the predicted time, on known curves read to the half level', () => {
  it.each([
    [4, 0],
    [5, 0],
    [6, 0],
    [4, 0.15],
    [5, 0.15],
    [6, 0.15],
    [4, 0.25],
    [5, 0.25],
    [6, 0.25],
  ])('from %d readings with %d level of noise', (readings, sd) => {
    const told = study(readings, sd);
    console.info(`seed ${seed}, ${readings} readings, noise ${sd} level before rounding: ${say(told)}`);
    // Readings within half a level: the band is a promise. Noisier ones: one in twenty or thirty lies outside it.
    expect(told.inBand, say(told)).toBeGreaterThan(sd < 0.2 ? 0.99 : 0.93);
    expect(told.wrong, say(told)).toBeLessThan(sd < 0.2 ? 0.01 : 0.03);
    // Late rather than early, by less than two looks; a single time may be three looks early, or six late.
    expect(mean(told.errors), say(told)).toBeGreaterThan(0);
    expect(mean(told.errors), say(told)).toBeLessThan(8);
    expect(Math.abs(at(told, 0.5)), say(told)).toBeLessThan(7);
    expect(at(told, 0.1), say(told)).toBeGreaterThan(-15);
    expect(at(told, 0.9), say(told)).toBeLessThan(30);
    // Why the band is not one curve shifted by half a level.
    expect(told.inShifted, say(told)).toBeLessThan(told.inBand - 0.05);
  });
});
