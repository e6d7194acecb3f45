import type { Bleach } from '../chemistry/bleach';
import type { Range } from '../units/range';
import type { HeatHabit } from './habit';
import type { Pigment } from './tryptophan';

/** What is known of one head of hair: what heat and bleach did, how fast it grows, how long it is. */
export interface HairHistory {
  readonly habits: readonly HeatHabit[];
  readonly bleaches: readonly Bleach[];
  /** cm a week. */
  readonly growth: Range;
  /** cm from scalp to tip. */
  readonly lengthCm: Range;
  readonly pigment: Pigment;
}
