/** How wide is a bank or identity card? mm. published: ISO/IEC 7810, format ID-1, nominal width. */
export const CARD_WIDTH_MM = 85.6;

/** How high is it? mm. published: ISO/IEC 7810, format ID-1, nominal height. */
export const CARD_HEIGHT_MM = 53.98;

/**
 * The coarsest glass that is taken for a tablet, dots per mm. Assumed because 2 a millimetre (51 an inch) is coarser
 * than any screen one stands in front of: beyond it a slip was kept, not a card.
 */
export const ASSUMED_FEWEST_DOTS_PER_MM = 2;

/** The finest, dots per mm. Assumed because 30 a millimetre (762 an inch) is finer than any glass that is sold. */
export const ASSUMED_MOST_DOTS_PER_MM = 30;

/**
 * How fine is the glass, when a card on it is so many dots wide?
 * Dots per mm, unrounded; null where no glass is like that, or where it is no number. Exact.
 * Checked by tests/shared/units/card.test.ts.
 */
export const computeDotsPerMm = (cardDots: number): number | null => readDotsPerMm(cardDots / CARD_WIDTH_MM);

/** Is this what a card was measured by? A number in the range of glass, whatever else was kept is none. */
export const readDotsPerMm = (kept: unknown): number | null =>
  typeof kept === 'number' && kept >= ASSUMED_FEWEST_DOTS_PER_MM && kept <= ASSUMED_MOST_DOTS_PER_MM
    ? kept
    : null;
