import { accept, type Result, refuse } from '../result';

/** How wide is a bank or identity card? mm. published: ISO/IEC 7810, format ID-1, nominal width. */
export const CARD_WIDTH_MM = 85.6;

/** How high is it? mm. published: ISO/IEC 7810, format ID-1, nominal height. */
export const CARD_HEIGHT_MM = 53.98;

/**
 * The coarsest glass that is believed, dots per mm. Assumed because 2.5 a millimetre (64 an inch) is coarser than a
 * screen of 32 inches that is 1920 dots wide (2.7): beyond it a slip was kept, not a card.
 */
export const ASSUMED_FEWEST_DOTS_PER_MM = 2.5;

/** The finest, dots per mm. Assumed because 20 a millimetre (508 an inch) is finer than the glass of tablets, about 14. */
export const ASSUMED_MOST_DOTS_PER_MM = 20;

/** The smallest glass across its corners, mm. Assumed because a tablet of seven inches measures 178. */
export const ASSUMED_SMALLEST_GLASS_MM = 170;

/** The largest, mm. Assumed because what hangs beside a colour bar ends at 32 inches, which are 813. */
export const ASSUMED_LARGEST_GLASS_MM = 850;

/** The two sides of a glass in dots, in any order. */
export type GlassSides = readonly [number, number];

/** Why no glass is like that: the card would be drawn too narrow or too wide, or nothing that is a number was told. */
export type GlassRefusal = 'notANumber' | 'tooNarrow' | 'tooWide';

/** How large is this glass across its corners, mm? Exact. */
export const computeGlassMm = (dotsPerMm: number, sides: GlassSides): number =>
  Math.hypot(...sides) / dotsPerMm;

/** How coarse and how fine may this very glass be? Dots per mm; by its dots alone where nobody knows how many it has. */
export function findDotsRange(sides: GlassSides): { readonly fewest: number; readonly most: number } {
  const dots = Math.hypot(...sides);
  const [fewest, most] = [ASSUMED_FEWEST_DOTS_PER_MM, ASSUMED_MOST_DOTS_PER_MM];
  if (!(dots > 0)) return { fewest, most };
  return {
    fewest: Math.max(fewest, dots / ASSUMED_LARGEST_GLASS_MM),
    most: Math.min(most, dots / ASSUMED_SMALLEST_GLASS_MM),
  };
}

/**
 * Can a glass with so many dots have so many to a millimetre? Dots per mm as they were told, unrounded.
 * Refused: what is no number, what is coarser or finer than glass is, and what would make this one smaller or larger
 * across its corners than any tablet. Exact. Checked by tests/shared/units/card.test.ts.
 */
export function readDotsPerMm(told: unknown, sides: GlassSides): Result<number, GlassRefusal> {
  if (typeof told !== 'number' || !Number.isFinite(told)) return refuse('notANumber');
  const { fewest, most } = findDotsRange(sides);
  if (told < fewest) return refuse('tooNarrow');
  return told > most ? refuse('tooWide') : accept(told);
}
