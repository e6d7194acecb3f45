import type { ConsultationEvent } from '../../shared/records/event';
import type { ConsultationRecord } from '../../shared/records/record';

/** One consultation of a day's file, as the tests look at it. */
interface OfDay {
  readonly record: ConsultationRecord;
  readonly log: readonly ConsultationEvent[];
}

interface DayFile {
  readonly consultations: readonly {
    readonly record: ConsultationRecord;
    readonly log: readonly { readonly entry: ConsultationEvent }[];
  }[];
}

/** What the station says of its day, as it hands it out: closed ones first, then who is open. */
export const readDayFile = (text: string): readonly OfDay[] =>
  (JSON.parse(text) as DayFile).consultations.map(({ record, log }) => ({
    record,
    log: log.map(({ entry }) => entry),
  }));
