import type { HeatThresholdId } from '../../shared/heat/thresholds';

/** What heat does to hair; that the iron itself stays hot is no matter of hair, and is said with the plan. */
export type HairThresholdId = Exclude<HeatThresholdId, 'staysHotAfterUse'>;
