/** The strongest developer of a toner, per cent: 10 vol deposits and lifts nothing. common practice, no source. */
export const TONER_MAX_PERCENT = 3;

/**
 * What was felt on the head counts for so long, minutes. Assumed because hair is felt wet, and by then it has begun to dry:
 * a toner that goes on later is mixed on another pull.
 */
export const ASSUMED_FELT_FOR_MIN = 30;

/**
 * The longest a toner stays on, minutes. Assumed because it takes at once on hair that was just lightened, makers say
 * from five to twenty, and theirs come first.
 */
export const ASSUMED_TONER_MAX_MIN = 20;
