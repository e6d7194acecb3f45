import { brand } from '../units/brand';
import { type Celsius, type Fahrenheit, toCelsius } from '../units/temperature';
import { ASSUMED_UNKNOWN_SETTING_C } from './assumedHabit';
import type { Wetness } from './habit';

/** On which hair does it matter: any, hair with water in it, or dry hair only? */
type NeedsHair = 'any' | 'withWater' | 'dry';

export interface HeatThreshold {
  readonly id: string;
  readonly from: Celsius;
  readonly hair: NeedsHair;
  /** One of the four marks; a rule of thumb is never dressed up as a measurement. */
  readonly mark: string;
}

const celsius = (value: number): Celsius => brand(value);
const fahrenheit = (value: number): Celsius => toCelsius(brand<Fahrenheit>(value));

const seaLevel = fahrenheit(212);

const poreSource = 'published: Gamez-Garcia, J. Cosmet. Sci. 62:109–120, 2011';
const practice = 'common practice, no source';

/**
 * What happens from which temperature on, coolest first. Each temperature is that of the setting or of the sample in
 * its source: hair under a gliding plate is cooler than the plate, so what is met by the setting may not be met by
 * the hair. The denaturation figures depend on how fast it is heated (141 °C in water at 2 K/min).
 */
export const heatThresholds = [
  {
    id: 'staysHotAfterUse',
    from: celsius(80),
    hair: 'any',
    mark: 'published: J. Burn Care Res. 29:650–654, 2008 (irons stay above 80 °C for 6–8 min after use)',
  },
  { id: 'waterBoils', from: seaLevel, hair: 'withWater', mark: practice },
  { id: 'poresBegin', from: celsius(150), hair: 'withWater', mark: poreSource },
  {
    id: 'helixMeltsInWater',
    from: celsius(158),
    hair: 'withWater',
    mark: 'published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002',
  },
  { id: 'poresRiseFast', from: celsius(190), hair: 'withWater', mark: poreSource },
  { id: 'cortexSoftens', from: fahrenheit(400), hair: 'any', mark: practice },
  { id: 'meltsOnSlowPasses', from: celsius(220), hair: 'withWater', mark: poreSource },
  { id: 'hairBurns', from: fahrenheit(451), hair: 'any', mark: practice },
  {
    id: 'helixMeltsDry',
    from: celsius(233),
    hair: 'dry',
    mark: 'published: Milczarek et al., Colloid Polym. Sci. 270:1106–1115, 1992',
  },
] as const satisfies readonly HeatThreshold[];

export type HeatThresholdId = (typeof heatThresholds)[number]['id'];

/** Does it happen to hair? That the iron itself stays hot is no matter of hair, and is said with the plan. */
export const isOfHair = (id: HeatThresholdId): id is HairThresholdId => id !== 'staysHotAfterUse';
export type HairThresholdId = Exclude<HeatThresholdId, 'staysHotAfterUse'>;

/** Where does this threshold come from, in one of the four marks? */
export const findMark = (id: HeatThresholdId): string =>
  heatThresholds.find((threshold) => threshold.id === id)?.mark ?? '';

/** At which settings do tools sold for wet hair run? common practice, no source: 375–420 °F. */
export const wetToolSettings = { from: brand<Fahrenheit>(375), to: brand<Fahrenheit>(420) } as const;

/** Could it matter on this hair? Damp hair holds water; of hair not told nothing can be ruled out. */
const concerns = (hair: NeedsHair, wetness: Wetness | 'unknown'): boolean =>
  hair === 'any' || wetness === 'unknown' || (hair === 'dry') === (wetness === 'dry');

/**
 * What does this setting reach, on hair that wet?
 * Coolest first; a threshold is met when the setting is at it or above, though practice says "above 400 °F": the
 * careful side. "Don't know" is read as the hottest that can be told, and so is a setting that is no number. What melts
 * on slow passes is left out only where each pass is known to be short. Water boils where it boils in this salon:
 * `boilsAt`.
 * Checked by tests/shared/heat/thresholds.test.ts, tests/evidence/heatPractice.test.ts and heatThresholds.test.ts.
 */
export function listThresholdsMet(
  setting: Celsius | 'unknown',
  wetness: Wetness | 'unknown',
  pace: 'short' | 'unknown' = 'unknown',
  boilsAt: Celsius = seaLevel,
): readonly HeatThresholdId[] {
  const isTold = setting !== 'unknown' && !Number.isNaN(setting);
  const reached = isTold ? setting : ASSUMED_UNKNOWN_SETTING_C;
  return heatThresholds
    .filter(({ id, from }) => (id === 'waterBoils' ? boilsAt : from) <= reached)
    .filter(({ hair }) => concerns(hair, wetness))
    .filter(({ id }) => id !== 'meltsOnSlowPasses' || pace !== 'short')
    .map(({ id }) => id);
}
