import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { defaultSettings, type Settings, settingsSchema } from '../../../../shared/records/settings';
import {
  draftSettings,
  findSettingsForm,
  readSettings,
} from '../../../../src/screens/settings/settingsDraft';
import { settings } from '../playStory';

const metric: Settings = { ...settings, units: { temperature: 'C', mass: 'g', length: 'cm' } };
const read = (change: Parameters<typeof readSettings>[0], inForce = metric) =>
  readSettings({ ...draftSettings(inForce), ...change }, inForce, 0);

describe('the settings', () => {
  it.each([
    ['of a new station', defaultSettings],
    ['of the invented salon', settings],
    ['in metres', metric],
    [
      'without an age line and without skin tests',
      { ...metric, profile: { ...metric.profile, ageLine: null, skinTestFor: [] } },
    ],
  ])('%s come back from their fields as they went in', (_title, inForce) => {
    const back = readSettings(draftSettings(inForce), inForce, 0);
    expect(back).toEqual({ ok: true, value: inForce });
    expect(back.ok && v.is(settingsSchema, back.value)).toBe(true);
  });

  it('take a height in feet where lengths are in inches: 5280 ft are 1609.344 m', () => {
    expect(read({ altitude: '5280' }, settings)).toMatchObject({ ok: true, value: { altitudeM: 1609.344 } });
    expect(draftSettings({ ...settings, altitudeM: 1609.344 }).altitude).toBe('5280');
    const { min, max } = (
      findSettingsForm(settings.units).altitude as { field: { min: number; max: number } }
    ).field;
    for (const feet of [min, max]) {
      const taken = read({ altitude: String(feet) }, settings);
      expect(taken.ok && v.is(settingsSchema, taken.value)).toBe(true);
    }
    expect(read({ altitude: String(max + 1) }, settings).ok).toBe(false);
  });

  it.each([
    ['altitude', '9000', 'tooHigh'],
    ['chairs', '0', 'tooLow'],
    ['chairs', '2.5', 'notOnStep'],
    ['chairs', '1e309', 'notFinite'],
    ['skinTestWaitH', '', 'empty'],
    ['skinTestLapsesDays', '-0', 'minusZero'],
    ['skinTestFor', [], 'notAnswered'],
  ])('say at %s that %o is %s', (path, typed, code) => {
    expect(read({ [path]: typed })).toMatchObject({ ok: false, error: [{ path, code }] });
  });

  it('say in which row of a list a name is missing or too long', () => {
    expect(read({ staff: [{ name: 'Opal' }, { name: ' ' }] })).toMatchObject({
      ok: false,
      error: [{ path: 'staff.1.name', code: 'empty' }],
    });
    expect(read({ shelf: [{ name: 'x'.repeat(41), kind: 'spray' }] })).toMatchObject({
      ok: false,
      error: [{ path: 'shelf.0.name', code: 'tooLong', most: 40 }],
    });
  });

  it('ask for no age where there is no line', () => {
    expect(read({ hasAgeLine: 'no', ageLine: 'x' })).toMatchObject({
      ok: true,
      value: { profile: { ageLine: null } },
    });
    expect(read({ hasAgeLine: 'yes', ageLine: 'x' })).toMatchObject({
      ok: false,
      error: [{ path: 'ageLine' }],
    });
  });
});
