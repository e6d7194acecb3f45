import { cleanup } from '@solidjs/testing-library';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { listChangedTopics } from '../../../../src/screens/settings/UndoSettings';
import { showStation } from '../stationOnTablet';

// Files share their modules, and another may have left its fields half filled in.
beforeEach(() => dropDrafts('settings'));
afterEach(cleanup);

async function openSettings() {
  const shown = await showStation({ settings: salon });
  await shown.tap('[data-act=settings]');
  await shown.tap('[data-act=who-Opal]');
  return shown;
}

it('one tap after a save puts back what stood before, on the page and at the bar', async () => {
  const shown = await openSettings();
  await shown.tap('[data-act=section-units]');
  expect(shown.look('[data-act=undo-settings]')).toBeNull();
  const other = salon.units.temperature === 'C' ? 'F' : 'C';
  await shown.answer(['temperature', other]);
  await shown.tap('[data-act=save-settings]');
  expect(shown.station.readState().settings.settings.units.temperature).toBe(other);
  expect(shown.find('[data-act=undo-settings]').textContent).toContain('Units and scale · Opal');
  await shown.tap('[data-act=undo-settings]');
  expect(shown.station.readState().settings).toMatchObject({ id: 3, settings: salon });
  expect(shown.find('.step-actions > p').textContent).toBe('Undone: what stood before holds again.');
  const pressed = shown.find(
    '[data-question=temperature] [data-option][aria-pressed=true], [data-question=temperature] input:checked',
  );
  expect(pressed.closest('[data-option]')?.getAttribute('data-option') ?? pressed.getAttribute('value')).toBe(
    salon.units.temperature,
  );
});

it('is not offered while something is typed and not saved', async () => {
  const shown = await openSettings();
  expect(shown.look('[data-act=undo-settings]')).not.toBeNull();
  await shown.tap('[data-act=section-units]');
  await shown.answer(['scaleStepG', salon.scaleStepG === 1 ? '0.5' : '1']);
  await shown.tap('[data-act=all-settings]');
  expect(shown.look('[data-act=undo-settings]')).toBeNull();
});

it('names the topics that differ, and the height not because of its unit', () => {
  const inches = { ...salon, units: { ...salon.units, length: 'in' as const }, altitudeM: 300 };
  const metric = { ...inches, units: { ...salon.units, length: 'cm' as const } };
  expect(listChangedTopics(inches, metric)).toEqual(['units']);
  expect(listChangedTopics(inches, { ...inches, chairs: 2, carried: !inches.carried })).toEqual([
    'salon',
    'rules',
  ]);
  expect(listChangedTopics(inches, { ...inches, learns: !inches.learns })).toEqual([]);
});
