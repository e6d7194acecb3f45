import { describe, expect, it } from 'vitest';
import { keepLastBackupAtMs, readLastBackupAtMs } from '../../../src/tablet/lastBackup';
import { askToKeep, readRoom } from '../../../src/tablet/tabletFacts';

const never = () => Promise.reject(new DOMException('no', 'SecurityError'));

describe('the room of this tablet', () => {
  it('is as the browser says', async () => {
    const room = {
      persisted: async () => true,
      persist: never,
      estimate: async () => ({ usage: 3, quota: 10 }),
    };
    expect(await readRoom(room)).toEqual({ isPersisted: true, usedBytes: 3, roomBytes: 10 });
  });

  it.each([
    ['has no such thing', undefined],
    ['refuses', { persisted: never, persist: never, estimate: never }],
  ])('is not known where the browser %s', async (_title, room) => {
    expect(await readRoom(room)).toEqual({ isPersisted: null, usedBytes: null, roomBytes: null });
    expect(await askToKeep(room)).toBeNull();
  });

  it('is asked to be kept only where it is not', async () => {
    let asked = 0;
    const make = (isPersisted: boolean) => ({
      persisted: async () => isPersisted,
      persist: async () => {
        asked += 1;
        return true;
      },
      estimate: never,
    });
    expect([await askToKeep(make(true)), asked]).toEqual([true, 0]);
    expect([await askToKeep(make(false)), asked]).toEqual([true, 1]);
  });
});

describe('the last backup', () => {
  it('is remembered by the tablet, and forgotten where that cannot be read', () => {
    const stored = new Map<string, string>();
    const kept = {
      getItem: (key: string) => stored.get(key) ?? null,
      setItem: (key: string, value: string) => void stored.set(key, value),
    };
    expect(readLastBackupAtMs(kept)).toBeNull();
    keepLastBackupAtMs(kept, 1_764_000_000_000);
    expect(readLastBackupAtMs(kept)).toBe(1_764_000_000_000);
    for (const key of stored.keys()) stored.set(key, '{"atMs":"yesterday"}');
    expect(readLastBackupAtMs(kept)).toBeNull();
  });
});
