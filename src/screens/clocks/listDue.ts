import type { Consultation } from '../../../machines/consultation/consultation';
import { findCall } from '../../../shared/records/call';
import { readClock } from '../../../shared/records/clock';
import { findLookDueSinceMs } from '../../../shared/records/lookDue';
import { listClocks, type RunningClock, sortByUrgency } from '../bar/viewBar';

/** Something that somebody has to do for a client now. */
export interface DueNow extends RunningClock {
  /** A look; to the basin; off or rinsed or read, or that too late; or a reaction with colour still on. */
  readonly what: 'look' | 'basin' | 'end' | 'overrun' | 'reaction';
  /** Since when it is due; at the basin, when it is to be rinsed. */
  readonly atMs: number;
}

function readDue(running: RunningClock, nowMs: number): DueNow | null {
  const { clock, consultation } = running;
  const { phase } = readClock(clock, nowMs);
  const lookDueSinceMs = findLookDueSinceMs(clock, nowMs);
  if (clock.kind === 'head' && consultation.state.context.facts.care !== 'calm') {
    return { ...running, what: 'reaction', atMs: clock.startedAtMs };
  }
  if (phase === 'over') {
    const isOverrun = findCall(clock, nowMs)?.why === 'overrun';
    return { ...running, what: isOverrun ? 'overrun' : 'end', atMs: clock.dueAtMs };
  }
  if (phase === 'nearlyDue' && clock.kind === 'head')
    return { ...running, what: 'basin', atMs: clock.dueAtMs };
  if (lookDueSinceMs !== null) return { ...running, what: 'look', atMs: lookDueSinceMs };
  return null;
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
    .flatMap((running) => readDue(running, nowMs) ?? []);
  const isFirst = ({ what }: DueNow) => Number(what === 'reaction');
  return sortByUrgency(due).sort((one, other) => isFirst(other) - isFirst(one));
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
