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
const shelfOf = (more: Partial<Settings['shelf'][number]>): Settings => ({
  ...metric,
  shelf: [
    { name: 'Sandbar cream', kind: 'colour' },
    { name: 'Cove mist', kind: 'spray', ...more },
  ],
});
const withTrial = (trial: NonNullable<Settings['shelf'][number]['trial']>) => shelfOf({ trial });
const withList = shelfOf({
  ingredients: 'Aqua,\r\n dimethicon;\tPARFUM',
  makerSaysUpToC: 230,
  trial: { atMs: 5, bareS: 12, sprayedS: 25 },
});
const read = (change: Parameters<typeof readSettings>[0], inForce = metric) =>
  readSettings({ ...draftSettings(inForce), ...change }, inForce, 0);

describe('the settings', () => {
  it.each([
    ['of a new station', defaultSettings],
    ['of the invented salon', settings],
    ['in metres', metric],
    ['with a list, a maker’s figure and a trial', withList],
    ['with a trial in which nothing was felt', withTrial({ atMs: 5, bareS: null, sprayedS: null })],
    [
      'with a trial stamped ahead of a clock that was set back',
      withTrial({ atMs: 9e12, bareS: 1, sprayedS: 2 }),
    ],
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

  it('keep the list of a spray whose name or kind is changed in its row', () => {
    const rows = draftSettings(withList).shelf as readonly Record<string, string>[];
    const changed = rows.map((row) => ({ ...row, name: `${row.name} N`, kind: 'colour' }));
    const [, kept] = withList.shelf;
    expect(read({ shelf: changed }, withList)).toMatchObject({
      ok: true,
      value: { shelf: [{}, { ...kept, name: 'Cove mist N', kind: 'colour' }] },
    });
  });

  it.each([
    ['ingredients', 'x'.repeat(50_000), 'tooLong'],
    ['makerSaysUpToC', '900', 'tooHigh'],
    ['makerSaysUpToC', 'hot', 'notANumber'],
  ])('say at %s of a spray what is wrong with it', (name, typed, code) => {
    expect(read({ shelf: [{ name: 'Cove mist', kind: 'spray', [name]: typed }] })).toMatchObject({
      ok: false,
      error: [{ path: `shelf.0.${name}`, code }],
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
