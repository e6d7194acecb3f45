import { describe, expect, it } from 'vitest';
import { clientForm } from '../../../shared/records/forms/client';
import { hotToolsForm } from '../../../shared/records/forms/hotTools';
import { readForm } from '../../../shared/records/readForm';
import { defaultSettings } from '../../../shared/records/settings';
import { listMistakes, takeReadable } from '../../../src/parts/form/draft';

const context = { units: defaultSettings.units, hasAgeLine: true, nowMs: 0 };
const whole = { tool: 'flatIron', wetness: 'wet', daysAWeek: '3', forMonths: '24', settingC: '400' };

describe('what is kept while something is wrong', () => {
  it('leaves out a field that does not read', () => {
    const raw = { service: 'lighten', targetLevel: '70' };
    const kept = takeReadable(clientForm, raw, {}, context);
    expect(kept).toMatchObject({ service: 'lighten', targetLevel: undefined });
  });

  it('lets the kept answer stand where leaving out would mean the default', () => {
    const raw = { greyPercent: '5x0' };
    expect(takeReadable(clientForm, raw, { greyPercent: '50' }, context).greyPercent).toBe('50');
  });

  it('keeps the good rows of a list beside one that is not finished', () => {
    const raw = { habits: [whole, { tool: 'wand' }] };
    expect(takeReadable(hotToolsForm, raw, {}, context).habits).toEqual([whole]);
  });

  it('never says that there is no tool while the first one is being told', () => {
    const raw = { habits: [{ tool: 'wand' }] };
    expect(takeReadable(hotToolsForm, raw, {}, context).habits).toBeUndefined();
  });

  it('reads, whatever stood in the fields', () => {
    const raw = { habits: [whole, { ...whole, daysAWeek: '1e309' }], bleaches: 'NaN', smoke: 'green' };
    const kept = takeReadable(hotToolsForm, raw, {}, context);
    expect(readForm(hotToolsForm, kept, { ...context, isPartial: true }).ok).toBe(true);
  });

  it('is everything when everything reads', () => {
    const raw = { service: 'gloss' };
    expect(takeReadable(clientForm, raw, {}, context)).toBe(raw);
  });
});

describe('a mistake', () => {
  it('is what was typed wrong, not what has not been touched', () => {
    const raw = { habits: [{ ...whole, tool: undefined, settingC: '9000' }] };
    expect(listMistakes(hotToolsForm, raw, context).map(({ path, code }) => [path, code])).toEqual([
      ['habits.0.settingC', 'tooHigh'],
    ]);
  });

  it('is a field that was emptied again', () => {
    const mistakes = listMistakes(clientForm, { targetLevel: '' }, context);
    expect(mistakes.map(({ path, code }) => [path, code])).toEqual([['targetLevel', 'empty']]);
  });
});
