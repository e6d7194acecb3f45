import { fold } from '../../../shared/records/reduce';
import { readByteChecksum } from '../../../src/storage/line';
import { type AnyNotice, sayNotice } from '../../../src/words/sayNotice';
import { findWords } from '../../../src/words/words';
import { settings } from '../../src/screens/playStory';
import type { DiskJournal } from './disk';
import type { ReadBack, Told } from './readBack';
import { nameConsultation, type Place } from './salonDay';
import type { ComingTap } from './scenes';

/** What was done to the profile after the kill. */
export type Harm = 'none' | 'indexDeleted' | 'journalCut' | 'both';

/** One kill, as it is known from outside the browser that was killed. */
export interface Kill {
  readonly place: Place;
  /** What the station showed when it had been started for this round. */
  readonly before: ReadBack;
  readonly taps: readonly ComingTap[];
  /** How much of the log the page had been heard to show when it was killed. */
  readonly acknowledged: number;
  readonly harm: Harm;
  /** The log whose journal was cut. */
  readonly cut: string | null;
  /** What lay on the disk when the browser was started again. */
  readonly disk: readonly DiskJournal[];
}

/** What became of it. */
export interface Verdict {
  /** Empty: nothing was lost that had been acknowledged, or its loss was said; and nothing was said that is not so. */
  readonly faults: readonly string[];
  readonly found: number;
  /** Acknowledged entries that neither copy had any more. */
  readonly lost: number;
  /** Chromium itself threw the IndexedDB away, as it does now and then after a kill. */
  readonly isIndexLost: boolean;
  /** The kill fell between the two copies: one had an entry, the other not yet. */
  readonly wasBetween: boolean;
}

/** Is what the station shows after the kill what it owes? */
export function judgeKill(kill: Kill, after: ReadBack): Verdict {
  const faults: string[] = [];
  const expect = (isSo: boolean, fault: string): void => {
    if (!isSo) faults.push(`${kill.place}: ${fault}`);
  };
  const id = nameConsultation(kill.place);
  const before = kill.before.told.get(id);
  const now = after.told.get(id);
  const isIndexSpared = kill.harm === 'none' || kill.harm === 'journalCut';
  const isIndexLost = isIndexSpared && isSaidMissing(kill.disk, after.notices);
  const hasIndex = isIndexSpared && !isIndexLost;
  const wasBetween = after.notices.some((notice) => notice.startsWith(BEHIND));
  if (before === undefined || now === undefined) {
    return { faults: [`${kill.place} is gone`], found: 0, lost: kill.acknowledged, isIndexLost, wasBetween };
  }

  const found = now.log.length;
  const onDisk = kill.disk.find(({ name }) => name === `open-${id}`)?.lines.length ?? 0;
  const isCut = kill.cut === `open-${id}`;
  const most = before.log.length + kill.taps.length;
  const fewest = isCut && !hasIndex ? onDisk : kill.acknowledged;
  expect(found >= fewest, `${found} entries, ${kill.acknowledged} were acknowledged, ${onDisk} on the disk`);
  expect(found <= most, `${found} entries, but only ${most} can have been made`);
  expect(now.isClosed || found >= onDisk, `${found} entries, but the journal had ${onDisk}`);
  for (const [place, event] of now.log.entries()) {
    const known = before.log[place];
    if (known !== undefined) expect(isSame(event, known), `entry ${place} was changed`);
    else {
      const tap = kill.taps[place - before.log.length];
      expect(tap?.isThis(event) === true, `entry ${place} is no ${tap?.makes}: ${JSON.stringify(event)}`);
    }
  }
  expect(isSame(now.record, JSON.parse(JSON.stringify(fold(id, now.log)))), 'the record is not its log');

  let lost = Math.max(0, kill.acknowledged - found);
  for (const [other, told] of kill.before.told) {
    const here = after.told.get(other);
    if (here === undefined) {
      faults.push(`${other} is gone`);
      continue;
    }
    const mayLackOne = !hasIndex && kill.cut === `open-${other}`;
    const kept = told.log.slice(0, mayLackOne ? here.log.length : undefined);
    if (other !== id) {
      expect(isSame(here.log, kept) && told.log.length - kept.length <= 1, `${other} was changed`);
      lost += told.log.length - kept.length;
    }
    faults.push(...compareClocks({ ...told, record: fold(other, kept) }, here));
  }
  faults.push(...judgeNotices(kill, after, hasIndex));
  return { faults, found, lost, isIndexLost, wasBetween };
}

/** Every clock that ran has the deadline it had. */
function compareClocks(before: Told, now: Told): readonly string[] {
  return before.record.clocks.flatMap((clock) => {
    const here = now.record.clocks.find(({ id }) => id === clock.id);
    return here?.dueAtMs === clock.dueAtMs && here.startedAtMs === clock.startedAtMs
      ? []
      : [`${before.record.id}: clock ${clock.id} was due at ${clock.dueAtMs}, now at ${here?.dueAtMs}`];
  });
}

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** By the name of her log, as `readBack` reads it. */
const say = (notice: AnyNotice): string =>
  sayNotice(notice, findWords('en'), settings.units, (id) => `open-${id}`);
type Mended = Extract<AnyNotice, { kind: 'mended' }>['note'];
const sayMended = (note: Mended): string => say({ kind: 'mended', note });
const sayMissing = ({ name, lines }: DiskJournal): string =>
  sayMended({ name, copy: 'index', kind: 'wasMissing', entries: lines.length });

/** How it begins when one copy was behind the other, whatever the log. */
const BEHIND = findWords('en').notices.wasBehind('', '', '').split(':', 1)[0] ?? '';

/** On its way out: once closed, the log may have gone before anything could be said of it. */
const isLeaving = ({ name }: DiskJournal): boolean => name === `open-${nameConsultation('plan')}`;

/** Is the plan given, so that only the record has still to be written? */
const isOver = ({ lines }: DiskJournal): boolean => lines.at(-1)?.includes('"PLAN_GIVEN"') === true;

/** Is it said of every log that the index had nothing of it? */
const isSaidMissing = (disk: readonly DiskJournal[], notices: readonly string[]): boolean =>
  disk.every((journal) => isLeaving(journal) || notices.includes(sayMissing(journal)));

/** What must be said is said, and nothing besides but what may be true. */
function judgeNotices(kill: Kill, after: ReadBack, hasIndex: boolean): readonly string[] {
  const must: string[] = [];
  const may: string[] = [];
  for (const { name, tail } of kill.disk.filter((journal) => journal.tail.length > 0)) {
    const kept = `${name}.tornTail.${readByteChecksum(tail)}`;
    must.push(sayMended({ name, copy: 'journal', kind: 'tailCut' }));
    may.push(...[1, 2, 3].map((turn) => saySetAside(name, `${kept}-${turn}`)));
  }
  // Her plan may be given by this tap, or was by one before: her log is then on its way out at any moment.
  const mayBeGone = (journal: DiskJournal): boolean =>
    isLeaving(journal) && (kill.place === 'plan' || isOver(journal));
  if (!hasIndex) {
    must.push(...kill.disk.filter((journal) => !mayBeGone(journal)).map(sayMissing));
    may.push(...kill.disk.filter(mayBeGone).map(sayMissing));
  }
  if (kill.cut !== null) {
    const { name, length } = readCut(kill, after);
    // The line that was cut is gone for good when the index did not have it either.
    const isLost = length === (kill.disk.find((journal) => journal.name === name)?.lines.length ?? 0);
    if (isLost) must.push(sayMended({ name, copy: 'journal', kind: 'lostTail', atLeast: 1 }));
    else must.push(sayMended({ name, copy: 'journal', kind: 'wasBehind', entries: 1 }));
  }
  const name = `open-${nameConsultation(kill.place)}`;
  const inFlight = kill.taps.map((_, place) => place + 1);
  if (hasIndex) {
    may.push(...inFlight.map((entries) => sayMended({ name, copy: 'index', kind: 'wasBehind', entries })));
    // A closed record is a log of its own: the journal may have its first entry, and the index not yet.
    const months = kill.disk.filter((journal) => journal.name.startsWith('closed-'));
    if (kill.place === 'plan') may.push(...months.map(sayMissing));
  }
  return [
    ...must.filter((notice) => !after.notices.includes(notice)).map((notice) => `not said: ${notice}`),
    ...after.notices
      .filter((notice) => !must.includes(notice) && !may.includes(notice))
      .map((notice) => `said, but not so: ${notice}`),
  ];
}

const saySetAside = (name: string, kept: string): string =>
  say({ kind: 'setAside', note: { name, copy: 'journal', reason: 'tornTail', kept } });

function readCut(kill: Kill, after: ReadBack): { readonly name: string; readonly length: number } {
  const name = kill.cut ?? '';
  return { name, length: after.told.get(name.slice('open-'.length))?.log.length ?? 0 };
}
