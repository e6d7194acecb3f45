import type { Decision } from './decisions';
import type { Mix } from './mixes';

/** How strong, and for how long, under a decision. Never above what was tested. */
export interface Limits {
  /** The strongest developer, per cent. */
  readonly maxDeveloperPercent: number;
  readonly maxMinutes: number;
}

/** One trade step of developer (10 volumes) in per cent: the trade's nominal table, common practice. */
const ONE_STEP_PERCENT = 3;
/**
 * When the developer cannot go down any further, a gentler mix stays this share of the time. Assumed because a quarter
 * less is the smallest cut a clock on the head makes sure of.
 */
export const ASSUMED_GENTLER_TIME = 0.75;

/**
 * How far does this decision go below what was tested? 10 vol deposits, 20 vol lifts 1–2: common practice, no source.
 * Checked in tests/shared/judgement/permit.test.ts.
 */
export function limitBy(decision: Decision, tested: Mix): Limits {
  const { developerPercent, minutes } = tested;
  const isLowest = developerPercent <= ONE_STEP_PERCENT;
  const lower = isLowest ? developerPercent : developerPercent - ONE_STEP_PERCENT;
  const shorter = isLowest ? minutes * ASSUMED_GENTLER_TIME : minutes;
  switch (decision) {
    case 'gentler':
      return { maxDeveloperPercent: lower, maxMinutes: shorter };
    case 'smallerLift':
      return { maxDeveloperPercent: Math.min(lower, 2 * ONE_STEP_PERCENT), maxMinutes: shorter };
    case 'depositOnly':
      return { maxDeveloperPercent: Math.min(developerPercent, ONE_STEP_PERCENT), maxMinutes: minutes };
    default:
      return { maxDeveloperPercent: developerPercent, maxMinutes: minutes };
  }
}
