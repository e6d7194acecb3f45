import type { Result } from '../../result';
import { isFromLater } from '../backupFile';
import type { DayRecords, Days } from '../day/dayRecords';
import { type FoundVisit, type IsSame, joinVisits, type NamedFile } from './joinVisits';
import { findTicket, isBeyondDays, readEntry } from './readEntry';
import { readReportFile } from './readReportFile';
import {
  gatherVisits,
  type JudgedVisit,
  type PersonFigures,
  type ReportFigures,
  reckonPeople,
  reckonReport,
} from './reckonReport';
import { findMixed, findNameless, nameDiffering, type ReportFault } from './reportFault';
import type { ToldVisit } from './reportFile';

/** One file, and how much of it there was. */
export interface ReadFile extends Pick<NamedFile['file'], 'kind' | 'madeAtMs' | 'unread'> {
  readonly name: string;
  readonly visits: number;
}

export interface Report {
  readonly isDemo: boolean;
  readonly figures: ReportFigures;
  /** null: not asked for, or not allowed. */
  readonly people: readonly PersonFigures[] | null;
  readonly files: readonly ReadFile[];
  /** So many stood in two files; were erased; lie outside these days. */
  readonly again: number;
  readonly erased: number;
  readonly outside: number;
  /** Minutes ahead of UTC by which the days are parted, and all that the files say; null where the files say nothing. */
  readonly offsetMin: number | null;
  readonly offsetsMin: readonly number[];
}

/** A file by its name, and its text; null: it could not be read. */
export interface FileText {
  readonly name: string;
  readonly text: string | null;
}

export interface Asked {
  readonly files: readonly FileText[];
  readonly isByStylist: boolean;
  /** Which days? By how far ahead of UTC the files are, and the newest moment in them that a right clock can have said, ms. */
  readonly findDays: (offsetMin: number | null, newestAtMs: number) => Days;
  readonly isSame: IsSame;
  /** Is this log what it claims to be, and what does it come to? Else from which entry on it is not, from 0. */
  readonly judge: (visit: ToldVisit) => Result<Omit<JudgedVisit, 'toldAtMs'>, { readonly seq: number }>;
}

const findNewest = (numbers: Iterable<number>): number => {
  let newest = Number.NEGATIVE_INFINITY;
  for (const each of numbers) if (each > newest) newest = each;
  return newest;
};

const listMoments = ({ log }: ToldVisit): readonly number[] => log.map((entry) => readEntry(entry).atMs);

/** The first entry of this consultation whose moment is so, if there is one. */
function nameEntry(
  of: 'beyondDays' | 'fromLater',
  { name, visit }: FoundVisit,
  isSo: (atMs: number) => boolean,
): readonly ReportFault[] {
  const at = listMoments(visit).findIndex(isSo);
  return at === -1 ? [] : [{ of, name, place: visit.place, ticket: findTicket(visit), entry: at + 1 }];
}

/** Did it lie ahead when the file of this consultation was saved? Then a clock was wrong, there or since. */
const isAhead =
  ({ madeAtMs }: ToldVisit) =>
  (atMs: number): boolean =>
    isFromLater({ madeAtMs: atMs }, madeAtMs);

function readAll(texts: readonly FileText[]): {
  readonly files: readonly NamedFile[];
  readonly faults: readonly ReportFault[];
} {
  const files: NamedFile[] = [];
  const faults: ReportFault[] = [];
  for (const { name, text } of texts) {
    const read = text === null ? null : readReportFile(text);
    if (read === null) faults.push({ of: 'file', name, why: 'notRead', place: null });
    else if (!read.ok) faults.push({ of: 'file', name, ...read.error });
    else {
      const beyond = read.value.visits.flatMap((visit) =>
        nameEntry('beyondDays', { name, visit }, isBeyondDays),
      );
      faults.push(...beyond);
      const isWithin = (visit: ToldVisit): boolean => !listMoments(visit).some(isBeyondDays);
      files.push({ name, file: { ...read.value, visits: read.value.visits.filter(isWithin) } });
      for (const place of read.value.notUnderstood)
        faults.push({ of: 'record', name, place, ticket: null, entry: null });
    }
  }
  return { files, faults };
}

/** Judged are those that may bear on these days; what is known to have closed on others need not be. */
function judgeAll(found: readonly FoundVisit[], days: Days, judge: Asked['judge']) {
  const visits: JudgedVisit[] = [];
  const faults: ReportFault[] = [];
  const isWithin = (atMs: number): boolean => {
    const day = Number.isFinite(atMs) ? days.nameDay(atMs) : '';
    return days.from <= day && day <= days.day;
  };
  for (const { name, visit } of found) {
    if (visit.isClosed && !listMoments(visit).some(isWithin)) continue;
    const judged = judge(visit);
    if (judged.ok)
      visits.push({ record: judged.value.record, log: judged.value.log, toldAtMs: visit.madeAtMs });
    else {
      const { place } = visit;
      faults.push({ of: 'record', name, place, ticket: findTicket(visit), entry: judged.error.seq + 1 });
    }
  }
  return { visits, faults };
}

const countOutside = (records: DayRecords, all: number): number =>
  all - records.closed.length - records.open.length - records.goneOn.length;

/**
 * What do these files of any number of tablets come to, over these days? What cannot be read, or does not add up, is left
 * out and named; the rest is told all the same. No report where nothing could be read, and none of an invented salon and a
 * real one together. Checked in tests/shared/records/report/makeReport.test.ts.
 */
export function makeReport({ files: texts, isByStylist, findDays, isSame, judge }: Asked): {
  readonly report: Report | null;
  readonly faults: readonly ReportFault[];
} {
  const { files, faults: unread } = readAll(texts);
  const mixed = findMixed(files);
  if (mixed !== null || files.length === 0)
    return { report: null, faults: mixed === null ? unread : [...unread, mixed] };
  const joined = joinVisits(files, isSame);
  const byAge = [...files].sort((one, other) => other.file.madeAtMs - one.file.madeAtMs);
  const offsets = byAge.map(({ file }) => file.offsetMin).filter((offset) => offset !== null);
  const moments = joined.visits.flatMap(({ visit }) => {
    const isLater = isAhead(visit);
    return listMoments(visit).filter((atMs) => !isLater(atMs));
  });
  const nowMs = findNewest(moments.length > 0 ? moments : byAge.map(({ file }) => file.madeAtMs));
  const offsetMin = offsets[0] ?? null;
  const { visits, faults } = judgeAll(joined.visits, findDays(offsetMin, nowMs), judge);
  const leftOut = new Set(faults.map((each) => ('place' in each ? each.place : null)));
  const ahead = joined.visits
    .filter(({ visit }) => !leftOut.has(visit.place))
    .flatMap((found) => nameEntry('fromLater', found, isAhead(found.visit)));
  const records = gatherVisits(visits, nowMs, findDays(offsetMin, nowMs));
  const nameless = findNameless(files, isByStylist);
  return {
    report: {
      isDemo: files.some(({ file }) => file.isDemo),
      figures: reckonReport(records, nowMs),
      people: isByStylist && nameless.length === 0 ? reckonPeople(records, nowMs) : null,
      files: files.map(({ name, file: { kind, madeAtMs, unread: lost, visits: told } }) => ({
        ...{ name, kind, madeAtMs },
        unread: lost,
        visits: told.length,
      })),
      again: joined.again,
      erased: joined.erased,
      outside: countOutside(records, joined.visits.length - faults.length),
      offsetMin,
      offsetsMin: [...new Set(offsets)],
    },
    faults: [...unread, ...nameDiffering(files, joined), ...faults, ...ahead, ...nameless],
  };
}
