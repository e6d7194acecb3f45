import type { LevelSeen } from '../../../shared/chemistry/liftReadings';
import type { ConsultationRecord, StrandRecord } from '../../../shared/records/record';
import { findStartLevel } from '../../../shared/records/startLevel';
import { msPerMinute } from '../../../shared/units/time';

/** What was read of one strand so far, and what it is to reach; nothing in it is reckoned ahead. */
export interface LevelsView {
  readonly seen: readonly LevelSeen[];
  /** When it was last looked at, also where nobody could read the level; 0 where nobody looked. */
  readonly lastLookMin: number;
  readonly target: number | null;
  /** The whole time of its clock. */
  readonly minutes: number;
  readonly lowest: number;
  readonly highest: number;
}

const asLevel = (answer: unknown): number | null => (typeof answer === 'number' ? answer : null);

/**
 * Which levels were seen on this strand, and when? Its own before the mix counts as the start. A look's time is that of
 * its clock, which goes along when the tablet's own clock is put right.
 * Checked in tests/src/screens/strandTest/viewLevels.test.tsx.
 */
export function viewLevels({ answers, clocks }: ConsultationRecord, strand: StrandRecord): LevelsView {
  const start = findStartLevel(answers, strand);
  const { looks, clock: id, atMs, minutes } = strand;
  const clock = clocks.find((each) => each.id === id);
  const startedAtMs = clock?.startedAtMs ?? atMs;
  const looked = looks.map(({ level, atMs: writtenAtMs }, index) => ({
    atMin: ((clock?.lookedAtMs[index] ?? writtenAtMs) - startedAtMs) / msPerMinute,
    level: asLevel(level),
  }));
  const read = looked.flatMap(({ atMin, level }) => (level === null ? [] : [{ atMin, level }]));
  const seen = start === null ? read : [{ atMin: 0, level: start }, ...read];
  const target = asLevel(answers.client?.targetLevel);
  const all = [...seen.map(({ level }) => level), ...(target === null ? [] : [target])];
  return {
    seen,
    lastLookMin: Math.max(0, ...looked.map(({ atMin }) => atMin)),
    target,
    minutes: clock === undefined ? minutes : (clock.dueAtMs - startedAtMs) / msPerMinute,
    lowest: Math.floor(Math.min(...all, 10)),
    highest: Math.max(Math.ceil(Math.max(...all, 1)), Math.floor(Math.min(...all, 10)) + 1),
  };
}
