import type { Place, ReportFile, ToldVisit } from './reportFile';

/** A file by the name it lies under. */
export interface NamedFile {
  readonly name: string;
  readonly file: ReportFile;
}

/** One consultation in one of the files. */
export interface FoundVisit {
  readonly name: string;
  readonly visit: ToldVisit;
}

/** One consultation that two files tell otherwise: who of them is right, nobody can tell here. */
export interface Differing {
  readonly id: string;
  readonly places: readonly { readonly name: string; readonly place: Place }[];
}

export interface Joined {
  /** Each consultation once, as the file tells it that knows most of it. */
  readonly visits: readonly FoundVisit[];
  readonly differing: readonly Differing[];
  /** So many stood in another file too. */
  readonly again: number;
  /** So many were erased at one of the stations, and are left out. */
  readonly erased: number;
}

/** Do two entries say the same, whatever the order of their names? */
export type IsSame = (one: unknown, other: unknown) => boolean;

/** The longest of them, seen last; null where another one is not the beginning of it. */
function findWhole(found: readonly FoundVisit[], isSame: IsSame): FoundVisit | null {
  const whole = found.reduce((one, other) => {
    const by = other.visit.log.length - one.visit.log.length;
    return by > 0 || (by === 0 && other.visit.madeAtMs > one.visit.madeAtMs) ? other : one;
  });
  const isBeginning = ({ visit: { log } }: FoundVisit): boolean =>
    log.every((entry, index) => isSame(entry, whole.visit.log[index]));
  return found.every((each) => each === whole || isBeginning(each)) ? whole : null;
}

/**
 * The consultations of all these files, each once. Who was open when one tablet was saved and went on since counts as she
 * went on; one that two files tell otherwise counts in neither way and is named. The order of the files does not matter.
 * Checked in tests/shared/records/report/joinVisits.test.ts.
 */
export function joinVisits(files: readonly NamedFile[], isSame: IsSame): Joined {
  const gone = new Set(files.flatMap(({ file }) => file.erased));
  const byId = new Map<string, FoundVisit[]>();
  for (const { name, file } of files) {
    for (const visit of file.visits) byId.set(visit.id, [...(byId.get(visit.id) ?? []), { name, visit }]);
  }
  const visits: FoundVisit[] = [];
  const differing: Differing[] = [];
  let again = 0;
  for (const [id, found] of byId) {
    if (gone.has(id)) continue;
    const whole = findWhole(found, isSame);
    again += found.length - 1;
    if (whole !== null) visits.push(whole);
    else differing.push({ id, places: found.map(({ name, visit: { place } }) => ({ name, place })) });
  }
  return { visits, differing, again, erased: [...byId.keys()].filter((id) => gone.has(id)).length };
}
