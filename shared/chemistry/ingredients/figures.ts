import { brand } from '../../units/brand';
import { type Celsius, type Fahrenheit, toCelsius } from '../../units/temperature';

/** From where to where does it happen? Both ends are the same where the source gives one figure. */
export interface Temperatures {
  readonly from: Celsius;
  readonly to: Celsius;
}

const between = (from: number, to: number): Temperatures => ({
  from: brand<Celsius>(from),
  to: brand<Celsius>(to),
});
const at = (value: number): Temperatures => between(value, value);

/**
 * At which temperature does what is listed boil, brown, burn or break down?
 * °C, exact as printed; sources stand with each finding in findingTable.ts. A boiling point is not when a thin film
 * leaves: that is far below. Checked by tests/evidence/ingredients.test.ts.
 */
export const ingredientTemperatures = {
  /** published: GisChem, CYCLOTETRASILOXANE. */
  d4Boils: between(171, 176),
  /** published: ECHA registration dossier 14807, CYCLOPENTASILOXANE. */
  d5Boils: at(210),
  /** published: ECHA registration dossier 15811, CYCLOHEXASILOXANE. */
  d6Boils: at(245),
  /** published: Timpe, Formaldehyde generation from silicone rubber. Rubber, not a film on hair. */
  siliconeGivesFormaldehyde: at(149),
  /** published: Abrutyn, in Conditioning Agents for Hair and Skin, 1999, p. 176. Without oxygen: in air sooner. */
  dimethiconeBreaksDown: at(250),
  /** published: Kroh, Food Chem. 51:373–379, 1994. About. */
  sugarCaramelises: at(120),
  /** published: McMullen & Jachowicz, J. Cosmet. Sci. 49:245–256, 1998. The range in which it was measured. */
  filmFormersMeasured: between(132, 152),
  /** common practice, no source: 400 °F. */
  siliconeSprayHelpsNoMore: ((limit) => ({ from: limit, to: limit }))(toCelsius(brand<Fahrenheit>(400))),
} as const satisfies Record<string, Temperatures>;

/**
 * At which warmth does alcohol in water catch fire from a spark? Flash points in °C by per cent of ethanol by weight.
 * published: a table of ethanol–water flash points (its publisher is not named in the evidence at hand).
 */
export const ethanolFlashPoints = [
  { weightPercent: 40, flashPoint: brand<Celsius>(26) },
  { weightPercent: 70, flashPoint: brand<Celsius>(21) },
] as const;

/** How warm is isopropyl alcohol when it catches fire from a spark? °C, undiluted. from memory: NFPA 325, 53 °F. */
export const isopropylFlashPoint: Celsius = brand<Celsius>(12);

/**
 * How much less tryptophan was lost under the film formers that were measured? Per cent of the loss.
 * published: McMullen & Jachowicz, J. Cosmet. Sci. 49:245–256, 1998, p. 248: 1 % in water, 4–12 min.
 */
export const filmFormersLessLossPercent = { from: 10, to: 20 } as const;

/**
 * How much weaker was hair that was sprayed before it was ironed? Break stress in 10⁻² gf/µm² before, after a
 * water-based and after an ethanol-based spray; the iron's temperature was not seen.
 * published: Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III.
 */
export const sprayedBreakStress = { before: 2.04, waterBased: 1.56, ethanolBased: 1.8 } as const;

/** How much of the break stress was lost after this spray? Per cent, to 0.1 as the screen shows it. */
export const findStressLossPercent = (after: keyof typeof sprayedBreakStress): number =>
  Math.round(1000 * (1 - sprayedBreakStress[after] / sprayedBreakStress.before)) / 10;

/** How much formaldehyde may be in the air? Parts per million. published: 29 CFR 1910.1048. */
export const formaldehydeLimitsPpm = { eightHours: 0.75, fifteenMinutes: 2 } as const;

/** How long does a good silicone spray keep a dryer's heat from being felt on skin? Seconds. common practice, no source. */
export const DRYER_HEAT_HELD_SECONDS = 30;
