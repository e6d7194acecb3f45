import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ClosedRecord } from '../../../../shared/records/closedRecord';
import { readDocument } from '../../../../shared/records/documents/document';
import { type Held, listDocuments } from '../../../../shared/records/documents/listDocuments';
import { findCarried } from '../../../../shared/records/json/carriedSettings';
import { defaultSettings, type Settings } from '../../../../shared/records/settings';
import { holds } from '../../seeded';
import { closedLogs, toldTests } from './world';

const nothing: Held = { closed: [], skinTests: [], erased: [] };
const list = (held: Partial<Held>, find: (id: number) => Settings = () => defaultSettings) => [
  ...listDocuments({ ...nothing, ...held }, find),
];
const named = (...from: Parameters<typeof list>) => list(...from).map(({ id }) => id);
const [, told] = toldTests;
if (told?.kind !== 'skinTest') throw new Error('no skin test in this world');
const { id, log } = told.body;
const plain = log.map(({ entry }) => entry);

describe('what a station tells another', () => {
  it('of a record is the same where it was closed and wherever it came in, whenever that was', () => {
    expect(closedLogs.length).toBeGreaterThan(4);
    holds(
      fc.property(fc.constantFrom(...closedLogs), fc.nat(), ({ closed, settings }, atMs) => {
        const home = (settingsId: number): Settings => ({
          ...(findCarried(settings, settingsId) ?? defaultSettings),
          staff: ['Juno'],
          contact: '555',
        });
        const elsewhere: ClosedRecord = JSON.parse(
          JSON.stringify({ ...closed, broughtIn: { atMs, settings } }),
        );
        const there = { ...defaultSettings, altitudeM: 900 };
        expect(named({ closed: [elsewhere] }, () => there)).toEqual(named({ closed: [closed] }, home));
        for (const each of list({ closed: [closed] }, home)) expect(readDocument(each).ok).toBe(true);
      }),
      200,
    );
  });

  it('of a skin test is each entry with the rules it was judged under, wherever it lies', () => {
    const strict = { ...defaultSettings, profile: { ...defaultSettings.profile, skinTestWaitH: 72 } };
    expect(named({ skinTests: [{ id, log: plain }] })).toEqual([told.id]);
    expect(named({ skinTests: [{ id, log: [{ told: log }] }] }, () => strict)).toEqual([told.id]);
    expect(named({ skinTests: [{ id, log: plain }] }, () => strict)).not.toEqual([told.id]);
  });

  it('leaves out the skin test that she did not agree to have kept', () => {
    const [putOn, ...rest] = plain as { payload: object }[];
    const forVisit = { ...putOn, payload: { ...putOn?.payload, forVisit: 'visit1' } };
    expect(list({ skinTests: [{ id, log: [forVisit, ...rest] }] })).toEqual([]);
  });

  it('says what was erased as it stands, and a record that cannot be read as it lies', () => {
    const [held] = closedLogs;
    const unread = { ...held?.closed, log: ['?'] } as ClosedRecord;
    const erased = { v: 9, ids: ['abcd'], more: 'of a newer edition' };
    expect(list({ closed: [unread], erased: [erased] })).toMatchObject([
      { kind: 'erased', body: erased },
      { kind: 'consultation', body: { log: ['?'], settings: [] } },
    ]);
  });
});
