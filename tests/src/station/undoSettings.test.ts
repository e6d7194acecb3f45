import { expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { defaultSettings } from '../../../shared/records/settings';
import { refuse } from '../../../shared/result';
import { makeTablet } from '../storage/tablet';
import { startAtMs, startSalon, startStation } from './stationUnderTest';

const inForce = ({ station }: Awaited<ReturnType<typeof startStation>>) => station.readState().settings;

it('puts the edition before back as a new one, keeps all three, and brings it back when undone again', async () => {
  const under = await startSalon(makeTablet());
  await under.station.saveSettings('Mia', { ...salon, chairs: 3 });
  expect(inForce(under)).toMatchObject({ id: 2, by: 'Mia', settings: { chairs: 3 } });
  expect((await under.station.undoSettings('Opal')).ok).toBe(true);
  expect(inForce(under)).toEqual({ id: 3, by: 'Opal', settings: salon });
  const find = under.station.readSettings();
  expect([0, 1, 2, 3].map((id) => find(id).chairs)).toEqual([
    defaultSettings.chairs,
    salon.chairs,
    3,
    salon.chairs,
  ]);
  await under.station.undoSettings('Opal');
  expect(inForce(under)).toMatchObject({ id: 4, settings: { chairs: 3 } });
});

it('is there after a restart, and in the backup another tablet brings in', async () => {
  const tablet = makeTablet();
  const under = await startSalon(tablet);
  await under.station.saveSettings('Mia', { ...salon, chairs: 3 });
  await under.station.undoSettings('Opal');
  const backup = [...under.station.backUp()].join('');
  await under.station.stopWriting();
  const again = await startStation(tablet);
  expect(inForce(again)).toEqual({ id: 3, by: 'Opal', settings: salon });
  const moved = await startStation(makeTablet());
  expect((await moved.station.bringIn(backup)).ok).toBe(true);
  expect(moved.station.readState().settings).toMatchObject({ by: 'Opal', settings: salon });
  await moved.station.undoSettings('Mia');
  expect(moved.station.readState().settings.settings.chairs).toBe(3);
});

it('does nothing on a station that nobody has set up', async () => {
  const under = await startStation(makeTablet());
  expect((await under.station.undoSettings('Opal')).ok).toBe(true);
  expect(inForce(under)).toEqual({ id: 0, by: '', settings: defaultSettings });
});

it('changes nothing where the store refuses, and says so', async () => {
  let isFull = false;
  const under = await startSalon(makeTablet(), ({ journal }) => ({
    journal: {
      ...journal,
      append: async (name, from, lines) =>
        isFull
          ? refuse({ copy: 'journal', kind: 'quotaExceeded', detail: 'no room' })
          : journal.append(name, from, lines),
    },
  }));
  under.clock.atMs = startAtMs + 1000;
  isFull = true;
  expect(await under.station.undoSettings('Opal')).toMatchObject({ ok: false, error: { kind: 'notSaved' } });
  expect(inForce(under)).toEqual({ id: 1, by: 'Opal', settings: salon });
});
