import type { Joined, NamedFile } from './joinVisits';
import { findTicket } from './readEntry';
import type { FileRefusal, Place } from './reportFile';

/** What a report left out, and where it stands. */
export type ReportFault =
  | {
      readonly of: 'file';
      readonly name: string;
      readonly why: FileRefusal['why'] | 'notRead';
      readonly place: Place | null;
    }
  /** No record this edition knows; or one whose log does not add up, from which entry on, from 1. */
  | {
      readonly of: 'record';
      readonly name: string;
      readonly place: Place;
      readonly ticket: string | null;
      readonly entry: number | null;
    }
  /**
   * This entry of it, from 1, says a moment that is on no day: left out. Or one more than a day after its file was saved, so
   * that a clock was wrong: it counts by the days it says.
   */
  | {
      readonly of: 'beyondDays' | 'fromLater';
      readonly name: string;
      readonly place: Place;
      readonly ticket: string | null;
      readonly entry: number;
    }
  | {
      readonly of: 'differing';
      readonly ticket: string;
      readonly places: readonly { readonly name: string; readonly place: Place }[];
    }
  /** Some files are of the invented salon, and others are not. */
  | { readonly of: 'mixed'; readonly invented: readonly string[]; readonly real: readonly string[] }
  /** Names were asked for, and these files do not let figures name anybody. */
  | { readonly of: 'names'; readonly names: readonly string[] };

/** Those that files tell otherwise, each by its ticket. */
export const nameDiffering = (files: readonly NamedFile[], { differing }: Joined): readonly ReportFault[] =>
  differing.map(({ id, places }) => {
    const visit = files.flatMap(({ file }) => file.visits).find((each) => each.id === id);
    return { of: 'differing', ticket: (visit === undefined ? null : findTicket(visit)) ?? id, places };
  });

const listNames = (files: readonly NamedFile[]): readonly string[] => files.map(({ name }) => name);

/** Is one of them of the invented salon, and another not? */
export function findMixed(files: readonly NamedFile[]): ReportFault | null {
  const invented = listNames(files.filter(({ file }) => file.isDemo));
  const real = listNames(files.filter(({ file }) => !file.isDemo));
  return invented.length > 0 && real.length > 0 ? { of: 'mixed', invented, real } : null;
}

/** The files whose settings do not let figures name anybody; none where names are not asked for. */
export function findNameless(files: readonly NamedFile[], isByStylist: boolean): readonly ReportFault[] {
  const names = listNames(files.filter(({ file }) => !file.mayName));
  return isByStylist && names.length > 0 ? [{ of: 'names', names }] : [];
}
