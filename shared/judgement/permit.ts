import type { ConsultationRecord } from '../records/record';
import { findStrand } from '../records/record';
import type { Settings } from '../records/settings';
import type { Zone } from '../records/zones';
import { accept, type Result, refuse } from '../result';
import type { Decision } from './decisions';
import { findLimits, type Limits } from './limits';
import { type Mix, nameTested } from './mixes';
import { limitOnScalp, type ScalpLimits } from './onScalp';
import { findMixRefusal, findTestRefusal, type PermitRefusal } from './permitRefusal';
import { ASSUMED_TONER_MAX_MIN, TONER_MAX_PERCENT } from './tonerLimits';
import { findTonerRefusal } from './tonerRefusal';

declare const permitBrand: unique symbol;

/** Leave to weigh a strand's own few grams. Never for a head. */
export interface TestPermit {
  readonly [permitBrand]: 'test';
  readonly kind: 'test';
  readonly maxG: number;
  /** The strongest bottle of this house, per cent. */
  readonly maxDeveloperPercent: number;
}

/** Leave to weigh a bowl for one zone, within what was tested and decided. Derived anew at every use, frozen. */
export interface MixPermit extends ScalpLimits {
  readonly [permitBrand]: 'mix';
  readonly kind: 'mix';
  readonly zone: Zone;
  readonly strand: number;
  readonly decision: Decision;
  readonly tested: Mix;
}

/** Leave to weigh a toner for one zone: it only deposits, after a rinse, on hair that springs back wet. */
export interface TonerPermit extends Limits {
  readonly [permitBrand]: 'toner';
  readonly kind: 'toner';
  readonly zone: Zone;
}

const issued = new WeakSet<object>();

/** Was this permit issued here? A forged object is refused at run time whatever its type claims. */
export const isIssued = (permit: TestPermit | MixPermit | TonerPermit): boolean => issued.has(permit);

/** At most so many grams are mixed for a strand. Assumed because a few grams cover fifty hairs, and none for a head. */
export const ASSUMED_TEST_MAX_G = 20;

/** May a strand be tested now? The skin test may still be waiting: the strand is off the head. */
export function issueTestPermit(
  record: ConsultationRecord,
  settings: Settings,
): Result<TestPermit, PermitRefusal> {
  const refusal = findTestRefusal(record, settings);
  if (refusal !== null) return refuse(refusal);
  const permit = Object.freeze({
    kind: 'test',
    maxG: ASSUMED_TEST_MAX_G,
    maxDeveloperPercent: settings.profile.ceilingPercent,
  }) as TestPermit;
  issued.add(permit);
  return accept(permit);
}

/**
 * May a bowl be weighed for this zone now, and how strong may it be?
 * The only maker of a `MixPermit`: from a recorded, current, sound or rough outcome and a decision made after it.
 * Checked in tests/shared/judgement/permit.test.ts.
 */
export function issuePermit(
  record: ConsultationRecord,
  zone: Zone,
  settings: Settings,
  nowMs: number,
): Result<MixPermit, PermitRefusal> {
  const refusal = findMixRefusal(record, zone, settings, nowMs);
  if (refusal !== null) return refuse(refusal);
  const strand = findStrand(record, zone);
  if (strand === undefined || record.decision === null) return refuse({ code: 'noOutcome' });
  const { decision } = record.decision;
  const tested = Object.freeze(nameTested(strand));
  const limits = limitOnScalp(record, strand, settings, findLimits(record, strand, nowMs));
  const permit = Object.freeze({
    kind: 'mix',
    zone,
    strand: strand.number,
    decision,
    tested,
    ...limits,
    maxDeveloperPercent: Math.min(limits.maxDeveloperPercent, settings.profile.ceilingPercent),
  }) as MixPermit;
  issued.add(permit);
  return accept(permit);
}

/**
 * May a toner be weighed for this zone now? The only maker of a `TonerPermit`; derived anew at every use, frozen.
 * Checked in tests/shared/judgement/toner.test.ts.
 */
export function issueTonerPermit(
  record: ConsultationRecord,
  zone: Zone,
  settings: Settings,
  nowMs: number,
): Result<TonerPermit, PermitRefusal> {
  const refusal = findTonerRefusal(record, zone, settings, nowMs);
  if (refusal !== null) return refuse(refusal);
  const limits: Limits = {
    maxDeveloperPercent: Math.min(TONER_MAX_PERCENT, settings.profile.ceilingPercent),
    maxMinutes: ASSUMED_TONER_MAX_MIN,
  };
  const permit = Object.freeze({ kind: 'toner', zone, ...limits }) as TonerPermit;
  issued.add(permit);
  return accept(permit);
}
