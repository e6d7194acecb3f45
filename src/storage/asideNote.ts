import type { Fault } from './copyReading';

/** Which of the two copies. */
export type CopyName = 'journal' | 'index';

/**
 * Why something was set aside. The store's own: a fault, two copies that contradict each other, a write broken
 * off. The caller's: `refused` (the fold would not take it), `unknownVersion` (written by a later edition).
 */
export type AsideReason = Fault | 'contradiction' | 'tornTail' | CallerReason;
export type CallerReason = 'refused' | 'unknownVersion';

/** Something that could not be read, and where it is kept, untouched. */
export interface AsideNote {
  /** The log it belonged to. */
  readonly name: string;
  readonly copy: CopyName;
  readonly reason: AsideReason;
  /** File in `aside/`, or key in the index. */
  readonly kept: string;
}

const reasons: ReadonlySet<string> = new Set<AsideReason>([
  'badLine',
  'gap',
  'repeat',
  'contradiction',
  'tornTail',
  'refused',
  'unknownVersion',
]);

/** Is this one of the reasons for setting aside? */
export const isAsideReason = (text: string): text is AsideReason => reasons.has(text);

/** A log that is on its way aside in both copies; kept as a file so that a power cut cannot leave it half done. */
export interface AsideMark {
  readonly name: string;
  readonly reason: AsideReason;
}

/** What is the file of this mark called? */
export const writeMark = (mark: AsideMark): string => `${mark.name}.${mark.reason}`;

/** Which log is on its way aside, by the name of this file? */
export const readMark = (file: string): AsideMark | null => {
  const [name, reason, ...rest] = file.split('.');
  if (name === undefined || reason === undefined || rest.length > 0 || !isAsideReason(reason)) return null;
  return { name, reason };
};
