import type { Folder, JournalFiles } from '../../../src/storage/journalFiles';
import { makePower, type Power, PowerCut } from './power';

/** A disk without a browser: what is on it outlives every store that was opened over it. */
export type MemoryDisk = Record<Folder, Map<string, Uint8Array>>;

export const makeMemoryDisk = (): MemoryDisk => ({
  journals: new Map(),
  aside: new Map(),
  marks: new Map(),
  rewrites: new Map(),
});

/** The journal's file system over a memory disk, written only as long as the power lasts. */
export const makeMemoryFiles = (disk: MemoryDisk, power: Power = makePower()): JournalFiles => ({
  list: async (folder) => [...disk[folder].keys()].sort(),
  read: async (folder, file) => disk[folder].get(file)?.slice() ?? null,
  append: async (folder, file, bytes) => {
    const isCut = power.step();
    const written = isCut ? bytes.subarray(0, power.tornBytes) : bytes;
    if (!isCut || power.tornBytes > 0) {
      disk[folder].set(file, joinBytes(disk[folder].get(file) ?? new Uint8Array(), written));
    }
    if (isCut) throw new PowerCut('the power failed while a file was written');
  },
  truncate: async (folder, file, size) => {
    stopIfCut(power);
    const held = disk[folder].get(file);
    if (held !== undefined) disk[folder].set(file, held.slice(0, size));
  },
  remove: async (folder, file) => {
    stopIfCut(power);
    disk[folder].delete(file);
  },
  close: async () => undefined,
});

const stopIfCut = (power: Power): void => {
  if (power.step()) throw new PowerCut('the power failed');
};

export const joinBytes = (...parts: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(parts.reduce((size, part) => size + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
};
