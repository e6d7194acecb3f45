import { describe, expect, it } from 'vitest';
import { ASSUMED_BLEACHES, ASSUMED_LAST_BLEACH_WEEKS, readHistory } from '../../../shared/hair/readHistory';
import { usualGrowth } from '../../../shared/heat/growth';
import { computeProfile } from '../../../shared/heat/profile';
import type { Answers } from '../../../shared/records/forms/asked';
import { type HotToolsAnswers, hotToolsForm } from '../../../shared/records/forms/hotTools';
import { type RawForm, readForm } from '../../../shared/records/readForm';
import type { UnitSettings } from '../../../shared/units/quantity';
import { exactly } from '../../../shared/units/range';
import { ironTold } from './told';

const tell = (hotTools: NonNullable<Answers['hotTools']>, client: NonNullable<Answers['client']> = {}) =>
  readHistory({ hotTools, client });

describe('her answers', () => {
  it('say nothing of hair that nobody asked about: nothing on it, everything else wide', () => {
    const nothing = readHistory({});
    expect(nothing).toMatchObject({ habits: [], bleaches: [], growth: usualGrowth, pigment: 'both' });
    expect(nothing.lengthCm.low).toBeLessThan(nothing.lengthCm.high);
  });

  it('give a habit in the trade’s weeks, still done where nobody said that she stopped', () => {
    const [still] = tell({ habits: [ironTold] }).habits;
    expect(still).toMatchObject({ weeks: 104, stoppedWeeksAgo: 0 });
    const [stopped] = tell({ habits: [{ ...ironTold, forMonths: 'unknown', stoppedMonthsAgo: 6 }] }).habits;
    expect(stopped).toMatchObject({ weeks: 'unknown', stoppedWeeksAgo: 26 });
  });

  it('give her own growth where it was measured', () => {
    expect(tell({ growth: 'measured', regrowthCm: 3, regrowthWeeks: 12 }).growth).toEqual(exactly(0.25));
    expect(tell({ growth: 'measured', regrowthCm: 3 }).growth).toBe(usualGrowth);
    expect(tell({ growth: 'usual', regrowthCm: 3, regrowthWeeks: 12 }).growth).toBe(usualGrowth);
  });

  it.each([
    [0, 'pigmented'],
    [30, 'both'],
    [100, 'unpigmented'],
    ['unknown', 'both'],
  ] as const)('of %s %% grey mean %s hair', (greyPercent, pigment) => {
    expect(tell({}, { greyPercent }).pigment).toBe(pigment);
  });
});

describe('bleach', () => {
  it('is none where she names what was on it and lightener is not among it', () => {
    expect(tell({ history: ['boxColour', 'perm'] }).bleaches).toEqual([]);
    expect(tell({ history: ['none'] }).bleaches).toEqual([]);
  });

  it('is each time she told, the last one when she told it', () => {
    const { bleaches } = tell({
      history: ['lightener'],
      bleaches: 3,
      lastBleachMonthsAgo: 3,
      bleachReach: 'roots',
    });
    expect(bleaches.map(({ sureness }) => sureness)).toEqual(['told', 'told', 'told']);
    expect(bleaches[0]?.weeksAgo).toEqual(exactly(13));
    expect(bleaches[1]?.weeksAgo.low).toBeGreaterThan(13);
    expect(bleaches.map(({ place }) => place)).toEqual(['newGrowth', 'oldest', 'oldest']);
  });

  it('is once for certain, and more often perhaps, where she knows that but not how often', () => {
    const { bleaches } = tell({ history: ['lightener'], bleaches: 'unknown' });
    expect(bleaches).toHaveLength(ASSUMED_BLEACHES.high);
    const sure = bleaches.map(({ sureness }) => sureness);
    expect(sure.slice(0, 3)).toEqual(['told', 'likely', 'possible']);
    expect(bleaches[0]?.weeksAgo).toEqual(ASSUMED_LAST_BLEACH_WEEKS);
    expect(bleaches[0]?.place).toBe('unknown');
  });

  it('is not ruled out, and not certain, where nobody knows what was on it', () => {
    const { bleaches } = tell({ history: ['unknown'], bleaches: 'unknown' });
    expect(bleaches.map(({ sureness }) => sureness)).not.toContain('told');
    expect(bleaches[0]?.sureness).toBe('likely');
  });

  it.each(['all', 'roots', 'ends', 'unknown'] as const)(
    'counts as often on the oldest ends as she told, where it went %s',
    (bleachReach) => {
      for (const lastBleachMonthsAgo of ['unknown', 1, 60] as const) {
        const history = tell({ history: ['lightener'], bleaches: 6, lastBleachMonthsAgo, bleachReach });
        expect(computeProfile(history, [history.lengthCm.typical])[0]?.bleaches).toEqual(exactly(6));
      }
    },
  );

  it('in a band lies in it each time, and not on the ends', () => {
    const history = tell({
      history: ['lightener'],
      bleaches: 2,
      lastBleachMonthsAgo: 6,
      bleachReach: 'band',
    });
    const counts = computeProfile(history, [2, 7.5, 30]).map(({ bleaches }) => bleaches.typical);
    expect(counts).toEqual([0, 2, 0]);
  });

  it('lets hair of a head that was bleached lose tryptophan as either kind', () => {
    expect(tell({ history: ['lightener'] }, { greyPercent: 0 }).pigment).toBe('both');
    expect(tell({ history: ['unknown'] }, { greyPercent: 0 }).pigment).toBe('both');
  });

  it('told as none is none', () => {
    expect(tell({ history: ['unknown'], bleaches: 0 }).bleaches).toEqual([]);
  });
});

describe('the same hair', () => {
  const typed = (units: UnitSettings, raw: RawForm) => {
    const read = readForm(hotToolsForm, raw, { units, hasAgeLine: false, nowMs: 0 });
    if (!read.ok) throw new Error(JSON.stringify(read.error));
    return read.value as unknown as HotToolsAnswers;
  };
  const rows = { tool: 'flatIron', wetness: 'wet', daysAWeek: '3', forMonths: '24' };
  const rest = { smoke: 'no', history: ['none'], growth: 'measured', regrowthWeeks: '10' };

  it('comes out the same, whichever units it was typed in', () => {
    const metric = typed(
      { temperature: 'C', mass: 'g', length: 'cm' },
      { habits: [{ ...rows, settingC: '200', plateWidthCm: '2.54' }], ...rest, regrowthCm: '2.54' },
    );
    const customary = typed(
      { temperature: 'F', mass: 'oz', length: 'in' },
      { habits: [{ ...rows, settingC: '392', plateWidthCm: '1' }], ...rest, regrowthCm: '1' },
    );
    const places = [0, 5, 12.5, 33, 60];
    const profileOf = (hotTools: HotToolsAnswers) =>
      computeProfile(readHistory({ hotTools, client: { length: 'braLine', greyPercent: 0 } }), places);
    const [one, other] = [profileOf(metric), profileOf(customary)];
    for (const [index, hair] of one.entries()) {
      for (const name of ['ageWeeks', 'ironMin', 'contactMin', 'tryptophanLeft', 'helixLeft'] as const) {
        for (const end of ['low', 'typical', 'high'] as const) {
          expect(other[index]?.[name][end], `${name} at ${hair.cm} cm`).toBeCloseTo(hair[name][end], 9);
        }
      }
    }
    expect(one[4]?.ironMin.typical).toBe(312);
  });
});
