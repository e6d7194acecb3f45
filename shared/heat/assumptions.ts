import type { Range } from '../units/range';
import { isGliding, type Tool } from './habit';
import { ASSUMED_GAP_GLIDING_C, ASSUMED_GAP_HELD_C } from './hairTemperature';
import {
  ASSUMED_DAMP_MULTIPLIER,
  ASSUMED_HELIX_ENERGY_J,
  ASSUMED_WET_MULTIPLIER,
  HELIX_HALF_LIFE_MIN,
} from './helix';

/**
 * All that widens a band besides what she does not know: what no paper settles for hair under an iron at home.
 * An argument, so that a test can pin each of them and see its own width go.
 */
export interface Assumptions {
  /** By how much hair is cooler than the tool, °C. */
  readonly gapC: (tool: Tool) => Range;
  /** What carries the helix's rate from 200 °C to other temperatures, J/mol. */
  readonly helixEnergyJ: Range;
  /** The published half-life at 200 °C is itself a range, minutes. */
  readonly helixHalfLifeMin: Range;
  readonly wetMultiplier: Range;
  readonly dampMultiplier: Range;
}

/** What the station reckons with. */
export const stationAssumptions: Assumptions = {
  gapC: (tool) => (isGliding(tool) ? ASSUMED_GAP_GLIDING_C : ASSUMED_GAP_HELD_C),
  helixEnergyJ: ASSUMED_HELIX_ENERGY_J,
  helixHalfLifeMin: HELIX_HALF_LIFE_MIN,
  wetMultiplier: ASSUMED_WET_MULTIPLIER,
  dampMultiplier: ASSUMED_DAMP_MULTIPLIER,
};
