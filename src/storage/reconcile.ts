import type { AsideReason, CopyName } from './asideNote';
import type { CopyReading } from './copyReading';

/** What was mended, in words that can be shown: nothing is put right without being named. */
export type MendedNote =
  | { readonly name: string; readonly copy: CopyName; readonly kind: 'wasMissing'; readonly entries: number }
  | { readonly name: string; readonly copy: CopyName; readonly kind: 'wasBehind'; readonly entries: number }
  | { readonly name: string; readonly copy: CopyName; readonly kind: 'wasDamaged'; readonly entries: number }
  | { readonly name: string; readonly copy: CopyName; readonly kind: 'tailCut'; readonly bytes: number }
  /** Neither copy has it any more. `atLeast` entries; the bytes of a torn one are kept aside. */
  | { readonly name: string; readonly copy: CopyName; readonly kind: 'lostTail'; readonly atLeast: number };

/** What is to be done to one copy, in this order. */
export interface CopyStep {
  readonly setAside: AsideReason | null;
  readonly cutTail: boolean;
  /** Write the log's lines from this place on; null: nothing is lacking. */
  readonly appendFrom: number | null;
}

/** What a log is, and what makes both copies say so. */
export interface Plan {
  readonly lines: readonly string[];
  readonly journal: CopyStep;
  readonly index: CopyStep;
  readonly notes: readonly MendedNote[];
}

/**
 * Two copies, not the same: which one counts?
 * Both whole: the longer one, if the shorter is its beginning; if not, both are set aside. One damaged: the whole
 * one, even when it is shorter (then the loss is named). None whole: both are set aside. A missing copy (null) is
 * never "whole with nothing in it". Checked in tests/src/storage/reconcile.test.ts.
 */
export const reconcile = (name: string, journal: CopyReading | null, index: CopyReading | null): Plan => {
  if (isContradicted(journal, index)) {
    return { lines: [], journal: moveAside, index: moveAside, notes: [] };
  }
  const whole = [journal, index].filter((reading) => reading !== null && reading.fault === null);
  const lines = whole.reduce<readonly string[]>((longest, reading) => {
    return reading !== null && reading.lines.length > longest.length ? reading.lines : longest;
  }, []);
  return {
    lines,
    journal: planCopy(journal, lines.length),
    index: planCopy(index, lines.length),
    notes: [
      ...noteCopy(name, 'journal', journal, lines.length),
      ...noteCopy(name, 'index', index, lines.length),
      ...(whole.length === 0 ? [] : noteLoss(name, journal, index, lines.length)),
    ],
  };
};

const moveAside: CopyStep = { setAside: 'contradiction', cutTail: false, appendFrom: null };

const isContradicted = (journal: CopyReading | null, index: CopyReading | null): boolean => {
  if (journal === null || index === null || journal.fault !== null || index.fault !== null) return false;
  const common = Math.min(journal.lines.length, index.lines.length);
  return journal.lines.slice(0, common).some((line, place) => line !== index.lines[place]);
};

const planCopy = (reading: CopyReading | null, length: number): CopyStep => {
  const held = reading === null || reading.fault !== null ? 0 : reading.lines.length;
  return {
    setAside: reading?.fault ?? null,
    cutTail: reading !== null && reading.fault === null && reading.tailBytes > 0,
    appendFrom: held < length ? held : null,
  };
};

const noteCopy = (
  name: string,
  copy: CopyName,
  reading: CopyReading | null,
  length: number,
): readonly MendedNote[] => {
  if (reading === null) return length === 0 ? [] : [{ name, copy, kind: 'wasMissing', entries: length }];
  if (reading.fault !== null)
    return length === 0 ? [] : [{ name, copy, kind: 'wasDamaged', entries: length }];
  const lacking = length - reading.lines.length;
  return [
    ...(reading.tailBytes > 0 ? [{ name, copy, kind: 'tailCut', bytes: reading.tailBytes } as const] : []),
    ...(lacking > 0 ? [{ name, copy, kind: 'wasBehind', entries: lacking } as const] : []),
  ];
};

const noteLoss = (
  name: string,
  journal: CopyReading | null,
  index: CopyReading | null,
  length: number,
): readonly MendedNote[] => {
  const inJournal = (journal?.claimed ?? 0) - length;
  const inIndex = (index?.claimed ?? 0) - length;
  const atLeast = Math.max(inJournal, inIndex);
  if (atLeast <= 0) return [];
  return [{ name, copy: inJournal >= inIndex ? 'journal' : 'index', kind: 'lostTail', atLeast }];
};
