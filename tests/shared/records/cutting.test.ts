import { describe, expect, it } from 'vitest';
import {
  ASSUMED_CUTTING_SHOWN_MS,
  CUTTING_KEPT_MS,
  findCuttingLookAtMs,
} from '../../../shared/records/cutting';
import type { IncompatibilityRecord } from '../../../shared/records/record';

const hour = 3_600_000;
const readAtMs = Date.UTC(2026, 2, 3, 14);
const glass = (seen: IncompatibilityRecord['seen']) => ({
  incompatibility: {
    ...{ seen, atMs: readAtMs, by: 'Opal', seq: 9, historyKey: '["metallicColour"]' },
    keptSinceMs: seen === 'running' ? null : readAtMs,
  },
});

describe('a cutting that is kept', () => {
  it('is looked at 24 h after its glass showed nothing, and told of from the reading on', () => {
    expect(CUTTING_KEPT_MS).toBe(24 * hour);
    expect(findCuttingLookAtMs(glass('nothing'), readAtMs)).toBe(readAtMs + 24 * hour);
  });

  it('is told of until the last moment, and not after that', () => {
    const lastMs = readAtMs + CUTTING_KEPT_MS + ASSUMED_CUTTING_SHOWN_MS;
    expect(findCuttingLookAtMs(glass('nothing'), lastMs)).toBe(readAtMs + 24 * hour);
    expect(findCuttingLookAtMs(glass('nothing'), lastMs + 1)).toBeNull();
  });

  it.each(['running', 'reacted'] as const)('is not kept while its glass is %s', (seen) => {
    expect(findCuttingLookAtMs(glass(seen), readAtMs)).toBeNull();
  });

  it('is none where there was no glass', () => {
    expect(findCuttingLookAtMs({ incompatibility: null }, readAtMs)).toBeNull();
  });
});
