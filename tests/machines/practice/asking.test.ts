import { describe, expect, it } from 'vitest';
import { findQuestion, findTrue, hear, writeHeard } from '../../../machines/practice/asking';
import { lessons } from '../../../seeds/practice/lessons';
import { askForms } from '../../../shared/records/forms/asked';
import { defaultSettings } from '../../../shared/records/settings';
import { askSteps } from '../../../shared/records/steps';
import { findLesson } from './findLesson';

const wet = findLesson('wetIronedCurls');
const fahrenheit = defaultSettings.units;

describe('what she says', () => {
  it('is something else when she is asked closer', () => {
    const first = hear(wet, 'hotTools.smoke', false);
    expect(first).toMatchObject({ means: 'no' });
    const closer = hear(wet, 'hotTools.smoke', true);
    expect(closer).toMatchObject({ means: 'smellsBurnt' });
    expect(closer.words).not.toBe(first.words);
  });

  it('is true in the option’s own words where the lesson has no words for it', () => {
    expect(hear(wet, 'feelHair.porosity', false)).toEqual({ words: null, means: 'high' });
    expect(hear(wet, 'feelHair.porosity', true)).toEqual(hear(wet, 'feelHair.porosity', false));
  });

  it('of one row is what she says of the whole list at that moment', () => {
    expect(hear(wet, 'hotTools.habits.0.wetness', false).means).toBe('dry');
    expect(hear(wet, 'hotTools.habits.0.wetness', true).means).toBe('wet');
    expect(hear(wet, 'hotTools.habits.3.wetness', false).means).toBeNull();
  });

  it('is at first what she said on sitting down, and asked closer the service that it means', () => {
    const service = wet.truth.client.service;
    expect(hear(wet, 'client.service', false)).toEqual({ words: wet.wants, means: service });
    expect(hear(wet, 'client.service', true)).toEqual({ words: null, means: service });
  });

  it('at last is the truth, whatever the lesson and the question', () => {
    let scripted = 0;
    for (const { lesson } of lessons)
      for (const step of askSteps)
        for (const name of Object.keys(askForms[step])) {
          const path = `${step}.${name}`;
          const isTrue = findTrue(lesson, path);
          if (isTrue === null) continue;
          expect(hear(lesson, path, true).means, `${lesson.id} ${path}`).toEqual(isTrue);
          if (hear(lesson, path, true).words !== null) scripted += 1;
        }
    expect(scripted).toBeGreaterThan(20);
  });
});

describe('what she means', () => {
  it('is written in the units of the station', () => {
    expect(writeHeard('hotTools.habits.0.settingC', '200', fahrenheit)).toBe('392');
    expect(writeHeard('client.lengthCm', '66', { ...fahrenheit, length: 'cm' })).toBe('66');
    const [row] = writeHeard(
      'hotTools.habits',
      hear(wet, 'hotTools.habits', true).means,
      fahrenheit,
    ) as readonly Record<string, unknown>[];
    expect(row).toMatchObject({ wetness: 'wet', settingC: '392' });
  });

  it('stays what it is where there is nothing to convert, and null where she says nothing', () => {
    expect(writeHeard('client.scalp', 'broken', fahrenheit)).toBe('broken');
    expect(writeHeard('client.ageBand', 'under', fahrenheit)).toBe('under');
    expect(writeHeard('heatSpray.settingC', '190', { ...fahrenheit, temperature: 'C' })).toBe('190');
    expect(writeHeard('hotTools.bleaches', 'unknown', fahrenheit)).toBe('unknown');
    expect(writeHeard('client.scalp', null, fahrenheit)).toBeNull();
    expect(writeHeard('client.nothing', 'x', fahrenheit)).toBeNull();
  });
});

it('finds the question of a step, and of a row in its list', () => {
  expect(findQuestion('client.scalp')).toMatchObject({ kind: 'choice' });
  expect(findQuestion('hotTools.habits')).toMatchObject({ kind: 'list' });
  expect(findQuestion('hotTools.habits.7.wetness')).toMatchObject({ kind: 'choice' });
  expect(findQuestion('hotTools.habits.wetness')).toBeNull();
  expect(findQuestion('strandTest.zone')).toBeNull();
});
