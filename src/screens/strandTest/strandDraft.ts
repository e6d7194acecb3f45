import { listClosedMixes, nameMix } from '../../../shared/judgement/mixes';
import { type Mixture, mixture, orderForStrand } from '../../../shared/judgement/mixture';
import { issueTestPermit } from '../../../shared/judgement/permit';
import { findLookEveryMin, judgeRisk } from '../../../shared/judgement/risk';
import { isLifting } from '../../../shared/judgement/stops';
import { mixQuestions, type StrandAnswers, strandForm } from '../../../shared/records/forms/test';
import { type RawForm, readForm } from '../../../shared/records/readForm';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { writeForm } from '../../../shared/records/writeForm';
import type { Zone } from '../../../shared/records/zones';
import { accept, type Result, refuse } from '../../../shared/result';
import { findStuff } from '../findStuff';
import type { GramsRefusal } from '../GramsBeside';

/** Products of the shelf that fit what she wants, the likeliest kind first; a spray is none of them. */
export function listLines(record: ConsultationRecord, settings: Settings): readonly string[] {
  const service = record.answers.client?.service;
  const first = service !== undefined && isLifting(service) ? 'lightener' : 'colour';
  const fitting = settings.shelf.filter(({ kind }) => kind !== 'spray');
  return [
    ...fitting.filter(({ kind }) => kind === first),
    ...fitting.filter(({ kind }) => kind !== first),
  ].map(({ name }) => name);
}

/** A mix as a whole, and where it was taken from. */
export interface MixBefore {
  readonly from: 'strand' | 'lastTime';
  readonly mix: Omit<StrandAnswers, 'zone' | 'place' | 'buildUp' | 'hairs' | 'lookEveryMin'>;
}

/**
 * Which mix would a new strand of this zone get again? That of the strand before it, so that two places get the same;
 * else that of last time, where it is of the kind that she wants today. None that gummed or broke on this zone.
 */
export function findMixBefore(record: ConsultationRecord, settings: Settings, zone: Zone): MixBefore | null {
  const before = record.strands.at(-1);
  const zonesThen = record.lastTime?.zones ?? [];
  const then = zonesThen.find(({ strand }) => strand.zone === zone) ?? zonesThen[0];
  const found = before ?? then?.strand;
  if (found === undefined || listClosedMixes(record, { ...nameMix(found), zone }).length > 0) return null;
  const service = record.answers.client?.service;
  const fits =
    findStuff(settings, record.lastTime?.answers ?? record.answers, found.line) ===
    (service !== undefined && isLifting(service) ? 'lightener' : 'colour');
  if (before === undefined && !fits) return null;
  const { line, batch, developerPercent, ratio, heat, minutes, makersLimitMin, testG } = found;
  return {
    from: before === undefined ? 'lastTime' : 'strand',
    mix: { line, batch, developerPercent, ratio, heat, minutes, makersLimitMin, testG },
  };
}

/**
 * What stands in the fields of a new strand before anything is typed?
 * A mix that was used before, as a whole; a look every 3 minutes when the hair is suspect, else every 5.
 */
export function draftStrand(record: ConsultationRecord, settings: Settings, zone: Zone): RawForm {
  const lookEveryMin = findLookEveryMin(judgeRisk(record));
  const before = findMixBefore(record, settings, zone);
  if (before === null) return { zone, lookEveryMin };
  return { ...writeForm(strandForm, before.mix, settings.units), zone, lookEveryMin };
}

/** The questions that the grams of the little mix hang on. */
const { line: _line, batch: _batch, minutes: _minutes, ...strength } = mixQuestions;
const gramsForm = { ...strength, testG: strandForm.testG } as const;

/** How many grams of each for the strand? As far as the fields are filled in; a test permit's few grams only. */
export function computeTestMix(
  record: ConsultationRecord,
  settings: Settings,
  raw: RawForm,
  zone: Zone,
  nowMs: number,
): Result<Mixture, GramsRefusal> {
  const read = readForm(gramsForm, raw, { units: settings.units, hasAgeLine: false, nowMs });
  if (!read.ok) return refuse({ kind: 'open' });
  const permit = issueTestPermit(record, settings);
  if (!permit.ok) return refuse({ kind: 'permit', permit: permit.error });
  const order = orderForStrand({ ...read.value, zone, line: '', minutes: 0 });
  const made = mixture(permit.value, order, settings.scaleStepG);
  return made.ok ? accept(made.value) : refuse({ kind: 'mixture', mixture: made.error });
}
