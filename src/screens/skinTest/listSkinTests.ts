import {
  findLapsesAtMs,
  findReadableAtMs,
  judgeTest,
  type SkinTestStatus,
} from '../../../shared/judgement/skinTest';
import type { LocalProfile } from '../../../shared/records/settings';
import { asJudged, type SkinTest } from '../../../shared/records/skinTest/skinTest';
import { msPerDay } from '../../../shared/units/time';
import { type CameIn, findCameIn } from './cameIn';

/** One skin test as the list shows it. */
export interface SkinTestRow {
  readonly test: SkinTest;
  readonly status: SkinTestStatus;
  readonly readableAtMs: number;
  readonly lapsesAtMs: number;
  readonly readAtMs: number | null;
  readonly cameIn: CameIn | null;
}

/** What has to be done first; what was read comes last. */
const order: Readonly<Record<SkinTestStatus, number>> = {
  due: 0,
  waiting: 1,
  lapsedUnread: 2,
  reaction: 3,
  clear: 4,
  lapsed: 5,
};

/** One that lapsed unread is shown for so many days more. Assumed because by then she was asked for a new one, or never came. */
export const ASSUMED_LAPSED_SHOWN_DAYS = 28;

/** How one skin test stands now. */
export const viewTest = (test: SkinTest, profile: LocalProfile, nowMs: number): SkinTestRow => ({
  test,
  status: judgeTest(asJudged(test), profile, nowMs),
  readableAtMs: findReadableAtMs(test, profile),
  lapsesAtMs: findLapsesAtMs(test, profile),
  readAtMs: test.read?.atMs ?? null,
  cameIn: findCameIn(test, profile),
});

/**
 * Which skin tests are there, the ones to be read first? What was taken back or lapsed after it was read is not listed,
 * nor one that lapsed unread once its ticket has a newer one. Checked in tests/src/screens/skinTest/listSkinTests.test.tsx.
 */
export function listSkinTests(
  tests: readonly SkinTest[],
  profile: LocalProfile,
  nowMs: number,
): readonly SkinTestRow[] {
  const standing = tests.filter(({ takenBack }) => takenBack === null);
  const isSuperseded = ({ ticketKey, putOnAtMs }: SkinTest): boolean =>
    standing.some((other) => other.ticketKey === ticketKey && other.putOnAtMs > putOnAtMs);
  const isShown = ({ test, status, lapsesAtMs }: SkinTestRow): boolean => {
    if (status !== 'lapsedUnread') return status !== 'lapsed';
    return !isSuperseded(test) && nowMs <= lapsesAtMs + ASSUMED_LAPSED_SHOWN_DAYS * msPerDay;
  };
  return standing
    .map((test) => viewTest(test, profile, nowMs))
    .filter(isShown)
    .sort(
      (one, other) =>
        order[one.status] - order[other.status] ||
        one.readableAtMs - other.readableAtMs ||
        one.test.noted.atMs - other.test.noted.atMs,
    );
}

/** How many are on and unread, and how many of them may be read now? */
export function countSkinTests(rows: readonly SkinTestRow[]): { readonly on: number; readonly due: number } {
  const due = rows.filter(({ status }) => status === 'due').length;
  return { on: due + rows.filter(({ status }) => status === 'waiting').length, due };
}
