import { cleanup } from '@solidjs/testing-library';
import { afterEach, expect, it } from 'vitest';
import { endsIronedWet } from '../../../../../seeds/endsIronedWet';
import { salon } from '../../../../../seeds/salon';
import { makeTablet } from '../../../storage/tablet';
import { makeDevice } from '../../alarmDevice';
import { showStation } from '../../stationOnTablet';

afterEach(cleanup);

const minute = 60_000;

it('a boil that is over calls softly, after a reload too, is silenced, and stands on the bar', async () => {
  const tablet = makeTablet();
  const made = makeDevice();
  const shown = await showStation({ settings: salon, tablet, device: made.device });
  const startedAtMs = endsIronedWet.startAtMs;
  await shown.station.startBenchTrial('Opal', { kind: 'boilSet', hair: 'untouched' });
  await shown.turnClock(startedAtMs + 29 * minute);
  expect([made.isCalling(), shown.look('[data-act=bench-due]')]).toEqual([false, null]);
  await shown.turnClock(startedAtMs + 31 * minute);
  expect(made.isCalling()).toBe(true);
  expect(shown.find('[data-act=bench-due]').textContent).toContain('1 due');
  await shown.tap('[data-act=silence]');
  expect(made.isCalling()).toBe(false);
  expect(shown.look('[data-act=bench-due]')).not.toBeNull();
  cleanup();
  const reloaded = makeDevice();
  const atMs = startedAtMs + 32 * minute;
  await showStation({ settings: salon, tablet, device: reloaded.device, atMs });
  expect(reloaded.calling()?.kind).toBe('look');
});
