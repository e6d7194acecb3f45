import type { LevelSeen } from '../../../shared/chemistry/liftReadings';
import type { ConsultationRecord, StrandRecord } from '../../../shared/records/record';
import { msPerMinute } from '../../../shared/units/time';

/** What was read of one strand so far, and what it is to reach; nothing in it is reckoned ahead. */
export interface LevelsView {
  readonly seen: readonly LevelSeen[];
  readonly target: number | null;
  /** The whole time of its clock. */
  readonly minutes: number;
  readonly lowest: number;
  readonly highest: number;
}

const asLevel = (answer: unknown): number | null => (typeof answer === 'number' ? answer : null);

/**
 * Which levels were seen on this strand, and when? The one told before it counts as the start. A look's time is that of
 * its clock, which goes along when the tablet's own clock is put right.
 * Checked in tests/src/screens/strandTest/viewLevels.test.tsx.
 */
export function viewLevels(
  { answers, clocks }: ConsultationRecord,
  { zone, looks, clock: id, atMs, minutes }: StrandRecord,
): LevelsView {
  const told = asLevel(zone === 'ends' ? answers.client?.endsLevel : answers.client?.naturalLevel);
  const clock = clocks.find((each) => each.id === id);
  const startedAtMs = clock?.startedAtMs ?? atMs;
  const looked = looks.flatMap((look, index) => {
    const level = asLevel(look.level);
    const lookedAtMs = clock?.lookedAtMs[index] ?? look.atMs;
    return level === null ? [] : [{ atMin: (lookedAtMs - startedAtMs) / msPerMinute, level }];
  });
  const seen = told === null ? looked : [{ atMin: 0, level: told }, ...looked];
  const target = asLevel(answers.client?.targetLevel);
  const all = [...seen.map(({ level }) => level), ...(target === null ? [] : [target])];
  return {
    seen,
    target,
    minutes: clock === undefined ? minutes : (clock.dueAtMs - startedAtMs) / msPerMinute,
    lowest: Math.floor(Math.min(...all, 10)),
    highest: Math.max(Math.ceil(Math.max(...all, 1)), Math.floor(Math.min(...all, 10)) + 1),
  };
}
