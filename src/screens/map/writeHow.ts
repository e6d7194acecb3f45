import { BLEACH_LOG_LOSS } from '../../../shared/chemistry/bleach';
import { ASSUMED_GAP_GLIDING_C, ASSUMED_GAP_HELD_C } from '../../../shared/heat/hairTemperature';
import {
  ASSUMED_DAMP_MULTIPLIER,
  ASSUMED_WET_MULTIPLIER,
  HELIX_HALF_LIFE_MIN,
  helixMeasured,
} from '../../../shared/heat/helix';
import { tryptophanMeasured } from '../../../shared/heat/tryptophan';
import { brand } from '../../../shared/units/brand';
import { formatQuantity, formatRange, formatTemperature } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { exactly } from '../../../shared/units/range';
import type { Celsius } from '../../../shared/units/temperature';
import type { HowFigures } from '../../words/en/hair';
import { sayDifference, sayShares } from './saySizes';

/** The figures inside the formulas in words, from the constants in force and in the station's units. */
export function writeHow(units: UnitSettings, locale: string): HowFigures {
  const temperature = (celsius: number) => formatTemperature(brand<Celsius>(celsius), units, locale);
  return {
    gapGliding: sayDifference(ASSUMED_GAP_GLIDING_C, units, locale),
    gapHeld: sayDifference(ASSUMED_GAP_HELD_C, units, locale),
    at: temperature(helixMeasured.atC),
    halfLife: formatRange(HELIX_HALF_LIFE_MIN, 'minutes', units, locale),
    water: formatRange(ASSUMED_WET_MULTIPLIER, 'count', units, locale),
    dampness: formatRange(ASSUMED_DAMP_MULTIPLIER, 'count', units, locale),
    perBleach: sayShares(exactly(Math.exp(-BLEACH_LOG_LOSS)), units, locale),
    measuredFrom: temperature(tryptophanMeasured.fromC),
    measuredTo: temperature(tryptophanMeasured.toC),
    measuredMinutes: formatQuantity(tryptophanMeasured.minutes, 'minutes', units, locale),
    measuredSeconds: formatQuantity(helixMeasured.seconds, 'seconds', units, locale),
  };
}
