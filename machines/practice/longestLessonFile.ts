/** The longest text of a lesson that is read, in characters. Assumed because none of ours has a tenth of it. */
export const ASSUMED_LONGEST_LESSON_FILE = 200_000;
