import type { ClosedRecord } from '../../shared/records/closedRecord';

interface Placed {
  readonly record: ClosedRecord;
  readonly byMs: number;
}

/** By the earliest end among each record and all that stand behind it, which never falls: so a sort leaves their order. */
function placeOurs(ours: readonly ClosedRecord[]): readonly Placed[] {
  let byMs = Number.POSITIVE_INFINITY;
  const backwards = [...ours].reverse().map((record) => {
    byMs = Math.min(byMs, record.endedAtMs);
    return { record, byMs };
  });
  return backwards.reverse();
}

/**
 * In which order do these closed records stand? What came in from elsewhere stands behind the last one closed here that ended
 * no later; those that were closed here stay in their order, whatever the clock said then. The cost is that of one sort.
 * Checked in tests/src/station/placeBrought.test.ts.
 */
export function placeBrought(closed: readonly ClosedRecord[]): readonly ClosedRecord[] {
  const brought = closed.filter(({ broughtIn }) => broughtIn !== undefined);
  if (brought.length === 0) return closed;
  const ours = placeOurs(closed.filter(({ broughtIn }) => broughtIn === undefined));
  // Of the same moment ours come first: a sort leaves what is equal as it stands.
  return [...ours, ...brought.map((record) => ({ record, byMs: record.endedAtMs }))]
    .sort((one, other) => one.byMs - other.byMs)
    .map(({ record }) => record);
}
