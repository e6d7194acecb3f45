import { LEGAL_CEILING_PERCENT, toVolumes } from '../../shared/chemistry/peroxide';
import {
  ASSUMED_LIGHT_PULL_FROM_PERCENT,
  ASSUMED_SHORTEST_REST_MM,
  ASSUMED_SLIP_FROM_PERCENT,
} from '../../shared/hair/pull';
import { ASSUMED_LIGHT_PULL_LIMIT_PERCENT, MEAN_BREAK_PERCENT } from '../../shared/hair/stretch';
import { LONGEST_PASS_SECONDS } from '../../shared/heat/passes';
import { ASSUMED_TELLING_S, WARMTH_TRIAL_CAP_S } from '../../shared/heat/warmthTrial';
import { ASSUMED_CARRIED_LAPSES_WEEKS, ASSUMED_OUTCOME_LAPSES_DAYS } from '../../shared/judgement/lapse';
import { ASSUMED_FORGOTTEN_PIN_MS } from '../../shared/pin/pinRecord';
import { CUTTING_KEPT_MS } from '../../shared/records/cutting';
import { ASSUMED_REST_H } from '../../shared/records/forms/bowl';
import { clientForm } from '../../shared/records/forms/client';
import { strandForm } from '../../shared/records/forms/test';
import { INCOMPATIBILITY_MS } from '../../shared/records/reduce/answers';
import { FIRST_LOOK_MS } from '../../shared/records/reduce/strands';
import {
  ASSUMED_KEEP_MONTHS,
  ASSUMED_SKIN_TEST_LAPSES_DAYS,
  COVER_WARNING_S,
  defaultSettings,
} from '../../shared/records/settings';
import { ASSUMED_USE_WITHIN_MIN } from '../../shared/records/useWithin';
import { brand } from '../../shared/units/brand';
import { formatQuantity } from '../../shared/units/format';
import type { Quantity, UnitSettings } from '../../shared/units/quantity';
import { msPerHour, msPerMinute } from '../../shared/units/time';

/** Cool running water on a burn, minutes. from memory: burn first-aid guidance. */
export const BURN_RINSE_MIN = 20;
/** Water in the eyes, minutes, from and to. Common practice, no source: it stands on product labels. */
export const EYES_RINSE_MIN = { from: 15, to: 20 } as const;

/**
 * The figures that stand inside sentences, written from the constants that are in force. None of them hangs on the
 * station's units. Checked in tests/src/words/figures.test.ts.
 */
export function writeFigures(locale: string) {
  const write = (value: number, quantity: Exclude<Quantity, keyof UnitSettings>): string =>
    formatQuantity(value, quantity, defaultSettings.units, locale);
  const { min, max } = strandForm.hairs.field;
  const level = clientForm.targetLevel.field;
  return {
    carriedLapsesWeeks: write(ASSUMED_CARRIED_LAPSES_WEEKS, 'count'),
    burnRinse: write(BURN_RINSE_MIN, 'minutes'),
    ceiling: write(LEGAL_CEILING_PERCENT, 'percent'),
    ceilingVolumes: write(toVolumes(brand(LEGAL_CEILING_PERCENT)), 'volume'),
    coverWarning: write(COVER_WARNING_S, 'seconds'),
    cuttingHours: write(CUTTING_KEPT_MS / msPerHour, 'count'),
    eyesRinseFrom: write(EYES_RINSE_MIN.from, 'count'),
    eyesRinseTo: write(EYES_RINSE_MIN.to, 'minutes'),
    forgottenPinHours: write(ASSUMED_FORGOTTEN_PIN_MS / msPerHour, 'count'),
    firstLook: write(FIRST_LOOK_MS / msPerMinute, 'minutes'),
    fewestHairs: write(min, 'count'),
    glass: write(INCOMPATIBILITY_MS / msPerMinute, 'minutes'),
    highestLevel: write(level.max, 'level'),
    keepMonths: write(ASSUMED_KEEP_MONTHS, 'count'),
    lightPullFrom: write(ASSUMED_LIGHT_PULL_FROM_PERCENT, 'percent'),
    lightPull: write(ASSUMED_LIGHT_PULL_LIMIT_PERCENT, 'percent'),
    longestPass: write(LONGEST_PASS_SECONDS, 'seconds'),
    lowestLevel: write(level.min, 'level'),
    meanBreak: write(MEAN_BREAK_PERCENT, 'percent'),
    mostHairs: write(max, 'count'),
    outcomeLapsesDays: write(ASSUMED_OUTCOME_LAPSES_DAYS, 'count'),
    restHours: write(ASSUMED_REST_H, 'count'),
    shortestRest: write(ASSUMED_SHORTEST_REST_MM, 'millimetres'),
    skinTestLapsesDays: write(ASSUMED_SKIN_TEST_LAPSES_DAYS, 'count'),
    slipFrom: write(ASSUMED_SLIP_FROM_PERCENT, 'percent'),
    useWithin: write(ASSUMED_USE_WITHIN_MIN, 'minutes'),
    warmthCap: write(WARMTH_TRIAL_CAP_S, 'seconds'),
    warmthTelling: write(ASSUMED_TELLING_S, 'seconds'),
  };
}
