/** Why a copy of a log cannot be trusted: a changed line with good ones after it, a place missing, a place twice. */
export type Fault = 'badLine' | 'gap' | 'repeat';

/** What one copy holds of one log. */
export interface CopyReading {
  /** The lines from place 0 on, each readable and in its place; up to the first fault, if there is one. */
  readonly lines: readonly string[];
  /** null: the copy is whole as far as it goes. */
  readonly fault: Fault | null;
  /** Bytes after the last good line that are no line: a write broken off. Always 0 in the index. */
  readonly tailBytes: number;
  /** How many entries the copy bears traces of; more than `lines` when some cannot be read. */
  readonly claimed: number;
}

/**
 * Do these places run 0, 1, 2 …?
 * How many do before the first one that does not, and what is wrong with that one.
 */
export const countInOrder = (
  seqs: readonly number[],
): { readonly count: number; readonly fault: Fault | null } => {
  const count = seqs.findIndex((seq, place) => seq !== place);
  if (count === -1) return { count: seqs.length, fault: null };
  return { count, fault: (seqs[count] as number) > count ? 'gap' : 'repeat' };
};
