import { type ThinnedOnScale, type ThinningRefusal, thinOnScale } from '../../../shared/chemistry/thinning';
import type { AnswersOf, Form } from '../../../shared/records/form';
import { type FieldRefusal, type RawForm, readForm } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import { accept, type Result, refuse } from '../../../shared/result';

/** Wide, so that a bottle the law keeps off every head is answered in the law's words. ASSUMED range. */
const bottle = {
  kind: 'number',
  field: { quantity: 'percent', min: 0.5, max: 60 },
} as const;

/** Two bottles of one line at hand, neither of them the strength that is wanted. */
export const thinningForm = { strongPercent: bottle, weakPercent: bottle } as const satisfies Form;

/** What is wrong: a field, or the two bottles together. */
export type ThinningFault =
  | { readonly kind: 'fields'; readonly fields: readonly FieldRefusal[] }
  | { readonly kind: 'bottles'; readonly why: ThinningRefusal | 'overHouseCeiling' };

/** How many grams of each bottle, on the scale's step, give this much developer of the wanted strength and no stronger? */
export function computeThinning(
  raw: RawForm,
  wanted: { readonly wantedPercent: number; readonly totalG: number },
  settings: Settings,
  nowMs: number,
): Result<ThinnedOnScale & AnswersOf<typeof thinningForm>, ThinningFault> {
  const read = readForm(thinningForm, raw, { units: settings.units, hasAgeLine: false, nowMs });
  if (!read.ok) return refuse({ kind: 'fields', fields: read.error });
  const thinned = thinOnScale({ ...read.value, ...wanted }, settings.scaleStepG);
  const { ceilingPercent } = settings.profile;
  if (thinned.ok && read.value.strongPercent > ceilingPercent) {
    return refuse({ kind: 'bottles', why: 'overHouseCeiling' });
  }
  return thinned.ok
    ? accept({ ...thinned.value, ...read.value })
    : refuse({ kind: 'bottles', why: thinned.error });
}
