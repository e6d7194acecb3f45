import { describe, expect, it } from 'vitest';
import {
  ASSUMED_LEAST_SETTING_C,
  ASSUMED_MOST_SETTING_C,
  ASSUMED_STEP_DOWN_C,
  ASSUMED_WEAK_SETTING_C,
  isHotterThanSuggested,
  needsProtectant,
  PROTECTANT_FROM_C,
  suggestHomeSetting,
} from '../../../shared/judgement/homeSetting';
import type { Answers } from '../../../shared/records/forms/asked';
import type { ConsultationRecord, StrandRecord, StretchRecord } from '../../../shared/records/record';
import { brand } from '../../../shared/units/brand';
import { type Celsius, type Fahrenheit, toCelsius, toFahrenheit } from '../../../shared/units/temperature';
import { lowRisk, tell, until } from '../records/telling';

const sound = tell(until('BOWL_WEIGHED', lowRisk)).record;
type Habit = NonNullable<NonNullable<Answers['hotTools']>['habits']>[number];
const withHabit = (change: Partial<Habit>, record: ConsultationRecord = sound): ConsultationRecord => {
  const { hotTools } = record.answers;
  const habit = { ...hotTools?.habits?.[0], tool: 'flatIron', wetness: 'dry', ...change } as Habit;
  return { ...record, answers: { ...record.answers, hotTools: { ...hotTools, habits: [habit] } } };
};
const inC = (record: ConsultationRecord) => suggestHomeSetting(record, 'C');
const at = (settingC: number | 'unknown', change: Partial<Habit> = {}) =>
  inC(withHabit({ settingC, ...change } as Partial<Habit>));

describe('how hot at home', () => {
  it('is a step below the hottest she told, and never above what hair stands', () => {
    expect(at(190)).toEqual({ settingC: 170, why: 'lower' });
    expect(at(150)).toEqual({ settingC: 130, why: 'lower' });
    expect(at(200)).toEqual({ settingC: ASSUMED_MOST_SETTING_C, why: 'lower' });
    expect(at(ASSUMED_MOST_SETTING_C + ASSUMED_STEP_DOWN_C).settingC).toBe(ASSUMED_MOST_SETTING_C);
    expect(at(199).settingC).toBe(170);
  });

  it('is lower for hair that has shown damage, or of which much is not known', () => {
    expect(at(190, { wetness: 'wet' })).toEqual({ settingC: ASSUMED_WEAK_SETTING_C, why: 'weak' });
    expect(at('unknown')).toEqual({ settingC: ASSUMED_WEAK_SETTING_C, why: 'weak' });
    const weak = (change: Partial<StrandRecord>) => ({
      ...withHabit({ settingC: 190 }),
      strands: sound.strands.map((strand) => ({ ...strand, ...change }) as StrandRecord),
    });
    const [first] = sound.strands;
    expect(inC(weak({})).why).toBe('lower');
    expect(inC(weak({ outcome: { ...first?.outcome, grade: 'rough' } as StrandRecord['outcome'] })).why).toBe(
      'weak',
    );
    expect(inC(weak({ ended: { ...first?.ended, how: 'broke' } as StrandRecord['ended'] })).why).toBe('weak');
  });

  it.each([
    ['springsBack', 170, 'lower'],
    ['staysLong', ASSUMED_WEAK_SETTING_C, 'weak'],
    ['snaps', ASSUMED_WEAK_SETTING_C, 'weak'],
  ] as const)('counts how the hair on her head came back after a rinse: %s', (stretch, settingC, why) => {
    const felt = (...all: StretchRecord['stretch'][]) => ({
      ...withHabit({ settingC: 190 }),
      stretches: all.map(
        (each, seq) => ({ zone: 'ends', stretch: each, before: 'stands', atMs: 0, by: 'MK', seq }) as const,
      ),
    });
    expect(inC(felt(stretch))).toEqual({ settingC, why });
    expect(inC(felt('springsBack', stretch)), 'felt last').toEqual({ settingC, why });
    expect(inC(felt(stretch, 'springsBack')), 'felt first, in another zone or before').toEqual({
      settingC,
      why,
    });
  });

  it.each([
    ['sound', 'lower'],
    ['stretchy', 'weak'],
    ['breaking', 'weak'],
  ])('counts a look at the head that found the hair %s, whether it was rinsed or not', (hair, why) => {
    const looks = [
      { atMs: 0, by: 'MK', seq: 0, hair },
      { atMs: 1, by: 'MK', seq: 1, hair: 'sound' },
    ];
    const bowls = [{ zone: 'ends', state: 'on', rinsedSeq: null, looks }];
    const seen = { ...withHabit({ settingC: 190 }), bowls } as unknown as ConsultationRecord;
    expect(inC(seen).why).toBe(why);
  });

  it('counts a strand that weakened at a look, or was taken off for it, without any outcome', () => {
    const seen = (change: object) => ({
      ...withHabit({ settingC: 190 }),
      strands: sound.strands.map((strand) => ({ ...strand, ...change }) as StrandRecord),
    });
    const look = { atMs: 0, by: 'MK', seq: 0, level: 7, feel: 'rough' };
    expect(inC(seen({ outcome: null, looks: [look] })).why).toBe('lower');
    expect(inC(seen({ outcome: null, looks: [{ ...look, feel: 'stretchy' }] })).why).toBe('weak');
    expect(inC(seen({ outcome: null, why: 'looksWeak' })).why).toBe('weak');
    expect(inC(seen({ outcome: null, retracted: 'sound' })).why).toBe('lower');
    expect(inC(seen({ outcome: null, retracted: 'rough' })).why).toBe('weak');
  });

  it('is hotter than suggested from the next figure of a dial on, in either unit, and not at its own', () => {
    const at180 = { settingC: brand<Celsius>(180), why: 'usual' } as const;
    expect([179, 180, 181].map((celsius) => isHotterThanSuggested(celsius, at180))).toEqual([
      false,
      false,
      true,
    ]);
    for (let shown = 250; shown <= 350; shown += 25) {
      const settingC = toCelsius(brand<Fahrenheit>(shown));
      const there = { settingC: toCelsius(brand<Fahrenheit>(toFahrenheit(settingC))), why: 'lower' } as const;
      expect(isHotterThanSuggested(settingC, there), String(shown)).toBe(false);
      expect(isHotterThanSuggested(toCelsius(brand<Fahrenheit>(shown + 1)), there), String(shown)).toBe(true);
    }
  });

  it('is never lower than does anything, and never above what she told', () => {
    expect(at(130).settingC).toBe(ASSUMED_LEAST_SETTING_C);
    expect(at(100)).toEqual({ settingC: 100, why: 'least' });
    expect([at(130).why, at(139).why, at(140).why]).toEqual(['least', 'least', 'lower']);
    for (let told = 40; told <= 250; told += 1) {
      expect(at(told).settingC, String(told)).toBeLessThanOrEqual(told);
      const fahrenheit = suggestHomeSetting(withHabit({ settingC: told }), 'F').settingC;
      expect(fahrenheit, String(told)).toBeLessThanOrEqual(told);
    }
  });

  it('counts no dryer, and says so where she told no hot tool', () => {
    expect(at(190, { tool: 'dryer' })).toEqual({ settingC: ASSUMED_MOST_SETTING_C, why: 'usual' });
  });

  it('stands on a step of a dial: 25 °F, or 10 °C', () => {
    for (let told = 150; told <= 250; told += 1) {
      const record = withHabit({ settingC: told });
      const shown = toFahrenheit(suggestHomeSetting(record, 'F').settingC);
      expect(Math.abs(shown - Math.round(shown / 25) * 25), String(told)).toBeLessThan(1e-9);
      expect(suggestHomeSetting(record, 'C').settingC % 10).toBe(0);
    }
  });

  // 450 °F: common practice, no source.
  it('asks for a protectant from 450 °F on, and not below', () => {
    expect(toFahrenheit(PROTECTANT_FROM_C)).toBeCloseTo(450, 9);
    const at = (shown: number) => needsProtectant(toCelsius(brand<Fahrenheit>(shown)));
    expect([300, 449, 450, 480].map(at)).toEqual([false, false, true, true]);
  });
});
