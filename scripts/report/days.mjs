// Days of a salon's wall, by its time zone or by how far its clock was ahead of UTC.

/** @typedef {import('../../shared/records/day/dayRecords').Days} Days */

/** @param {number} value */
const twoDigits = (value) => String(value).padStart(2, '0');

/** Is this a day, written YYYY-MM-DD, that there is? @param {string} text */
export const isDay = (text) => /^\d{4}-\d\d-\d\d$/.test(text) && addDays(text, 0) === text;

/**
 * So many days later, or earlier.
 * @param {string} day
 * @param {number} days
 */
export function addDays(day, days) {
  const at = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(at.getTime())) return '';
  at.setUTCDate(at.getUTCDate() + days);
  return at.toISOString().slice(0, 10);
}

/** Is there such a time zone? @param {string} zone */
export function isZone(zone) {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

/** "UTC−03:30". @param {number} offsetMin */
export const sayOffset = (offsetMin) => {
  const by = Math.abs(offsetMin);
  return `UTC${offsetMin < 0 ? '−' : '+'}${twoDigits(Math.floor(by / 60))}:${twoDigits(by % 60)}`;
};

/**
 * On which day does a moment lie there? @param {string} zone
 * @returns {(atMs: number) => string}
 */
export function nameDaysIn(zone) {
  const writer = new Intl.DateTimeFormat('en', {
    timeZone: zone,
    ...{ year: 'numeric', month: '2-digit', day: '2-digit' },
  });
  return (atMs) => {
    const parts = Object.fromEntries(writer.formatToParts(atMs).map(({ type, value }) => [type, value]));
    return `${parts.year}-${parts.month}-${parts.day}`;
  };
}

/**
 * The same where the clock was so many minutes ahead of UTC. @param {number} offsetMin
 * @returns {(atMs: number) => string}
 */
export const nameDaysAhead = (offsetMin) => (atMs) =>
  new Date(atMs + offsetMin * 60_000).toISOString().slice(0, 10);

/** "Mon, Nov 16, 2026". @param {string} day */
export const sayDay = (day) =>
  new Intl.DateTimeFormat('en', {
    timeZone: 'UTC',
    ...{ weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' },
  }).format(new Date(`${day}T00:00:00Z`));
