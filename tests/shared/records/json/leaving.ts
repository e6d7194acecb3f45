import { listEditions } from '../../../../shared/records/json/carriedSettings';
import {
  type FileHead,
  type LeavingConsultation,
  readConsultations,
  writeConsultations,
} from '../../../../shared/records/json/consultationFile';
import { defaultSettings, type Settings } from '../../../../shared/records/settings';
import { makeShippedLogs, type ShippedLog } from '../shippedLogs';
import { writeMoment } from '../table/stories';

export const head: FileHead = {
  madeAtMs: Date.UTC(2026, 2, 3, 18),
  isDemo: false,
  from: '2026-03-03',
  to: '2026-03-03',
  skinTests: [],
  unread: [],
};

/** A consultation on its way out, under whatever settings its log names. */
export const leave = (
  { record, log }: Pick<ShippedLog, 'record' | 'log'>,
  find: (settingsId: number) => Settings = () => defaultSettings,
): LeavingConsultation => ({
  record,
  log,
  settings: listEditions(log, find),
});

type ReadFile = ReturnType<typeof readConsultations> extends Generator<void, infer Read> ? Read : never;

/** Every log that this model leaves behind, as it leaves the house; their names are none a station gives. */
export const shipped: readonly LeavingConsultation[] = makeShippedLogs().map(
  ({ log, record, settings }, index) =>
    leave({ log, record: { ...record, id: `shipped${index}` } }, () => settings),
);

/** Reads a file at one go. */
export function readAtOnce(file: string): ReadFile {
  const pieces = readConsultations(file);
  for (let next = pieces.next(); ; next = pieces.next()) if (next.done === true) return next.value;
}

export const write = (leaving: Iterable<LeavingConsultation>, change: Partial<FileHead> = {}): string =>
  [...writeConsultations(leaving, { ...head, ...change }, writeMoment)].join('');
