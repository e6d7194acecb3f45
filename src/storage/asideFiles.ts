import { type AsideNote, type AsideReason, isAsideReason } from './asideNote';
import type { JournalFiles } from './journalFiles';
import { readByteChecksum } from './line';

/**
 * Keeps bytes in `aside/` under the log's name, the reason and their checksum.
 * Done twice, or begun, broken off and done again, it leaves one file; other bytes are never written over.
 * Checked in tests/src/storage/journalCopy.test.ts.
 */
export const keepAside = async (
  files: JournalFiles,
  name: string,
  reason: AsideReason,
  bytes: Uint8Array,
): Promise<AsideNote> => {
  for (let turn = 1; ; turn += 1) {
    const kept = `${name}.${reason}.${readByteChecksum(bytes)}-${turn}`;
    const before = (await files.read('aside', kept)) ?? new Uint8Array();
    if (isBeginning(before, bytes)) {
      await files.append('aside', kept, bytes.subarray(before.length));
      return { name, copy: 'journal', reason, kept };
    }
  }
};

const isBeginning = (begun: Uint8Array, whole: Uint8Array): boolean =>
  begun.length <= whole.length && begun.every((byte, at) => byte === whole[at]);

/** What is this file in `aside/`? null when the store did not put it there. */
export const readAsideFile = (kept: string): AsideNote | null => {
  const [name, reason, checksum] = kept.split('.');
  if (name === undefined || reason === undefined || checksum === undefined) return null;
  return isAsideReason(reason) ? { name, copy: 'journal', reason, kept } : null;
};
