import { cleanup } from '@solidjs/testing-library';
import { afterEach, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import { refuse } from '../../../shared/result';
import { planSaid } from './planSaid';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

/** Q.F. with her plan given, on a tablet that takes no closed record. */
async function endWithoutRoom() {
  const store = { isRefusing: true };
  const shown = await showStation({
    settings: salon,
    change: ({ journal }) => ({
      journal: {
        ...journal,
        append: async (name, from, lines) =>
          store.isRefusing && name.startsWith('closed')
            ? refuse({ copy: 'journal', kind: 'quotaExceeded', detail: 'no room' })
            : journal.append(name, from, lines),
      },
    }),
  });
  const id = await shown.play(endsIronedWet.steps.slice(0, -1));
  await shown.tap('[data-chair="3"]');
  await shown.tap('[data-act=who-Opal]');
  await shown.answer(...planSaid);
  await shown.tap('[data-act=give-plan]');
  return { ...shown, store, id };
}

it('says of a consultation that is over that its record is not written, and writes it when asked again', async () => {
  const shown = await endWithoutRoom();
  expect(shown.find('main').dataset.step).toBe('ended');
  expect(shown.find('[data-panel=not-written]').textContent).toContain('Her record is not written yet.');
  expect(shown.look('[data-act=more-for-client]')).toBeNull();
  await shown.tap('[data-act=finish-closing]');
  expect(shown.find('[data-refusal]').dataset.refusal).toBe('notSaved');
  shown.store.isRefusing = false;
  await shown.tap('[data-act=finish-closing]');
  expect(shown.station.readState().closed).toMatchObject([{ id: shown.id, how: 'done' }]);
  expect(shown.find('[data-ended]').textContent).toBe('Q.F.: done. The record is kept.');
});

it('says so at her place on the bar too', async () => {
  const shown = await endWithoutRoom();
  await shown.tap('[data-act=bar]');
  expect(shown.find('[data-chair="3"] .place-what').textContent).toBe('Record not written');
  expect(shown.find('[data-chair="3"] [data-tone]').dataset.tone).toBe('over');
  await shown.tap('[data-act=day]');
  expect(shown.find('[data-panel=open] li').textContent).toContain('record not written');
});
