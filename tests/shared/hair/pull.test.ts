import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ASSUMED_LIGHT_PULL_FROM_PERCENT,
  ASSUMED_SHORTEST_REST_MM,
  ASSUMED_SLIP_FROM_PERCENT,
  ASSUMED_SPRINGS_BACK_FROM_PERCENT,
  findPullMarksMm,
  type PullReadings,
  pullField,
  readPull,
} from '../../../shared/hair/pull';
import {
  ASSUMED_LIGHT_PULL_LIMIT_PERCENT,
  MEAN_BREAK_PERCENT,
  stretchVerdicts,
} from '../../../shared/hair/stretch';
import { defaultSettings } from '../../../shared/records/settings';
import { readNumber } from '../../../shared/units/numberField';
import { holds, numberBetween } from '../seeded';

const pull = (restMm: number, pulledMm: number | null, backMm: number | null) => {
  const read = readPull({ restMm, pulledMm, backMm });
  if (!read.ok) throw new Error(read.error);
  return read.value;
};

describe('the marks of a light pull', () => {
  it('lie at 20 and at 30 % of the rest, and none lies beyond', () => {
    const { fromMm, toMm } = findPullMarksMm(110);
    expect(fromMm).toBeCloseTo(132, 9);
    expect(toMm).toBeCloseTo(143, 9);
    expect(Object.keys(findPullMarksMm(110))).toEqual(['fromMm', 'toMm']);
    expect(ASSUMED_LIGHT_PULL_LIMIT_PERCENT).toBeLessThan(MEAN_BREAK_PERCENT);
  });
});

describe('three readings of a strand', () => {
  it.each([
    ['all of it back', 100, 125, 100, 'springsBack', 'sound'],
    ['a curl that came back shorter', 100, 125, 96, 'springsBack', 'sound'],
    ['80 % back', 100, 125, 105, 'springsBack', 'sound'],
    ['a millimetre less', 100, 125, 106, 'staysLong', 'slow'],
    ['none of it back', 100, 125, 125, 'staysLong', 'slow'],
    ['it ran on', 100, 125, 140, 'staysLong', 'slow'],
    ['at 30 %', 100, 130, 100, 'springsBack', 'sound'],
    ['a millimetre past 30 %', 100, 131, 100, 'springsBack', 'gummy'],
    ['past 30 % and long', 100, 180, 170, 'staysLong', 'gummy'],
    ['four times its length', 100, 400, 100, 'springsBack', 'gummy'],
    ['it snapped', 100, 110, null, 'snaps', 'broken'],
    ['it snapped at once', 100, 100, null, 'snaps', 'broken'],
  ] as const)('%s: %d, %d, %s mm', (_name, restMm, pulledMm, backMm, returned, verdict) => {
    expect(pull(restMm, pulledMm, backMm)).toMatchObject({ returned, verdict });
  });

  it('say nothing of a strand that sprang back from less than 20 %, and all else of one that did not', () => {
    expect(pull(100, 119, 100).isTooLight).toBe(true);
    expect(pull(100, 120, 100).isTooLight).toBe(false);
    expect(pull(100, 119, 119).isTooLight).toBe(false);
    expect(pull(100, 105, null).isTooLight).toBe(false);
  });

  it.each([
    ['49 mm that sprang back', 49, 60, 49, true, 'sound'],
    ['50 mm', 50, 61, 50, false, 'sound'],
    ['20 mm, 83 % of 6 mm back', 20, 26, 21, true, 'sound'],
    ['20 mm, too light too', 20, 22, 20, true, 'sound'],
    ['20 mm that stayed long', 20, 24, 22, false, 'slow'],
    ['20 mm that ran past 30 %', 20, 27, 20, false, 'gummy'],
    ['20 mm that snapped', 20, 23, null, false, 'broken'],
  ] as const)(
    'say nothing of a strand too short to tell, where it sprang back: %s',
    (_name, restMm, pulledMm, backMm, isTooShort, verdict) => {
      expect(pull(restMm, pulledMm, backMm)).toMatchObject({ isTooShort, verdict });
    },
  );

  it('tell by how much two readings a millimetre off may change what came back', () => {
    expect(pull(20, 24, 22).returnOffPercent).toBeCloseTo(50, 9);
    expect(pull(112, 139, 113).returnOffPercent).toBeCloseTo(200 / 27, 9);
    expect(pull(100, 120, null).returnOffPercent).toBeNull();
  });

  it('have no figure of a strand that snapped before it was read', () => {
    expect(pull(100, null, null)).toMatchObject({
      extensionPercent: null,
      longestPercent: null,
      returnPercent: null,
      verdict: 'broken',
      hasGonePast: false,
      isDoubtful: false,
      isTooLight: false,
    });
    expect(pull(100, 100, null).extensionPercent).toBe(0);
  });

  it.each([
    ['at twice its length', 100, 200, 100, false, 100],
    ['beyond', 100, 200.5, 100, true, 100.5],
    ['of a slip of the finger', 100, 1285, 100, true, 1185],
    ['that snapped there', 100, 250, null, true, 150],
    ['let go far beyond where it was pulled to', 100, 125, 230, true, 130],
    ['at the mean break', 100, 151, 120, false, 51],
  ] as const)(
    'are kept and doubted only past 100 %%: %s',
    (_name, restMm, pulledMm, backMm, isDoubtful, longest) => {
      const read = pull(restMm, pulledMm, backMm);
      expect(read.isDoubtful).toBe(isDoubtful);
      expect(read.longestPercent).toBeCloseTo(longest, 9);
      expect(ASSUMED_SLIP_FROM_PERCENT).toBeGreaterThan(MEAN_BREAK_PERCENT);
    },
  );

  it.each([
    [0, 120, 100, 'notALength'],
    [100, 90, 100, 'shorterThanRest'],
    [100, 100, 100, 'notPulled'],
    [100, 120, 0, 'notALength'],
    [Number.NaN, 120, 100, 'notFinite'],
    [0, null, null, 'notALength'],
    [100, null, 100, 'notPulled'],
    [100, Number.POSITIVE_INFINITY, null, 'notFinite'],
  ] as const)('of %d, %s, %s mm are refused as %s', (restMm, pulledMm, backMm, error) => {
    expect(readPull({ restMm, pulledMm, backMm })).toEqual({ ok: false, error });
  });

  it('never give a better verdict for a longer stretch or a poorer return', () => {
    const rank = (readings: PullReadings) => {
      const read = readPull(readings);
      if (!read.ok) throw new Error(read.error);
      return stretchVerdicts.indexOf(read.value.verdict);
    };
    const percent = numberBetween(1, 80);
    const share = numberBetween(0, 1);
    holds(
      fc.property(
        numberBetween(20, 400),
        percent,
        numberBetween(0, 80),
        share,
        share,
        (rest, by, more, a, b) => {
          const end = (extension: number, lost: number): PullReadings => ({
            restMm: rest,
            pulledMm: rest * (1 + extension / 100),
            backMm: rest * (1 + (extension / 100) * lost),
          });
          expect(rank(end(by + more, Math.max(a, b)))).toBeGreaterThanOrEqual(rank(end(by, Math.min(a, b))));
        },
      ),
    );
  });

  it('leave at the lightest pull of the shortest strand no more in doubt than springing back allows for', () => {
    const pulledMm = ASSUMED_SHORTEST_REST_MM * (1 + ASSUMED_LIGHT_PULL_FROM_PERCENT / 100);
    const { returnOffPercent } = pull(ASSUMED_SHORTEST_REST_MM, pulledMm, ASSUMED_SHORTEST_REST_MM);
    expect(100 - (returnOffPercent ?? 0)).toBeCloseTo(ASSUMED_SPRINGS_BACK_FROM_PERCENT, 9);
  });
});

describe('a typed reading', () => {
  const read = (text: string) => readNumber(text, pullField, defaultSettings.units);

  it.each([
    ['0', 'tooLow'],
    ['-4', 'tooLow'],
    ['3000', 'tooHigh'],
    ['', 'empty'],
    ['1e309', 'notFinite'],
    ['eleven', 'notANumber'],
  ])('of “%s” is refused as %s', (text, code) => {
    expect(read(text)).toMatchObject({ ok: false, error: { code, min: 1, max: 1500, unit: 'mm' } });
  });

  it('is taken to a tenth of a millimetre', () => {
    expect(read('112.5')).toEqual({ ok: true, value: 112.5 });
  });
});
