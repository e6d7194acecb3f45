import { accept, type Result, refuse } from '../../result';
import { findCarried } from '../json/carriedSettings';
import { readConsultations, readTold, type ToldConsultation } from '../json/consultationFile';
import { defaultSettings } from '../settings';
import { findTicket, findTicketTold, parseJson, readEntry } from './readEntry';
import type { FileRefusal, Place, ReportFile } from './reportFile';

/** How far ahead of UTC was the clock that wrote this moment (published: RFC 3339, section 5.6)? Minutes. */
function readOffsetMin(said: string): number {
  const [, sign, hours, minutes] = /([+-])(\d\d):(\d\d)$/.exec(said) ?? [];
  const by = Number(hours ?? 0) * 60 + Number(minutes ?? 0);
  return sign === '-' ? -by : by;
}

const tell = ({ id, settings, log }: ToldConsultation) => ({
  id,
  log,
  find: (settingsId: number) => findCarried(settings, settingsId) ?? defaultSettings,
});

/** The file has no settings of its own, so those count under which the newest of its entries was made. Of nobody: yes. */
function mayNameIn(told: readonly ToldConsultation[]): boolean {
  let newestAtMs = Number.NEGATIVE_INFINITY;
  let mayName = true;
  for (const { log, settings } of told) {
    for (const entry of log) {
      const { atMs, settingsId } = readEntry(entry);
      if (atMs < newestAtMs) continue;
      newestAtMs = atMs;
      mayName = findCarried(settings, settingsId)?.figuresByStylist === true;
    }
  }
  return mayName;
}

const listIn = (content: unknown): readonly unknown[] => {
  const { consultations } = (content ?? {}) as { readonly consultations?: unknown };
  return Array.isArray(consultations) ? consultations : [];
};

/**
 * Where was this file damaged? The first consultation that is not as it was written, by its number and ticket; where the
 * file is no JSON any more, its first line that is none. null where all of that is whole, as when the head was changed.
 */
function findPlace(text: string): Place | null {
  const content = parseJson(text);
  if (content !== undefined) {
    const told = listIn(content);
    const at = told.findIndex((each) => readTold(each) === null);
    return at === -1 ? null : { consultation: at + 1, ticket: findTicketTold(told[at]) };
  }
  const lines = text.split('\n');
  const at = lines.findIndex(
    (line, index) => index > 0 && line !== ']}' && parseJson(line.replace(/,$/, '')) === undefined,
  );
  return { line: (at === -1 ? lines.length - 1 : at) + 1 };
}

/**
 * What consultations does this JSON of a day, or of days, tell? As it is brought in: all of them or none.
 * Checked in tests/shared/records/report/readReportFile.test.ts.
 */
export function readRecordsFile(text: string): Result<ReportFile, FileRefusal> {
  const pieces = readConsultations(text);
  let next = pieces.next();
  while (next.done !== true) next = pieces.next();
  const read = next.value;
  if (!read.ok) {
    const why = read.error;
    if (why === 'damaged' || why === 'cutOff') {
      return refuse({ why, place: findPlace(text.trimEnd()) });
    }
    return refuse({
      why: why === 'newer' || why === 'table' || why === 'notText' ? why : 'anotherProgram',
      place: null,
    });
  }
  const { told, made } = read.value;
  return accept({
    kind: 'records',
    isDemo: made.isDemo,
    madeAtMs: made.madeAtMs,
    offsetMin: readOffsetMin(made.madeAt),
    visits: told.map((each, index) => ({
      ...tell(each),
      place: { consultation: index + 1, ticket: findTicket(each) },
      isClosed: false,
      madeAtMs: made.madeAtMs,
    })),
    erased: [],
    notUnderstood: [],
    unread: made.unread.length,
    mayName: mayNameIn(told),
  });
}
