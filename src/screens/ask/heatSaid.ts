import { listThresholdsMet } from '../../../shared/heat/thresholds';
import { brand } from '../../../shared/units/brand';
import type { HairThresholdId } from '../../words/hairThreshold';

/** What today's setting does to dry hair; that the iron itself stays hot is said elsewhere. */
export const listHairThresholds = (settingC: number): readonly HairThresholdId[] =>
  listThresholdsMet(brand(settingC), 'dry').filter((id): id is HairThresholdId => id !== 'staysHotAfterUse');
