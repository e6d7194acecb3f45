import type { Consultation } from '../../../machines/consultation/consultation';
import type { Call } from '../../../shared/records/call';
import { listClocks, type RunningClock, sortRunning } from '../bar/viewBar';

/** Something that somebody has to do for a client now. */
export interface DueNow extends RunningClock {
  /** What it calls for, or a reaction with colour still on. */
  readonly what: Call['why'] | 'reaction';
  /** Since when it is due; at the basin, when it is to be rinsed. */
  readonly atMs: number;
}

function readDue(running: RunningClock): DueNow | null {
  const { clock, consultation, waiting } = running;
  if (clock.kind === 'head' && consultation.state.context.facts.care !== 'calm') {
    return { ...running, what: 'reaction', atMs: clock.startedAtMs };
  }
  if (waiting === null) return null;
  const { why, waitsSinceMs } = waiting;
  return { ...running, what: why, atMs: why === 'basin' ? clock.dueAtMs : waitsSinceMs };
}

/**
 * What is due now for anybody but the client in view? A reaction first, then as the bar has it.
 * Checked in tests/src/screens/dueElsewhere.test.tsx.
 */
export function listDue(
  open: readonly Consultation[],
  hereId: string | undefined,
  nowMs: number,
): readonly DueNow[] {
  const due = open
    .filter(({ id }) => id !== hereId)
    .flatMap((consultation) => listClocks(consultation, nowMs))
    .flatMap((running) => readDue(running) ?? []);
  const isFirst = ({ what }: DueNow) => Number(what === 'reaction');
  return sortRunning(due).sort((one, other) => isFirst(other) - isFirst(one));
}

/** Nothing else is due than a second ago, so nothing is to be said or made anew. */
export const isSameDue = (one: readonly DueNow[], other: readonly DueNow[]): boolean =>
  one.length === other.length &&
  one.every(({ consultation, clock, what, atMs }, place) => {
    const then = other[place];
    return (
      then?.consultation.id === consultation.id &&
      then.consultation.record === consultation.record &&
      then.clock.id === clock.id &&
      then.what === what &&
      then.atMs === atMs
    );
  });
