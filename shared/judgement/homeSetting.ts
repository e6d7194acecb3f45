import { isIron } from '../heat/habit';
import type { Answers } from '../records/forms/asked';
import { hasBadSigns } from '../records/gradeOutcome';
import { hasShownWeakOnHead } from '../records/headLooks';
import type { ConsultationRecord } from '../records/record';
import { listFelt } from '../records/tonerProof';
import { zones } from '../records/zones';
import { brand } from '../units/brand';
import type { UnitSettings } from '../units/quantity';
import { type Celsius, type Fahrenheit, toCelsius, toFahrenheit } from '../units/temperature';
import { listRedFlags } from './risk';

/**
 * Hair that has shown damage goes no hotter, °C. Assumed because pores in the cortex begin near 150 °C (published:
 * Gamez-Garcia, J. Cosmet. Sci. 62:109–120, 2011).
 */
export const ASSUMED_WEAK_SETTING_C = 150;
/** Any other hair goes no hotter, °C. Assumed because pores grow fast from 190 °C (the same paper), and a tool wanders by ten. */
export const ASSUMED_MOST_SETTING_C = 180;
/** So much below the hottest she told, °C. Assumed because it is the smallest step that every tool's dial has. */
export const ASSUMED_STEP_DOWN_C = 20;
/** No lower, °C. Assumed because below it hair is only ironed longer. */
export const ASSUMED_LEAST_SETTING_C = 120;
/** The same on a dial: 120 °C is 248 °F, and of its steps 250 is nearer than 225. */
const leastOnDial = { C: ASSUMED_LEAST_SETTING_C, F: toCelsius(brand<Fahrenheit>(250)) } as const;
/** Written on a card in whole steps that a dial has: 10 °C, 25 °F. common practice, no source. */
const dialStep = { C: 10, F: 25 } as const;

/** Wise at any setting, a heat protectant is not optional from here on: 450 °F. common practice, no source. */
export const PROTECTANT_FROM_C: Celsius = toCelsius(brand<Fahrenheit>(450));

/** How hot at home, and by which rule? `least`: what she told is so low that less heat only takes longer. */
export interface HomeSetting {
  readonly settingC: Celsius;
  readonly why: 'weak' | 'lower' | 'least' | 'usual';
}

type Felt = Pick<ConsultationRecord, 'answers' | 'strands' | 'stretches' | 'bowls'>;

/**
 * Did a strand come out worse than sound or weaken at a look, or did the hair on the head, or not spring back after a rinse?
 * What was once seen or felt speaks against the hair, whichever mix it was and whatever sprang back later.
 */
const hasShownWeak = (record: Felt): boolean =>
  record.strands.some(
    (strand) => hasBadSigns(strand) || (strand.outcome !== null && strand.outcome.grade !== 'sound'),
  ) ||
  record.bowls.some(hasShownWeakOnHead) ||
  zones.some((zone) => listFelt(record, zone, -1).some(({ stretch }) => stretch !== 'springsBack'));

function findHottest({ hotTools }: Answers): number | null {
  const ironed = (hotTools?.habits ?? []).filter(({ tool }) => isIron(tool));
  const told = ironed.map(({ settingC }) => settingC);
  const known = told.filter((settingC) => settingC !== 'unknown');
  return known.length === 0 ? null : Math.max(...known);
}

/** The next lower figure of a dial, in the unit that is spoken here. */
function toDial(celsius: number, unit: UnitSettings['temperature']): Celsius {
  const step = dialStep[unit];
  if (unit === 'C') return brand(Math.floor(celsius / step) * step);
  return toCelsius(brand(Math.floor(toFahrenheit(brand(celsius)) / step) * step));
}

/**
 * How hot may she iron it from today? An estimate: a step below the hottest she told, never above what hair stands, lower
 * where it has shown damage. °C, on a step of a dial in the station's unit; what she told is never raised.
 * Checked in tests/shared/judgement/homeSetting.test.ts.
 */
export function suggestHomeSetting(record: Felt, unit: UnitSettings['temperature']): HomeSetting {
  const hottest = findHottest(record.answers);
  const isWeak = listRedFlags(record.answers).length > 0 || hasShownWeak(record);
  const most = isWeak ? ASSUMED_WEAK_SETTING_C : ASSUMED_MOST_SETTING_C;
  const step = Math.min(most, (hottest ?? Number.POSITIVE_INFINITY) - ASSUMED_STEP_DOWN_C);
  const least = Math.min(hottest ?? most, leastOnDial[unit]);
  const settingC = brand<Celsius>(Math.max(toDial(step, unit), least));
  if (isWeak) return { settingC, why: 'weak' };
  if (hottest === null) return { settingC, why: 'usual' };
  return { settingC, why: settingC > hottest - ASSUMED_STEP_DOWN_C ? 'least' : 'lower' };
}

/** One figure, read through °F and back, differs from itself by less than this, °C. exact: of rounding alone. */
const ROUNDING_C = 1e-6;

/** Is a heat protectant a must at this setting, °C? From PROTECTANT_FROM_C on. */
export const needsProtectant = (settingC: number): boolean => settingC > PROTECTANT_FROM_C - ROUNDING_C;

/** Is what is said hotter than what is suggested? A judgement of whoever says it: it is told, and stops nothing. */
export const isHotterThanSuggested = (settingC: number, { settingC: suggestedC }: HomeSetting): boolean =>
  settingC > suggestedC + ROUNDING_C;
