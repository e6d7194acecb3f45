import { type Mixture, mixture } from '../../../shared/judgement/mixture';
import { issueTonerPermit } from '../../../shared/judgement/permit';
import { tonerForm } from '../../../shared/records/forms/bowl';
import { type RawForm, readForm } from '../../../shared/records/readForm';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { writeForm } from '../../../shared/records/writeForm';
import type { Zone } from '../../../shared/records/zones';
import { accept, type Result, refuse } from '../../../shared/result';
import type { GramsRefusal } from '../GramsBeside';

/** What stands in the fields of a toner before anything is typed? The toner before it, so that two zones get the same. */
export function draftToner({ bowls }: ConsultationRecord, settings: Settings, shade: string): RawForm {
  const before = bowls.findLast(({ kind }) => kind === 'toner');
  const mix = before === undefined ? { shades: [{ shade, parts: 1 }] } : { ...before };
  return writeForm(tonerForm, mix, settings.units);
}

/** How many grams of each, as far as the fields are filled in? Within a toner's permit, issued anew each time. */
export function computeToner(
  record: ConsultationRecord,
  settings: Settings,
  raw: RawForm,
  zone: Zone,
  nowMs: number,
): Result<Mixture, GramsRefusal> {
  const permit = issueTonerPermit(record, zone, settings, nowMs);
  if (!permit.ok) return refuse({ kind: 'permit', permit: permit.error });
  const read = readForm(tonerForm, { ...raw, zone }, { units: settings.units, hasAgeLine: false, nowMs });
  if (!read.ok) return refuse({ kind: 'open' });
  const made = mixture(permit.value, { ...read.value, heat: 'none' }, settings.scaleStepG);
  return made.ok ? accept(made.value) : refuse({ kind: 'mixture', mixture: made.error });
}
