import { render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { expect, it } from 'vitest';
import type { Settings } from '../../../../shared/records/settings';
import { accept } from '../../../../shared/result';
import { SettingsScreen } from '../../../../src/screens/settings/SettingsScreen';
import { choose, press, said, seen, type, typed } from '../bench';
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
  await type('chairs', '99');
  expect(said('chairs')).toContain('Too high.');
  await press('save-settings');
  expect(saved).toEqual([]);
  expect(typed('chairs')).toBe('99');
  await choose('chairs', '6');
  await choose('temperature', 'C');
  await press('save-settings');
  expect(saved).toEqual([{ ...settings, chairs: 6, units: { ...settings.units, temperature: 'C' } }]);
  expect(seen('.step-actions')).toContain('Saved.');
  unmount();
});
