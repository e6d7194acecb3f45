import type { Wetness } from '../habit';

/**
 * A section of hair as it lies between two hot plates: fibres with air and water between them. Single middle figures,
 * for a picture of how heat goes in; nothing of a client is ever reckoned from them.
 */

/** Specific heat of dry hair, J/(kg·K). from memory: calorimetry of keratin fibres near room temperature. */
export const FIBRE_HEAT = 1360;
/** Specific heat of liquid water, J/(kg·K). from memory: any steam table, near 25 °C. */
export const WATER_HEAT = 4180;
/** What a kilogram of water takes to boil away, J/kg. from memory: steam tables, at 100 °C; up a mountain a per cent or two more. */
export const LATENT_HEAT = 2_256_600;
/** Density of a hair itself, kg/m³. from memory: density of dry keratin fibres. */
export const FIBRE_DENSITY = 1320;

/** So much of a pressed section is fibre, the rest air. Assumed because round fibres laid side by side cannot fill more than 0.91, and hair lies loosely. */
export const ASSUMED_PACKING = 0.6;
/** How well a pressed section conducts across its fibres, W/(m·K). Assumed because it must lie between still air (0.03) and solid keratin (about 0.2). */
export const ASSUMED_CONDUCTIVITY = 0.1;
/** How well a plate hands its heat to the hair it touches, W/(m²·K). Assumed because hair touches in lines and not all over. */
export const ASSUMED_CONTACT = 800;

/** Fibre in a cubic metre of pressed section, kg/m³. */
export const FIBRE_PER_M3 = FIBRE_DENSITY * ASSUMED_PACKING;

/**
 * How much water does hair hold that feels so? kg for each kg of dry hair. Assumed because hair takes up about 0.1 from
 * the air of a room and about 0.3 until it is full (from memory: water sorption of keratin), and how much lies in drops
 * between wet fibres after a towel nobody has told.
 */
export const ASSUMED_REGAIN: Readonly<Record<Wetness, number>> = { dry: 0.1, damp: 0.3, wet: 0.6 };
