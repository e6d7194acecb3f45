import { LATENT_HEAT, WATER_HEAT } from './bundle';

/** A cubic metre of a cell: how warm, °C, and how much water is in it, kg/m³. */
export interface Damp {
  readonly hereC: number;
  readonly water: number;
}

/**
 * What is left where a cell was driven above the boiling point while it holds water? What lies above goes into boiling it
 * away, and the cell stays at the boiling point until the last of it is gone. `dryHeat` is what its fibres take,
 * J/(m³·K). No heat is lost or made; steam leaves at the boiling point. That hair holds its last water harder than a
 * kettle does is left out: it would take longer still. Checked by tests/evidence/press.test.ts.
 */
export function boilOff({ hereC, water }: Damp, boilingC: number, dryHeat: number): Damp {
  if (hereC <= boilingC || water <= 0) return { hereC, water };
  const above = (dryHeat + water * WATER_HEAT) * (hereC - boilingC);
  const gone = Math.min(water, above / LATENT_HEAT);
  return gone < water
    ? { hereC: boilingC, water: water - gone }
    : { hereC: boilingC + (above - gone * LATENT_HEAT) / dryHeat, water: 0 };
}
