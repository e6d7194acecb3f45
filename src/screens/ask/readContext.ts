import type { Form } from '../../../shared/records/form';
import type { RawForm, ReadingContext } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import { writeForm } from '../../../shared/records/writeForm';

/** Under what a form is read on this station now. */
export const makeReading = (settings: Settings, nowMs: number): Omit<ReadingContext, 'isPartial'> => ({
  units: settings.units,
  hasAgeLine: settings.profile.ageLine !== null,
  nowMs,
});

/** The kept answers as they would stand in the fields. */
export const writeKept = (
  form: Form,
  answers: Readonly<Record<string, unknown>> | undefined,
  settings: Settings,
): RawForm => (answers === undefined ? {} : writeForm(form, answers, settings.units));
