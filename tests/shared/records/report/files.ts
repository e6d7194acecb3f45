import { isSame, replay } from '../../../../machines/consultation/replay';
import { writeBackup } from '../../../../shared/records/backupFile';
import { closeRecord } from '../../../../shared/records/closedRecord';
import { type FileText, makeReport } from '../../../../shared/records/report/makeReport';
import type { Settings } from '../../../../shared/records/settings';
import { msPerDay } from '../../../../shared/units/time';
import { type Played, playUntil, settings } from '../../../src/screens/playStory';
import { leave, write } from '../json/leaving';

/** The story of the ends ironed wet, whole, and as far as her decision: whoever is told half is open still. */
export const whole = playUntil('whole');
export const half = playUntil('DECIDED');
export const opened = playUntil('OPENED');
export const dayOf = (atMs: number): string => new Date(atMs).toISOString().slice(0, 10);
/** The day on which the whole story ends, in UTC. */
export const lastDay = dayOf(whole.atMs);
export const named: Settings = { ...settings, figuresByStylist: true };

interface Head {
  readonly isDemo?: boolean;
  readonly madeAtMs?: number;
}

/** Her consultation under this id, on its way out. */
export const visit = (id: string, { consultation: { record, log } }: Played, under = settings) =>
  leave({ record: { ...record, id }, log }, () => under);

/** The same as a clock told it that was wrong by so much, ms. */
export const movedBy = (told: ReturnType<typeof visit>, byMs: number): ReturnType<typeof visit> => ({
  ...told,
  log: told.log.map((entry) => ({ ...entry, atMs: entry.atMs + byMs })),
});

/** A JSON of days. */
export const records = (visits: readonly ReturnType<typeof visit>[], head: Head = {}): string =>
  write(visits, { madeAtMs: whole.atMs, ...head });

/** A backup: who is done lies in her month, whoever is not in a log of her own. */
export function backup(
  visits: readonly ReturnType<typeof visit>[],
  { isDemo = false, madeAtMs = whole.atMs, under = settings, erased = [] as readonly string[] } = {},
): string {
  const logs = new Map<string, unknown[]>([['settings', [{ settings: under, by: 'Opal' }]]]);
  const put = (name: string, ...entries: readonly unknown[]) =>
    logs.set(name, [...(logs.get(name) ?? []), ...entries]);
  for (const { record, log } of visits) {
    const closed = closeRecord(record, log as Played['consultation']['log']);
    if (closed === null) put(`open-${record.id}`, ...log);
    else put('closed-2026-03', closed);
  }
  if (erased.length > 0) put('erased', { v: 1, ids: erased, atMs: madeAtMs, by: 'Opal', code: 'sheAsked' });
  return [...writeBackup(logs, { madeAtMs, isDemo })].join('');
}

/** A report of the week up to the end of the story, days by UTC. */
export const report = (texts: Readonly<Record<string, string | null>>, isByStylist = false) =>
  makeReport({
    files: Object.entries(texts).map(([name, text]): FileText => ({ name, text })),
    isByStylist,
    findDays: () => ({ from: dayOf(whole.atMs - 6 * msPerDay), day: lastDay, nameDay: dayOf }),
    isSame,
    judge: ({ id, log, find }) => replay(id, log, find),
  });
