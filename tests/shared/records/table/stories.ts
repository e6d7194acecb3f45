import type { ConsultationRecord } from '../../../../shared/records/record';
import { flatten } from '../../../../shared/records/table/flatten';
import type { UnitSettings } from '../../../../shared/units/quantity';
import { playUntil } from '../../../src/screens/playStory';
import { makeShippedLogs } from '../shippedLogs';

/** RFC 3339 in UTC: as a tablet in Greenwich would write it. */
export const writeMoment = (atMs: number): string => new Date(atMs).toISOString().replace('Z', '+00:00');

export const rowsOf = (record: ConsultationRecord, units: UnitSettings) =>
  flatten(record, { units, writeMoment });

/** Whole consultations of the invented salon: lifted, corrected, broken, toned, carried, with a reaction. */
export const stories: readonly (readonly [string, ConsultationRecord])[] = [
  ...makeShippedLogs().map(({ name, record }) => [name, record] as const),
  ['whole', playUntil('whole').consultation.record],
];
