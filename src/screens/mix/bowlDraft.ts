import type { ThinnedOnScale } from '../../../shared/chemistry/thinning';
import { suggestColourG } from '../../../shared/hair/amount';
import { type Mixture, type MixtureRefusal, mixture } from '../../../shared/judgement/mixture';
import { issuePermit, type MixPermit } from '../../../shared/judgement/permit';
import type { AnswersOf } from '../../../shared/records/form';
import { bowlForm } from '../../../shared/records/forms/bowl';
import {
  type ConflictCode,
  type FieldRefusal,
  type RawForm,
  readForm,
} from '../../../shared/records/readForm';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { writeForm } from '../../../shared/records/writeForm';
import type { Zone } from '../../../shared/records/zones';
import { accept, type Result, refuse } from '../../../shared/result';
import { findShownLimits, writeNumber } from '../../../shared/units/numberField';
import type { GramsRefusal } from '../GramsBeside';
import { computeThinning, type ThinningFault, type thinningForm } from './thinningForm';

/**
 * What stands in the fields of a bowl before anything is typed?
 * The mix that was tested, taken down to what was decided; shades of the bowl before it, if there was one; as many grams as
 * this zone takes, or as its bowl before had.
 */
export function draftBowl(record: ConsultationRecord, settings: Settings, permit: MixPermit): RawForm {
  const tested = record.strands.find(({ number }) => number === permit.strand);
  const before = record.bowls.findLast(({ kind }) => kind === 'tested');
  const ofZone = record.bowls.findLast(({ kind, zone }) => kind === 'tested' && zone === permit.zone);
  const mix = {
    ...permit.tested,
    zone: permit.zone,
    batch: tested?.batch ?? '',
    developerPercent: permit.maxDeveloperPercent,
    minutes: permit.maxMinutes,
    heat: permit.maxHeat,
    colourG: ofZone?.colourG ?? suggestColourG(record.answers, permit.zone, permit.tested.ratio),
    shades: before?.shades ?? [{ shade: permit.tested.line, parts: 1 }],
  };
  return writeForm(bowlForm, mix, settings.units);
}

/** How many grams of each, as far as the fields are filled in? Within the permit, which is issued anew each time. */
export function computeBowl(
  record: ConsultationRecord,
  settings: Settings,
  raw: RawForm,
  zone: Zone,
  nowMs: number,
): Result<Mixture, GramsRefusal> {
  const permit = issuePermit(record, zone, settings, nowMs);
  if (!permit.ok) return refuse({ kind: 'permit', permit: permit.error });
  const read = readForm(bowlForm, { ...raw, zone }, { units: settings.units, hasAgeLine: false, nowMs });
  if (!read.ok) return refuse({ kind: 'open' });
  const made = mixture(permit.value, read.value, settings.scaleStepG);
  return made.ok ? accept(made.value) : refuse({ kind: 'mixture', mixture: made.error });
}

/** Two bottles that make the developer of this bowl, and the grams of each; null where one bottle has its strength. */
export type TwoBottles = ThinnedOnScale & AnswersOf<typeof thinningForm>;

/** Which two bottles stand in the draft, reckoned anew for what the bowl says now? */
export function computeBottles(
  raw: RawForm,
  { bottlePercent, developerG }: Mixture,
  settings: Settings,
  nowMs: number,
): Result<TwoBottles | null, ThinningFault> {
  const [strong, weak] = Array.isArray(raw.bottles) ? (raw.bottles as readonly RawForm[]) : [];
  if (strong === undefined || weak === undefined) return accept(null);
  const typed = { strongPercent: strong.percent, weakPercent: weak.percent };
  const made = computeThinning(typed, { wantedPercent: bottlePercent, totalG: developerG }, settings, nowMs);
  return made.ok && (made.value.strongG === 0 || made.value.weakG === 0)
    ? refuse({ kind: 'bottles', why: 'notPositive' })
    : made;
}

/** The same bowl of the strongest that is allowed, where the bottle in the field is stronger; null where it is not. */
export function computeWeaker(
  bowl: Result<Mixture, GramsRefusal>,
  record: ConsultationRecord,
  settings: Settings,
  raw: RawForm,
  zone: Zone,
  nowMs: number,
): Mixture | null {
  if (bowl.ok || bowl.error.kind !== 'mixture' || bowl.error.mixture.code !== 'stronger') return null;
  const developerPercent = writeNumber(
    bowl.error.mixture.most,
    bowlForm.developerPercent.field,
    settings.units,
  );
  const weaker = computeBowl(record, settings, { ...raw, developerPercent }, zone, nowMs);
  return weaker.ok ? weaker.value : null;
}

type Said = { readonly path: keyof typeof bowlForm; readonly code: ConflictCode };

/** At which field is it said that this is not mixed, where no figure would be allowed by being smaller? */
const saidAt: Partial<Readonly<Record<MixtureRefusal['code'], Said>>> = {
  anotherLine: { path: 'line', code: 'notAsTested' },
  anotherRatio: { path: 'ratio', code: 'notAsTested' },
  hotter: { path: 'heat', code: 'notAsTested' },
  stepTooCoarse: { path: 'colourG', code: 'stepTooCoarse' },
  tooMuch: { path: 'colourG', code: 'moreThanABowl' },
};

/** Which field goes beyond the permit or the scale, and how far may it go? Said there, beside what the scale says. */
export function listBeyond(
  bowl: Result<Mixture, GramsRefusal>,
  { units }: Settings,
): readonly FieldRefusal[] {
  if (bowl.ok || bowl.error.kind !== 'mixture') return [];
  const { mixture: refusal } = bowl.error;
  if (refusal.code !== 'stronger' && refusal.code !== 'longer') {
    const said = saidAt[refusal.code];
    return said === undefined ? [] : [said];
  }
  const path = refusal.code === 'stronger' ? 'developerPercent' : 'minutes';
  const field = { ...bowlForm[path].field, max: refusal.most };
  return [{ path, code: 'tooHigh', ...findShownLimits(field, units) }];
}
