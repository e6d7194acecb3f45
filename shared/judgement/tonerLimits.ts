/** The strongest developer of a toner, per cent: 10 vol deposits and lifts nothing. common practice, no source. */
export const TONER_MAX_PERCENT = 3;

/**
 * The longest a toner stays on, minutes. Assumed because it takes at once on hair that was just lightened, makers say
 * from five to twenty, and theirs come first.
 */
export const ASSUMED_TONER_MAX_MIN = 20;
