import { describe, expect, it } from 'vitest';
import { flagIds, type Lesson } from '../../../machines/practice/lesson';
import { readTruth } from '../../../machines/practice/readTruth';
import { lessons } from '../../../seeds/practice/lessons';
import { findingTable } from '../../../shared/chemistry/ingredients/findingTable';
import { readIngredientList } from '../../../shared/chemistry/ingredients/readIngredientList';
import { tellIngredients } from '../../../shared/chemistry/ingredients/tellIngredients';
import { readHistory } from '../../../shared/hair/readHistory';
import { computeBoilingPoint } from '../../../shared/heat/boilingPoint';
import { growthMeasured, toCmAMonth } from '../../../shared/heat/growth';
import { computeProfile } from '../../../shared/heat/profile';
import { listRedFlags, type RedFlag, redFlags } from '../../../shared/judgement/risk';
import { isAbsoluteRule, type RuleId, ruleIds } from '../../../shared/judgement/rules';
import { listStops } from '../../../shared/judgement/stops';
import type { Answers } from '../../../shared/records/forms/asked';
import { defaultSettings } from '../../../shared/records/settings';
import { brand } from '../../../shared/units/brand';
import type { Celsius } from '../../../shared/units/temperature';
import { findLesson } from '../../machines/practice/findLesson';

function tellTruth(lesson: Lesson): Answers {
  const truth = readTruth(lesson);
  if (!truth.ok) throw new Error(JSON.stringify(truth.error));
  return truth.value;
}

/** What the station itself would tell of this lesson's bottles under the setting she asks for. */
function tellBottles({ shelf = [], ...lesson }: Lesson): readonly string[] {
  const { settingC } = lesson.finish ?? {};
  const plate = typeof settingC === 'string' ? brand<Celsius>(Number(settingC)) : undefined;
  return shelf.flatMap(({ ingredients }) => {
    const read = readIngredientList(ingredients ?? '');
    if (!read.ok) throw new Error(read.error.code);
    return tellIngredients(read.value, plate)
      .filter((finding) => finding.temperatures === undefined || finding.plate !== 'below')
      .map(({ id }) => id);
  });
}

describe('what the flags of a lesson say, the station finds by itself', () => {
  const isOneOf = (ids: readonly string[]) => (id: string) => ids.includes(id);
  const readOff = ['stop.skinTestPositive', 'stop.incompatibilityReacted'];

  it.each(lessons.map(({ lesson }) => lesson))('$id', (lesson) => {
    const truth = tellTruth(lesson);
    const ids = lesson.flags.map(({ id }) => id);
    const stops = listStops(truth, defaultSettings);
    const raised = ids.filter(isOneOf(ruleIds)).filter((id) => !readOff.includes(id));
    expect(raised.filter((id) => !stops.includes(id as RuleId))).toEqual([]);
    // What only a person could lift needs no flag of its own beside what nobody can.
    const heeded = stops.some(isAbsoluteRule) ? stops.filter(isAbsoluteRule) : stops;
    expect(heeded.filter((rule) => !ids.includes(rule))).toEqual([]);
    const red = listRedFlags(truth);
    expect(ids.filter(isOneOf(redFlags)).filter((id) => !red.includes(id as RedFlag))).toEqual([]);
    const findings = ids.filter(isOneOf(findingTable.map(({ id }) => id)));
    expect(findings.filter((id) => !tellBottles(lesson).includes(id))).toEqual([]);
  });

  it('and a client with nothing against her raises no flag at all', () => {
    const truth = tellTruth(findLesson('safeClient'));
    expect(listRedFlags(truth)).toEqual([]);
    expect(listStops(truth, defaultSettings)).toEqual([]);
  });

  it('knows every id that a lesson may use but once', () => {
    expect(new Set(flagIds).size).toBe(flagIds.length);
  });
});

describe('the figures in the words of a lesson', () => {
  const findWhy = (id: string, flag: string): string =>
    findLesson(id).flags.find((each) => each.id === flag)?.why ?? '';

  it('where water boils: at 2400 m near 92 °C, which is 198 °F', () => {
    const boilsAt = computeBoilingPoint(findLesson('highAltitude').altitudeM ?? 0);
    expect(
      findLesson('highAltitude')
        .flags.map(({ why }) => why)
        .join(' '),
    ).toContain(`${Math.round(boilsAt)} °C (${Math.round(boilsAt * 1.8 + 32)} °F)`);
  });

  it('how much two years of good habits are: the first 27 cm', () => {
    const cm = 24 * toCmAMonth(growthMeasured[1].meanUm);
    expect(findWhy('longEnds', 'endsAtRisk')).toContain(`the first ${Math.round(cm)} cm`);
    const history = readHistory(tellTruth(findLesson('longEnds')));
    const [near, far] = computeProfile(history, [15, history.lengthCm.typical]).map(
      ({ wetMin }) => wetMin.typical,
    );
    expect(near).toBe(0);
    expect(far).toBeGreaterThan(0);
  });

  it('what three bleaches left where it was measured stands as it was published', () => {
    // Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Table I: 71.0 %.
    expect(findWhy('bleachedThreeTimes', 'bleachedTwice')).toContain('71 %');
  });
});
