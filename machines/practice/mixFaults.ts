import { nameTested } from '../../shared/judgement/mixes';
import { isLifting } from '../../shared/judgement/stops';
import { isAtLeastAsBad } from '../../shared/records/gradeOutcome';
import { readPlanned } from '../../shared/records/planKey';
import type { ConsultationRecord, StrandRecord } from '../../shared/records/record';
import type { Zone } from '../../shared/records/zones';
import { computeWear } from './strength';

/**
 * `provesNothing`: so weak or so short that it says nothing of the hair. `heatOnLightener`: no dryer or lamp on lightener
 * unless the maker says so (burn first-aid guidance and case reports), and no maker of a lesson does.
 */
export type MixFault = 'provesNothing' | 'heatOnLightener';

/** A strand that was tested in a mix that no strand is to be tested in. */
export interface MixFaultPart {
  readonly zone: Zone;
  readonly strand: number;
  readonly fault: MixFault;
}

/** From this share of the usual wear on a sound strand proves something. Assumed because three minutes of it lift less than a level, and wear next to nothing. */
export const ASSUMED_PROVES_FROM = 0.1;

/** What is wrong with the mix of this strand; null: nothing. What failed has proved enough, however short it was. */
export function findMixFault(strand: StrandRecord): MixFault | null {
  const { service = '' } = readPlanned(strand.planKey);
  if (service === 'lighten' && strand.heat === 'dryHeat') return 'heatOnLightener';
  const { developerPercent, heat, minutes } = nameTested(strand);
  const hasFailed = strand.outcome !== null && isAtLeastAsBad(strand.outcome.grade, 'gummy');
  if (!isLifting(service) || hasFailed) return null;
  const wear = computeWear({ developerPercent, heat, isLifting: true }, minutes);
  return wear < ASSUMED_PROVES_FROM ? 'provesNothing' : null;
}

/** Which strands that came off by themselves or were taken off had such a mix? Checked in tests/machines/practice/mixFaults.test.ts. */
export const listMixFaults = ({ strands }: ConsultationRecord): readonly MixFaultPart[] =>
  strands
    .filter(({ ended }) => ended !== null && ended.how !== 'discarded')
    .flatMap((strand) => {
      const fault = findMixFault(strand);
      return fault === null ? [] : [{ zone: strand.zone, strand: strand.number, fault }];
    });
