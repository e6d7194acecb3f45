import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { salon } from '../../../../seeds/salon';
import type { ClosedRecord } from '../../../../shared/records/closedRecord';
import { readDocument } from '../../../../shared/records/documents/document';
import {
  leanEdition,
  leanEntry,
  wholeEdition,
  wholeEntry,
} from '../../../../shared/records/documents/leanSettings';
import { listDocuments } from '../../../../shared/records/documents/listDocuments';
import { listEditions } from '../../../../shared/records/json/carriedSettings';
import { defaultSettings, type Settings, settingsSchema } from '../../../../shared/records/settings';
import type { ShippedLog } from '../shippedLogs';

const fixtures = join(import.meta.dirname, '..', 'fixtures');
const houseSettings: Settings = {
  ...salon,
  carried: true,
  figuresByStylist: true,
  profile: { ...salon.profile, ceilingPercent: 9, isAnyReactionAbsolute: true },
};
const edition = (settings: Settings) => {
  const [only] = listEditions([{ settingsId: 0 }], () => settings);
  if (only === undefined) throw new Error('no edition');
  return only;
};
/** Under these settings, as a tablet holds it, by the name a station would give it. */
const nameOf = (log: readonly unknown[], settings: Settings): string => {
  const closed = { id: 'shipped1', log } as unknown as ClosedRecord;
  const [document] = listDocuments({ closed: [closed], skinTests: [], erased: [] }, () => settings);
  if (document === undefined || !readDocument(document).ok) throw new Error('no document');
  return document.id;
};

// Of the first log that each model version left behind. Where one of these changes, stations of before and of today name one
// record in two ways, and each takes the other's for a record that was told twice: a digest here is never written anew.
const names = [
  '9f73dd99c8b6f9f4446b3d83e6b7bfff9e07aed4f3762d21aabb88422293efa7',
  '677bc2d360a686408cbdc84d061735b67c143de28c8fabbf3cd1913fbf68c02a',
  '8730366698cf14493db630c4e6e96a2857072abf90a408dc154bfbf49d7fda12',
  '56187c0e416d3f6e7daacdc1d107f8c495224a1ebcd4bb50df39ef7d271cb572',
  '027014e1e9c1fefdee448b5a0288486fe7d026ce522e798a1e43dc89756baf31',
  'd11828192bc939b301b7ab8f4731823cfbac2fc1995095f7d09b9ae83e0b198e',
];

describe('the settings in a document', () => {
  it.each(names.map((name, index) => [index + 1, name] as const))(
    'name the record of model %i as ever',
    (version, name) => {
      const file = readFileSync(join(fixtures, `modelVersion${version}.json`), 'utf8');
      const [shipped] = JSON.parse(file) as readonly ShippedLog[];
      if (shipped === undefined) throw new Error('no log');
      const settings = v.parse(settingsSchema, shipped.settings);
      expect(nameOf(shipped.log, settings)).toBe(`consultation:shipped1:${name}`);
      // As a tablet holds them that knows no member that came later.
      expect(nameOf(shipped.log, shipped.settings)).toBe(`consultation:shipped1:${name}`);
    },
  );

  it('say nothing that their lack says, and nothing of figures', () => {
    const { settings } = leanEdition(edition(defaultSettings));
    expect(Object.keys(settings).sort()).toEqual([
      ...['altitudeM', 'chairs', 'locale', 'profile', 'scaleStepG', 'shelf', 'units'],
    ]);
    expect(Object.keys(settings.profile).sort()).toEqual([
      ...['ageLine', 'skinTestFor', 'skinTestLapsesDays', 'skinTestWaitH'],
    ]);
    expect(leanEdition(edition(houseSettings)).settings).toMatchObject({
      carried: true,
      profile: { ceilingPercent: 9, isAnyReactionAbsolute: true },
    });
    expect(leanEdition(edition(houseSettings)).settings).not.toHaveProperty('figuresByStylist');
  });

  it('are whole again for whoever judges, and as lean as they were when they go on', () => {
    for (const settings of [defaultSettings, salon, houseSettings]) {
      const whole = edition({ ...settings, figuresByStylist: false });
      const lean = leanEdition(edition(settings));
      expect(wholeEdition(lean)).toEqual(whole);
      expect(leanEdition(wholeEdition(lean))).toEqual(lean);
      const entry = { entry: {}, profile: settings.profile };
      expect(wholeEntry(leanEntry(entry))).toEqual(entry);
    }
  });

  it('that are none go along as they lie', () => {
    for (const none of [null, 'settings', [], { id: 0 }, { id: 0, settings: null }])
      expect(leanEdition(none as never)).toEqual(none);
  });
});
