import type { Consultation } from '../../../machines/consultation/consultation';
import { type ClosedRecord, parseClosedLog } from '../../../shared/records/closedRecord';
import {
  ASSUMED_CUTTING_SHOWN_MS,
  CUTTING_KEPT_MS,
  findCuttingLookAtMs,
} from '../../../shared/records/cutting';
import type { ConsultationRecord } from '../../../shared/records/record';
import { fold } from '../../../shared/records/reduce';
import type { StationState } from '../../station/stationState';

/** A cutting on the shelf, whose it is, and when somebody is to look at it again. */
export interface KeptCutting {
  readonly id: string;
  readonly record: ConsultationRecord;
  /** She is open still: what is seen can be told of her. */
  readonly open: Consultation | null;
  readonly lookAtMs: number;
}

/** A closed record never changes, so it is read once. */
const glassRead = new WeakMap<ClosedRecord, boolean>();

/** Only who had a glass read can have left a cutting: the others are not folded at all. */
function readsGlass(closed: ClosedRecord): boolean {
  const known = glassRead.get(closed);
  if (known !== undefined) return known;
  const reads = closed.log.some(
    (entry) =>
      typeof entry === 'object' && entry !== null && 'type' in entry && entry.type === 'INCOMPATIBILITY_READ',
  );
  glassRead.set(closed, reads);
  return reads;
}

const folded = new WeakMap<ClosedRecord, ConsultationRecord | null>();

function foldClosed(closed: ClosedRecord): ConsultationRecord | null {
  const known = folded.get(closed);
  if (known !== undefined) return known;
  const log = parseClosedLog(closed);
  const record = log === null ? null : fold(closed.id, log);
  folded.set(closed, record);
  return record;
}

const isRecent = ({ endedAtMs }: ClosedRecord, nowMs: number): boolean =>
  nowMs - endedAtMs <= CUTTING_KEPT_MS + ASSUMED_CUTTING_SHOWN_MS;

/**
 * Which cuttings are kept, of clients who are open and of those whose record is closed? The one to look at first comes
 * first. Checked in tests/src/screens/cuttings.test.tsx.
 */
export function listCuttings(
  { open, closed }: Pick<StationState, 'open' | 'closed'>,
  nowMs: number,
): readonly KeptCutting[] {
  const ofOpen = [...open.values()].map((consultation) => ({
    id: consultation.id,
    record: consultation.record,
    open: consultation,
  }));
  const ofClosed = closed
    .filter((each) => !open.has(each.id) && isRecent(each, nowMs) && readsGlass(each))
    .flatMap((each) => {
      const record = foldClosed(each);
      return record === null ? [] : [{ id: each.id, record, open: null }];
    });
  return [...ofOpen, ...ofClosed]
    .flatMap((each) => {
      const lookAtMs = findCuttingLookAtMs(each.record, nowMs);
      return lookAtMs === null ? [] : [{ ...each, lookAtMs }];
    })
    .sort((one, other) => one.lookAtMs - other.lookAtMs);
}

/** Somebody is to look at it now. */
export const isCuttingDue = ({ lookAtMs }: KeptCutting, nowMs: number): boolean => nowMs >= lookAtMs;

/** The same cuttings as a second ago, so nothing is to be made anew under a finger. */
export const isSameCuttings = (one: readonly KeptCutting[], other: readonly KeptCutting[]): boolean =>
  one.length === other.length &&
  one.every(({ id, open, lookAtMs }, place) => {
    const then = other[place];
    return then?.id === id && then.open === open && then.lookAtMs === lookAtMs;
  });
