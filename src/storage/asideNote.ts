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
