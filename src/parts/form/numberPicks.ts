import type { NumberQuestion } from '../../../shared/records/form';
import { readNumber, writeNumber } from '../../../shared/units/numberField';
import type { UnitSettings } from '../../../shared/units/quantity';
import type { Picks } from './field';

/** Offered in one tap where the unit is always the same. common practice, no source: what is said most at a bar. */
const byName: Picks = {
  targetLevel: ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'],
  naturalLevel: ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'],
  endsLevel: ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'],
  level: ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'],
  greyPercent: ['0', '25', '50', '75', '100'],
  daysAWeek: ['1', '2', '3', '5', '7'],
  forMonths: ['3', '6', '12', '24', '36', '60'],
  stoppedMonthsAgo: ['0', '3', '6', '12', '24', '36'],
  lastBleachMonthsAgo: ['0', '2', '4', '6', '12', '24'],
  regrowthWeeks: ['4', '6', '8', '12', '16', '26'],
  secondsASection: ['10', '30', '60'],
  bleaches: ['0', '1', '2', '3'],
  developerPercent: ['1.5', '3', '6', '9', '12'],
  ratio: ['1', '1.5', '2'],
  hairs: ['20', '30', '50'],
};

/** The same where it depends on the station's units. */
const byUnit: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  settingC: { C: ['150', '180', '200', '210', '230'], F: ['300', '350', '375', '400', '420', '450'] },
  plateWidthCm: { cm: ['1.3', '2.5', '3.8', '5'], in: ['0.5', '1', '1.5', '2'] },
};

/** Which figures are offered in one tap, as they would be typed? Only such as the field takes. */
export function listNumberPicks(
  name: string,
  question: NumberQuestion,
  units: UnitSettings,
  given: Picks | undefined,
): readonly string[] {
  const known = byUnit[name];
  const spoken = Object.values(units).find((unit) => known?.[unit] !== undefined) ?? '';
  const offered = given?.[name] ?? known?.[spoken] ?? byName[name] ?? [];
  return offered.filter((text) => readNumber(text, question.field, units).ok);
}

/** What stands in the field before anybody touched it: its default, in the station's unit. */
export const writeDefault = (question: NumberQuestion, units: UnitSettings): string =>
  question.or === undefined || question.or === 'unknown'
    ? ''
    : writeNumber(question.or, question.field, units);
