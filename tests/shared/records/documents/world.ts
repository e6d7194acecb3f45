import { closeRecord } from '../../../../shared/records/closedRecord';
import type { RecordDocument } from '../../../../shared/records/documents/document';
import {
  documentConsultation,
  documentErased,
  documentSkinTest,
} from '../../../../shared/records/documents/document';
import { leanEdition, leanEntry } from '../../../../shared/records/documents/leanSettings';
import { defaultSettings } from '../../../../shared/records/settings';
import { shipped } from '../json/leaving';

/** Shipped logs as they closed; of each the settings its entries name. */
export const closedLogs = shipped.flatMap(({ record, log, settings }) => {
  const closed = closeRecord(record, log as Parameters<typeof closeRecord>[1]);
  return closed === null ? [] : [{ closed, settings }];
});

const startAtMs = Date.UTC(2026, 2, 3, 9);
const { profile } = defaultSettings;
const entry = (type: string, hours: number, payload: object) => ({
  entry: { v: 1, type, payload, atMs: startAtMs + hours * 3_600_000, by: 'Opal', settingsId: 0 },
  profile,
});
const putOn = entry('SKIN_TEST_PUT_ON', 0, {
  ticket: 'Q.F.',
  method: 'openApplication',
  site: 'elbow',
  line: '',
  putOnAtMs: startAtMs,
  seen: 'notReadYet',
});
const seen = (hours: number, what: string) => entry('SKIN_TEST_READ', hours, { seen: what });

/** One skin test as stations may tell it: on, read at two of them, gone on with at one. */
export const toldTests: readonly RecordDocument[] = [
  [putOn],
  [putOn, seen(49, 'nothing')],
  [putOn, seen(50, 'reaction')],
  [putOn, seen(49, 'nothing'), seen(60, 'reaction')],
].map((log) => documentSkinTest({ id: 'test0001', log: log.map(leanEntry) }));

export const bodies = closedLogs
  .slice(0, 4)
  .map(({ closed: { id, log }, settings }) => ({ id, settings: settings.map(leanEdition), log }));

/** Invented documents of one salon: records, some of them told twice, a skin test told in four ways, and two erasings. */
export const world: readonly RecordDocument[] = [
  ...bodies.map(documentConsultation),
  ...bodies.map((body) => documentConsultation({ ...body, log: [...body.log].reverse() })),
  ...toldTests,
  documentSkinTest({ id: 'test0002', log: [putOn].map(leanEntry) }),
  documentErased({ v: 1, ids: [bodies[0]?.id], atMs: startAtMs, by: 'Opal', code: 'sheAsked' }),
  documentErased({
    v: 1,
    ids: ['test0002', bodies[1]?.id],
    atMs: startAtMs + 1,
    by: 'Juno',
    code: 'sheAsked',
  }),
];
