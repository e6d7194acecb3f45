import { render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { expect, it } from 'vitest';
import { settingsForm } from '../../../../shared/records/forms/settings';
import type { Settings } from '../../../../shared/records/settings';
import { accept } from '../../../../shared/result';
import { SettingsScreen } from '../../../../src/screens/settings/SettingsScreen';
import { settingsSections } from '../../../../src/screens/settings/settingsSections';
import { act, choose, hasAct, press, said, seen, type, typed } from '../bench';
import { settings } from '../playStory';

it('keeps a refused field as it was typed and saves nothing, then saves a new edition', async () => {
  const [inForce, setInForce] = createSignal<Settings>(settings);
  const saved: Settings[] = [];
  const save = async (next: Settings) => {
    saved.push(next);
    setInForce(next);
    return accept(undefined);
  };
  const { unmount } = render(() => (
    <SettingsScreen inForce={inForce()} nowMs={0} save={save} onBar={() => undefined} />
  ));
  await press('section-salon');
  await type('chairs', '99');
  expect(said('chairs')).toContain('Too high.');
  await press('save-settings');
  expect(saved).toEqual([]);
  expect(typed('chairs')).toBe('99');
  await choose('chairs', '6');
  await press('all-settings');
  await press('section-units');
  await choose('temperature', 'C');
  await press('save-settings');
  expect(saved).toEqual([{ ...settings, chairs: 6, units: { ...settings.units, temperature: 'C' } }]);
  expect(seen('.step-actions')).toContain('Saved.');
  unmount();
});

it.each([
  ['metres and Celsius', { temperature: 'C', mass: 'g', length: 'cm' }, '-430 to 5500 metres. Water'],
  ['feet and Fahrenheit', { temperature: 'F', mass: 'oz', length: 'in' }, '-1410 to 18040 feet. Water'],
] as const)('says unit and limits at each figure, in %s', async (_name, units, altitude) => {
  const { unmount } = render(() => (
    <SettingsScreen
      inForce={{ ...settings, units, profile: { ...settings.profile, ageLine: 16 } }}
      nowMs={0}
      save={async () => accept(undefined)}
      onBar={() => undefined}
    />
  ));
  const hint = (name: string) => seen(`[data-question="${name}"] > .field-hint`);
  const open = async (section: string) => {
    if (hasAct('all-settings')) await press('all-settings');
    await press(`section-${section}`);
  };
  await open('salon');
  expect(hint('altitude').replace('−', '-').replaceAll(',', '')).toContain(altitude);
  expect(hint('chairs')).toBe('1 to 30.');
  await open('rules');
  expect(hint('ageLine')).toBe('10 to 21 years.');
  await open('skinTest');
  expect(hint('skinTestWaitH')).toContain('0.5 to 96 hours.');
  expect(hint('skinTestLapsesDays')).toContain('1 to 365 days.');
  await open('staff');
  expect(hint('staff')).toBe('Up to 30 first names, each at most 20 letters.');
  await open('shelf');
  expect(hint('shelf')).toContain('Up to 60 products, each at most 40 letters.');
  unmount();
});

it('shows by topic what holds now, and goes to the page of what was refused', async () => {
  const { unmount } = render(() => (
    <SettingsScreen
      inForce={settings}
      nowMs={0}
      save={async () => accept(undefined)}
      onBar={() => undefined}
    />
  ));
  expect(act('section-staff').textContent).toContain('Opal, Juno, Wren');
  expect(act('section-salon').textContent).toContain('8 chairs · 591 feet above the sea');
  expect(act('section-units').textContent).toContain('°F · Grams · Inches · 1 g');
  expect(act('section-skinTest').textContent).toContain('read after 48 h, too old after 28 days');
  expect(act('section-rules').textContent?.replaceAll('\u00a0', ' ')).toContain(
    'nobody under 16 · no bottle over 12 % · carried outcomes: no',
  );
  expect(hasAct('section-tablet')).toBe(false);
  await press('section-skinTest');
  await type('skinTestWaitH', '500');
  await press('all-settings');
  await press('section-staff');
  await press('save-settings');
  expect(said('skinTestWaitH')).toContain('Too high.');
  unmount();
});

it('has every question on one page', () => {
  expect(Object.values(settingsSections).flat().sort()).toEqual(Object.keys(settingsForm).sort());
});
