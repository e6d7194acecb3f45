import { type ClosedRecord, parseClosedLog } from '../closedRecord';
import { fold } from '../reduce';
import type { SkinTest } from './skinTest';

/** The test put on last counts: unread it keeps an older one of its ticket from counting, whoever forgets it. */
const holdsBack = (test: SkinTest, tests: readonly SkinTest[]): boolean =>
  test.seen === 'notReadYet' &&
  test.takenBack === null &&
  tests.some(
    (other) =>
      other.ticketKey === test.ticketKey &&
      other.forVisit === undefined &&
      other.takenBack === null &&
      other.seen === 'nothing' &&
      other.putOnAtMs < test.putOnAtMs,
  );

/**
 * Does this test count in that consultation? One that is not kept counts in its own visit alone; a reaction stops her
 * everywhere for as long as it is known of, and what holds an older test back holds it back everywhere.
 * Checked in tests/shared/records/skinTest/visit.test.ts.
 */
export const isOfVisit = (test: SkinTest, consultationId: string, tests: readonly SkinTest[]): boolean =>
  test.forVisit === undefined ||
  test.forVisit === consultationId ||
  test.seen === 'reaction' ||
  holdsBack(test, tests);

/**
 * Is this test to be forgotten, since its visit is over and she did not agree that it is kept? Only where that makes
 * nothing freer: a reaction once the visit's own log says it, which stops her ticket from then on, and an unread one once
 * no older test of the ticket counts any more. `counting`: the tests that have not lapsed. A visit that cannot be read forgets nothing.
 * Checked in tests/shared/records/skinTest/visit.test.ts.
 */
export function isToForget(
  test: SkinTest,
  counting: readonly SkinTest[],
  closed: readonly ClosedRecord[],
): boolean {
  const visits = closed.filter(({ id }) => id === test.forVisit);
  if (visits.length === 0) return false;
  if (test.seen !== 'reaction') return !holdsBack(test, counting);
  // A visit that two stations tell otherwise has to say it in both.
  return visits.every((visit) => {
    const log = parseClosedLog(visit);
    return log !== null && fold(visit.id, log).skinTest?.seen === 'reaction';
  });
}
