import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listPossibleCurves } from '../../../shared/chemistry/liftBand';
import { fitLiftCurve } from '../../../shared/chemistry/liftCurve';
import {
  dropPast,
  findMinutesTo,
  forecastLift,
  type LiftForecast,
  type LiftQuestion,
} from '../../../shared/chemistry/liftForecast';
import { readSaturation } from '../../../shared/chemistry/saturation';
import { holds, numberBetween } from '../seeded';

const see = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([atMin, level]) => ({ atMin, level }));
const slow = see([0, 4], [2, 4.5], [7, 5.5], [12, 6], [17, 6.5]);
const ask = (seen: LiftQuestion['seen'], changed: Partial<LiftQuestion> = {}) =>
  forecastLift(
    {
      seen,
      target: 7,
      lastLookMin: seen.at(-1)?.atMin ?? 0,
      firstLookMin: 2,
      lookEveryMin: 5,
      wholeMin: 45,
      ...changed,
    },
    fitLiftCurve(seen),
  );

describe('the forecast of a strand', () => {
  it('names the look that shows what the known curve reaches', () => {
    // 7.5 = 4 + 5 (1 − e^(−0.06 t)) at t = 20.07: just past the look at 20.
    const truth = { base: 4, rise: 5, rate: 0.06 };
    const read = (...times: readonly number[]) =>
      times.map((atMin) => ({ atMin, level: readSaturation(truth, atMin) }));
    const everyFive = ask(read(0, 2, 7, 12, 17), { target: 7.5 });
    expect(everyFive).toMatchObject({ kind: 'expected', atMin: 22, earliestMin: 22 });
    const everyThree = ask(read(0, 2, 5, 8, 11, 14, 17), { target: 7.5, lookEveryMin: 3 });
    expect(everyThree).toMatchObject({ kind: 'expected', atMin: 23, earliestMin: 20 });
  });

  it('leaves open whether it gets there in time where a possible curve does not', () => {
    expect(ask(slow)).toMatchObject({ kind: 'expected', earliestMin: 22, latestMin: null });
    const quick = see([0, 4], [2, 4.5], [5, 5.5], [8, 6.5], [11, 7.5], [14, 8.5]);
    expect(ask(quick, { target: 9, lookEveryMin: 3 })).toEqual({
      kind: 'expected',
      atMin: 17,
      earliestMin: 17,
      latestMin: expect.any(Number),
    });
  });

  it('goes no further than the strand’s own time', () => {
    expect(ask(slow, { wholeMin: 20 })).toMatchObject({ kind: 'perhapsNot', earliestMin: 20 });
    expect(ask(slow, { target: 9.5, wholeMin: 25 })).toEqual({ kind: 'notInTime' });
    expect(ask(slow, { target: 8, wholeMin: 30 }).kind).toBe('perhapsNot');
  });

  it('says that it will not get there only if it could not with readings off by three quarters of a level', () => {
    const flat = see([0, 4], [2, 5], [7, 5.5], [12, 5.5], [17, 5.5], [22, 5.5]);
    // The steepest that passes within half a level: from 5 at 7 min to 6 at 22, so 7.53 at the end; by three quarters 8.55.
    expect(listPossibleCurves(flat).filter((curve) => findMinutesTo(curve, 8) <= 45)).toEqual([]);
    expect(ask(flat, { target: 8 })).toEqual({ kind: 'perhapsNot', earliestMin: 45 });
    expect(ask(flat, { target: 9 })).toEqual({ kind: 'notInTime' });
  });

  it('names no look before the one after the last, be it one at which nobody could read the level', () => {
    expect(ask(slow, { lastLookMin: 17 })).toMatchObject({ earliestMin: 22 });
    expect(ask(slow, { lastLookMin: 22 })).toMatchObject({ earliestMin: 27 });
    expect(ask(slow, { lastLookMin: 26.9 })).toMatchObject({ earliestMin: 27 });
    expect(ask(slow, { lastLookMin: 43 })).toMatchObject({ atMin: 45, earliestMin: 45 });
  });

  it.each([
    [{ kind: 'expected', atMin: 27, earliestMin: 22, latestMin: null }, 22, 22],
    [{ kind: 'expected', atMin: 27, earliestMin: 22, latestMin: null }, 22.01, null],
    [{ kind: 'perhapsNot', earliestMin: 22 }, 22, 22],
    [{ kind: 'perhapsNot', earliestMin: 22 }, 30, null],
  ] as const)('drops an earliest that is past: %j after %d minutes', (forecast, nowMin, earliestMin) => {
    expect(dropPast(forecast, nowMin)).toEqual({ ...forecast, earliestMin });
  });

  it('leaves what says no earliest as it is', () => {
    const silent: readonly LiftForecast[] = [
      { kind: 'notInTime' },
      { kind: 'none', why: 'tooFew' },
      { kind: 'perhapsNot', earliestMin: null },
    ];
    for (const each of silent) expect(dropPast(each, 40)).toBe(each);
  });

  it.each([
    ['tooFew', ask(slow.slice(0, 3))],
    ['falling', ask(see([0, 4], [2, 6], [7, 5], [12, 6]))],
    ['notAbove', ask(see([0, 7], [2, 7]), { target: 7 })],
    ['notAbove', ask(slow, { target: 3 })],
    ['reached', ask(see([0, 4], [2, 7]))],
    ['reached', ask([...slow, { atMin: 20, level: 7 }, { atMin: 23, level: 6.5 }])],
    ['tooFew', ask([])],
    ['notALevel', ask(see([0, 4], [2, 5], [7, 11], [12, 6]))],
    ['notALevel', ask(see([0, 4], [2, 11]))],
    ['beforeStart', ask(see([0, 4], [-1, 7], [7, 6]))],
    ['sameTimes', ask(see([0, 4], [2, 5], [2.01, 5], [7, 6]))],
    ['falling', ask(see([0, 4], [2, 6], [7, 5]))],
  ] as const)('says nothing but why: %s', (why, forecast) => {
    expect(forecast).toEqual({ kind: 'none', why });
  });

  it('keeps its order, its looks and the strand’s time, whatever was seen', () => {
    const kinds = new Map<string, number>();
    const steps = fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 4, maxLength: 9 });
    const run = fc.property(
      steps,
      fc.constantFrom(3, 5),
      numberBetween(10, 60),
      fc.integer({ min: 3, max: 20 }),
      (halves, lookEveryMin, wholeMin, targetHalves) => {
        let level = 3;
        const seen = halves.map((half, index) => {
          level = Math.min(10, level + half / 2);
          return { atMin: index === 0 ? 0 : 2 + (index - 1) * lookEveryMin, level };
        });
        const lastMin = seen.at(-1)?.atMin ?? 0;
        fc.pre(lastMin < wholeMin);
        const looks = { lastLookMin: lastMin, firstLookMin: 2, lookEveryMin };
        const question = { seen, target: targetHalves / 2, ...looks, wholeMin };
        const forecast = forecastLift(question, fitLiftCurve(seen));
        kinds.set(forecast.kind, (kinds.get(forecast.kind) ?? 0) + 1);
        const times =
          forecast.kind === 'expected'
            ? [forecast.earliestMin, forecast.atMin, forecast.latestMin ?? wholeMin]
            : forecast.kind === 'perhapsNot'
              ? [forecast.earliestMin]
              : [];
        expect(times).not.toContain(null);
        const minutes = times.map((atMin) => atMin ?? Number.NaN);
        expect(minutes).toEqual(minutes.toSorted((one, other) => one - other));
        for (const atMin of minutes) {
          expect(atMin).toBeGreaterThan(lastMin);
          expect(atMin).toBeLessThanOrEqual(wholeMin);
          expect(atMin === wholeMin || Number.isInteger((atMin - 2) / lookEveryMin)).toBe(true);
        }
      },
    );
    holds(run, 1500);
    console.info([...kinds]);
    for (const kind of ['expected', 'perhapsNot', 'notInTime', 'none'])
      expect(kinds.get(kind)).toBeGreaterThan(20);
  });
});

describe('the minutes to a level', () => {
  const curve = { base: 4, rise: 3, rate: 0.1 };
  it.each([4.5, 5, 6, 6.9])('lead back to level %d', (level) =>
    expect(readSaturation(curve, findMinutesTo(curve, level))).toBeCloseTo(level, 12),
  );
  it('are none before its start, and for ever past its height', () => {
    expect(findMinutesTo(curve, 3)).toBe(0);
    expect(findMinutesTo(curve, 7)).toBe(Number.POSITIVE_INFINITY);
    expect(findMinutesTo({ ...curve, rise: 0 }, 5)).toBe(Number.POSITIVE_INFINITY);
  });
});
