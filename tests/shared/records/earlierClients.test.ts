import { describe, expect, it } from 'vitest';
import type { ClosedRecord } from '../../../shared/records/closedRecord';
import { listEarlier, readEarlier } from '../../../shared/records/earlierClients';

const closed = (
  id: string,
  ticketKey: string,
  endedAtMs: number,
  log: readonly unknown[] = [],
): ClosedRecord => ({
  v: 1,
  id,
  ticketKey,
  endedAtMs,
  how: 'done',
  hasStandingStop: false,
  hasClearedStop: false,
  log,
});
const all = [
  closed('a001', 'LM', 1),
  closed('b001', 'LMX', 2),
  closed('c001', 'QF', 3),
  closed('a002', 'LM', 4),
];
const keys = (typed: string) => listEarlier(all, typed).map(({ id }) => id);

describe('earlier clients', () => {
  it('are those whose ticket begins so, each once, the newest first, however it is typed', () => {
    expect(keys('l')).toEqual(['a002', 'b001']);
    expect(keys('L. m')).toEqual(['a002', 'b001']);
    expect(keys('lmx')).toEqual(['b001']);
  });

  it('are nobody where nothing is typed, or nobody begins so', () => {
    expect(keys(' . ')).toEqual([]);
    expect(keys('M')).toEqual([]);
  });

  it('whose log cannot be read are named by their ticket, with nothing of last time', () => {
    const broken = closed('d001', 'ZZ', 9, [{ v: 99 }]);
    expect(readEarlier([broken], broken)).toEqual({ ticket: 'ZZ', endedAtMs: 9, chair: null, last: null });
  });
});
