/** After so many days an outcome lapses. Assumed because hair goes on being washed and ironed meanwhile. */
export const ASSUMED_OUTCOME_LAPSES_DAYS = 28;

/**
 * For so many weeks a strand's outcome is carried to the same deposit, if nothing is new. Assumed because that is about
 * three visits, and hair that grew and was washed a whole season is no longer the hair that was tested.
 */
export const ASSUMED_CARRIED_LAPSES_WEEKS = 12;
