export const msPerSecond = 1_000;
export const secondsPerMinute = 60;
export const msPerMinute = secondsPerMinute * msPerSecond;
export const msPerHour = 60 * msPerMinute;
export const msPerDay = 24 * msPerHour;
export const daysPerWeek = 7;

/** Weeks in a year as habits are counted. common practice, no source: "three days a week, two years" is 312 days. */
export const weeksPerYear = 52;

/** Weeks in a month of the calendar, on average: 365.25 ÷ 12 ÷ 7. What grows knows no trade's year. */
export const weeksPerMeanMonth = 365.25 / 12 / daysPerWeek;

/**
 * For how many weeks has she done so, when she says it in months?
 * Twelve months are the trade's year of 52 weeks, so 24 months are 104; not rounded; non-finite stays non-finite.
 * Checked by tests/shared/units/conversions.test.ts.
 */
export const toWeeks = (months: number): number => (months * weeksPerYear) / 12;
