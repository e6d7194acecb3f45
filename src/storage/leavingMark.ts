import { type AsideReason, isAsideReason } from './asideNote';

/**
 * A log that is on its way out of both copies, removed or set aside. Kept as a file, so that a power cut on the way
 * cannot leave one copy that passes for the log.
 */
export interface LeavingMark {
  readonly name: string;
  readonly reason: AsideReason | 'removed';
}

/** What is the file of this mark called? */
export const writeMark = ({ name, reason }: LeavingMark): string => `${name}.${reason}`;

/** Which log is on its way out, by the name of this file? null when it is no mark. */
export const readMark = (file: string): LeavingMark | null => {
  const [name, reason, ...rest] = file.split('.');
  if (name === undefined || reason === undefined || rest.length > 0) return null;
  return reason === 'removed' || isAsideReason(reason) ? { name, reason } : null;
};
