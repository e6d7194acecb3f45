import { describe, expect, it } from 'vitest';
import { classify } from '../../../shared/records/classify';
import type { Form } from '../../../shared/records/form';
import { clientForm } from '../../../shared/records/forms/client';
import { hotToolsForm } from '../../../shared/records/forms/hotTools';
import { type RawForm, readForm } from '../../../shared/records/readForm';
import { beginRecord } from '../../../shared/records/record';
import { defaultSettings } from '../../../shared/records/settings';
import { sayFieldRefusal } from '../../../src/words/sayRefusal';
import { findWords } from '../../../src/words/words';

const metric = { temperature: 'C', mass: 'g', length: 'cm' } as const;
const customary = { temperature: 'F', mass: 'oz', length: 'in' } as const;
const words = findWords('en');
const context = {
  atMs: 1,
  by: 'Opal',
  settingsId: 1,
  settings: { ...defaultSettings, units: metric },
  inheritsStop: false,
};

const iron = { tool: 'flatIron', wetness: 'wet', daysAWeek: '3', forMonths: '24', settingC: '200' };
const withIron = (change: RawForm): RawForm => ({
  habits: [{ ...iron, ...change }],
  smoke: 'no',
  history: ['none'],
});

/** What stands at the field, and at which, when this is typed. */
const sayAt = (form: Form, raw: RawForm, units: typeof metric | typeof customary = metric) => {
  const read = readForm(form, raw, { units, hasAgeLine: false, nowMs: 0, isPartial: true });
  return read.ok ? [] : read.error.map((each) => `${each.path}: ${sayFieldRefusal(each, words, units)}`);
};

describe('what cannot be is said at its field', () => {
  it.each([
    [
      'a habit that stops in the future',
      { stoppedMonthsAgo: '-3' },
      'stoppedMonthsAgo',
      'That lies in the future.',
    ],
    ['a habit that starts in the future', { forMonths: '-6' }, 'forMonths', 'That lies in the future.'],
    ['200 passes', { passes: '200' }, 'passes', 'Too high. 1 to 30.'],
    ['200 days a week', { daysAWeek: '200' }, 'daysAWeek', 'Too high. 0.25 to 7.'],
    ['900 °C', { settingC: '900' }, 'settingC', 'Too high. 40 °C to 250 °C.'],
  ] as const)('%s', (_what, change, field, sentence) => {
    const said = sayAt(hotToolsForm, withIron(change));
    expect(said).toHaveLength(1);
    expect(said[0]?.replaceAll('\u00a0', ' ')).toContain(`habits.0.${field}: ${sentence}`);
  });

  it('900 °F', () => {
    const said = sayAt(hotToolsForm, withIron({ settingC: '900' }), customary);
    expect(said.map((each) => each.replaceAll('\u00a0', ' '))).toEqual([
      'habits.0.settingC: Too high. 104 °F to 482 °F.',
    ]);
  });

  it('three metres of hair', () => {
    const said = sayAt(clientForm, { lengthCm: '300' });
    expect(said.map((each) => each.replaceAll('\u00a0', ' '))).toEqual([
      'lengthCm: Too high. 1 cm to 200 cm.',
    ]);
  });

  it('a bleach and a colour that are still to come', () => {
    const bleached = { ...withIron({}), history: ['lightener'], bleaches: '1', lastBleachMonthsAgo: '-1' };
    expect(sayAt(hotToolsForm, bleached)[0]).toMatch(/^lastBleachMonthsAgo: That lies in the future\./);
    const grown = { ...withIron({}), growth: 'measured', regrowthCm: '2', regrowthWeeks: '-8' };
    expect(sayAt(hotToolsForm, grown)[0]).toMatch(/^regrowthWeeks: That lies in the future\./);
  });

  it('hair that grew faster, or more slowly, than any', () => {
    const grown = (regrowthCm: string, regrowthWeeks: string) => {
      const answers = { ...withIron({}), growth: 'measured', regrowthCm, regrowthWeeks };
      const told = classify(beginRecord('her'), { type: 'ANSWERED', step: 'hotTools', answers }, context);
      return told.ok || told.error.kind !== 'fields'
        ? []
        : told.error.fields.map((each) => `${each.path}: ${sayFieldRefusal(each, words, metric)}`);
    };
    const sentence = 'regrowthCm: No hair grows so fast, or so slowly. Look at tape and date again.';
    expect(grown('10', '4')).toEqual([sentence]);
    expect(grown('1', '26')).toEqual([sentence]);
    expect(grown('3', '12')).toEqual([]);
  });
});
