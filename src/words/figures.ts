import { LEGAL_CEILING_PERCENT, toVolumes } from '../../shared/chemistry/peroxide';
import { ASSUMED_LIGHT_PULL_LIMIT_PERCENT } from '../../shared/hair/stretch';
import { LONGEST_PASS_SECONDS } from '../../shared/heat/exposure';
import { ASSUMED_OUTCOME_LAPSES_DAYS } from '../../shared/judgement/findings';
import { ASSUMED_REST_H } from '../../shared/records/forms/bowl';
import { strandForm } from '../../shared/records/forms/test';
import { INCOMPATIBILITY_MS } from '../../shared/records/reduce/answers';
import { FIRST_LOOK_MS } from '../../shared/records/reduce/strands';
import { ASSUMED_SKIN_TEST_LAPSES_DAYS, defaultSettings } from '../../shared/records/settings';
import { brand } from '../../shared/units/brand';
import { formatQuantity } from '../../shared/units/format';
import type { Quantity, UnitSettings } from '../../shared/units/quantity';
import { msPerMinute } from '../../shared/units/time';

/**
 * The figures that stand inside sentences, written from the constants that are in force. None of them hangs on the
 * station's units. Checked in tests/src/words/figures.test.ts.
 */
export function writeFigures(locale: string) {
  const write = (value: number, quantity: Exclude<Quantity, keyof UnitSettings>): string =>
    formatQuantity(value, quantity, defaultSettings.units, locale);
  const { min, max } = strandForm.hairs.field;
  return {
    ceiling: write(LEGAL_CEILING_PERCENT, 'percent'),
    ceilingVolumes: write(toVolumes(brand(LEGAL_CEILING_PERCENT)), 'volume'),
    firstLook: write(FIRST_LOOK_MS / msPerMinute, 'minutes'),
    fewestHairs: write(min, 'count'),
    glass: write(INCOMPATIBILITY_MS / msPerMinute, 'minutes'),
    lightPull: write(ASSUMED_LIGHT_PULL_LIMIT_PERCENT, 'percent'),
    longestPass: write(LONGEST_PASS_SECONDS, 'seconds'),
    mostHairs: write(max, 'count'),
    outcomeLapsesDays: write(ASSUMED_OUTCOME_LAPSES_DAYS, 'count'),
    restHours: write(ASSUMED_REST_H, 'count'),
    skinTestLapsesDays: write(ASSUMED_SKIN_TEST_LAPSES_DAYS, 'count'),
  };
}
