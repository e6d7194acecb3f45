import { cleanup } from '@solidjs/testing-library';
import fc from 'fast-check';
import { afterEach, expect, it } from 'vitest';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import { salon } from '../../../../seeds/salon';
import { writeSupportFile } from '../../../../src/screens/diagnosis/supportFile';
import { gatherTold } from '../../../../src/screens/diagnosis/told';
import { startStation } from '../../station/stationUnderTest';
import { makeTablet } from '../../storage/tablet';
import { makeDevice } from '../alarmDevice';
import { showStation } from '../stationOnTablet';
import { toldWell } from './toldWell';

afterEach(cleanup);

/** Nothing that could stand in a file of any tablet by chance. */
const marker = fc
  .array(fc.constantFrom(...'QXZJVKWqxzjvkw'), { minLength: 6, maxLength: 10 })
  .map((letters) => letters.join(''));

/** Every text of a value, however deep. */
function* listTexts(value: unknown): Generator<string> {
  if (typeof value === 'string') yield value;
  else if (typeof value === 'object' && value !== null)
    for (const each of Object.values(value)) yield* listTexts(each);
}

it('holds no ticket, no name, no product, no note and no id of any record or list', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(marker, { minLength: 6, maxLength: 6, comparator: 'IsStrictlyEqual' }),
      async ([ticket = '', name = '', other = '', product = '', contact = '', idBegins = '']) => {
        const { station, clock } = await startStation(
          makeTablet(),
          undefined,
          undefined,
          endsIronedWet.startAtMs,
          idBegins,
        );
        const shelf = [
          ...salon.shelf,
          { name: product, kind: 'spray' as const, ingredients: `Aqua, ${product}` },
        ];
        await station.saveSettings(name, { ...salon, staff: [...salon.staff, name, other], shelf, contact });
        let id = '';
        for (const { afterMs, raw } of endsIronedWet.steps.slice(0, 12)) {
          clock.atMs += afterMs;
          if (raw.type === 'OPENED') {
            const opened = await station.open(name, { ...raw.answers, ticket });
            if (opened.ok) id = opened.value;
          } else await station.submit(id, name, raw);
        }
        await station.putOnSkinTest(other, { ticket, line: product, site: 'elbow', method: 'patch' });
        const state = station.readState();
        station.note({ kind: 'refusedLog', name: `open-${id}`, ticket, fault: { code: 'empty' } as never });
        station.note({
          kind: 'setAside',
          note: { name: `open-${id}`, copy: 'index', reason: 'gap', kept: `open-${id}.1` },
        });
        const file = writeSupportFile(
          gatherTold({
            atMs: clock.atMs,
            facts: toldWell.facts,
            examined: await station.examine(),
            lastBackupAtMs: clock.atMs,
            behindMs: 0,
            state: station.readState(),
            tablet: makeDevice().device,
            updates: { build: toldWell.build, waiting: () => null },
            jumps: [{ aheadMs: 60_000 }],
          }),
        );
        const held = [...station.readLogs().values(), ...state.settings.settings.staff];
        // They are there to be found: who is open, and the lists.
        expect([...listTexts(held)]).toEqual(expect.arrayContaining([ticket, name, other, product, contact]));
        expect(id.startsWith(idBegins)).toBe(true);
        for (const text of [ticket, name, other, product, contact, idBegins, ...salon.staff]) {
          expect(file).not.toContain(text);
        }
        for (const entry of salon.shelf) expect(file).not.toContain(entry.name);
      },
    ),
    { numRuns: 25 },
  );
});

it('is JSON with its kind and version, and says times in UTC', () => {
  const file = JSON.parse(writeSupportFile(toldWell));
  expect(file).toMatchObject({
    kind: 'strandproof-support',
    version: 1,
    at: new Date(toldWell.atMs).toISOString(),
    build: '0.1.0 aaaaaaaa',
    examined: { copies: { journal: null, index: null }, aside: [] },
    facts: { zone: 'America/St_Johns', widthPx: 1280 },
  });
  expect(Object.keys(file).filter((key) => key.endsWith('Ms'))).toEqual(['jumpsMs', 'behindMs']);
});

it('stands behind the settings, with as many things to see to as it found, and a backup makes one fewer', async () => {
  const shown = await showStation({
    settings: salon,
    device: makeDevice().device,
    facts: { read: async () => toldWell.facts, lastBackupAtMs: () => null, noteBackup: () => undefined },
  });
  await shown.tap('[data-act=settings]');
  await shown.tap('[data-act=who-Opal]');
  await shown.tap('[data-act=section-diagnosis]');
  await shown.settle();
  expect(shown.find('h1').textContent).toBe('Settings · Diagnosis');
  expect(shown.find('[data-to-see]').dataset.toSee).toBe('1');
  expect(shown.find('[data-topic=backup]').dataset.finding).toBe('look');
  expect(shown.find('[data-topic=copies]').dataset.finding).toBe('good');
  expect(shown.look('[data-act=save-settings]')).toBeNull();
});
