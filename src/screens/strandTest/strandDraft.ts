import { type Mixture, mixture, orderForStrand } from '../../../shared/judgement/mixture';
import { issueTestPermit } from '../../../shared/judgement/permit';
import { judgeRisk } from '../../../shared/judgement/risk';
import { isLifting } from '../../../shared/judgement/stops';
import { mixQuestions, strandForm } from '../../../shared/records/forms/test';
import { type RawForm, readForm } from '../../../shared/records/readForm';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { writeForm } from '../../../shared/records/writeForm';
import type { Zone } from '../../../shared/records/zones';
import { accept, type Result, refuse } from '../../../shared/result';
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

/**
 * What stands in the fields of a new strand before anything is typed?
 * The mix of the strand before it, so that two places get the same; a look every 3 minutes when the hair is suspect,
 * else every 5: common practice, no source.
 */
export function draftStrand(record: ConsultationRecord, settings: Settings, zone: Zone): RawForm {
  const lookEveryMin = judgeRisk(record.answers) === 'low' ? '5' : '3';
  const before = record.strands.at(-1);
  if (before === undefined) return { zone, lookEveryMin };
  const { line, batch, developerPercent, ratio, heat, minutes, makersLimitMin, testG } = before;
  const mix = { line, batch, developerPercent, ratio, heat, minutes, makersLimitMin, testG };
  return { ...writeForm(strandForm, mix, settings.units), zone, lookEveryMin };
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
