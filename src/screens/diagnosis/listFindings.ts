import { msPerDay } from '../../../shared/units/time';
import type { Words } from '../../words/words';
import { sayBuild } from '../update/sayBuild';
import type { Told } from './told';

/** One line of the diagnosis. */
export interface Finding {
  readonly topic: keyof Words['diagnosis']['topics'];
  readonly says: string;
  /** What to do about it; null where all is well. */
  readonly todo: string | null;
}

/** From this share of its room on a tablet is full. Assumed because what is left still takes weeks of records. */
export const ASSUMED_FULL_SHARE = 0.8;

/** After so many days without one a backup is asked for. Assumed because a week of records is what a salon can bear to lose. */
export const ASSUMED_BACKUP_DAYS = 7;

/** Less than this, in CSS pixels of the shorter and the longer side, the station is not drawn for. */
const SMALLEST_PX = { short: 768, long: 1024 } as const;

const BYTES_A_MB = 1e6;

/** What is found, line by line, each with what to do about it. Checked in tests/src/screens/diagnosis/listFindings.test.tsx. */
export function listFindings(
  told: Told,
  words: Words,
  write: (count: number) => string,
): readonly [Finding, ...Finding[]] {
  const said = words.diagnosis;
  const { facts } = told;
  const build = told.build === '' ? '' : sayBuild(told.build, words);

  const findBuild = (): Finding => {
    if (build === '') return { topic: 'build', says: said.build.worked, todo: null };
    if (told.waiting === null) return { topic: 'build', says: said.build.runs(build), todo: null };
    const says = said.build.waits(build, sayBuild(told.waiting, words));
    return { topic: 'build', says, todo: said.build.toTake };
  };

  const findPage = (): Finding => {
    const { page } = told;
    if (page === 'kept') return { topic: 'page', says: words.tablet.page.kept, todo: null };
    if (page === 'refused') return { topic: 'page', says: words.tablet.page.refused, todo: said.page.toKeep };
    return { topic: 'page', says: said.page.asking, todo: null };
  };

  const findCopies = (): Finding => {
    const topic = 'copies';
    if (told.mode === 'noStore') return { topic, says: said.copies.none, todo: said.copies.todo };
    if (told.examined === null) return { topic, says: said.copies.watching, todo: null };
    const { journal, index } = told.examined.copies;
    const kind = journal ?? index;
    if (kind === null) return { topic, says: said.copies.good, todo: null };
    const todo = kind === 'quotaExceeded' ? said.copies.full : said.copies.todo;
    if (journal !== null && index !== null) return { topic, says: said.copies.none, todo };
    const copy = words.notices.copies[journal === null ? 'index' : 'journal'];
    return { topic, says: said.copies.bad(copy, words.notices.failures[kind]), todo };
  };

  const findAside = (): readonly Finding[] => {
    if (told.examined === null) return [];
    const count = told.examined.aside.length;
    if (count === 0) return [{ topic: 'aside', says: said.aside.none, todo: null }];
    return [{ topic: 'aside', says: said.aside.some(write(count)), todo: said.aside.todo }];
  };

  const findKept = (): Finding => {
    const topic = 'kept';
    if (facts.isPersisted === null) return { topic, says: said.kept.unknown, todo: said.kept.todo };
    return facts.isPersisted
      ? { topic, says: said.kept.yes, todo: null }
      : { topic, says: said.kept.no, todo: said.kept.todo };
  };

  const findRoom = (): Finding => {
    const { usedBytes, roomBytes } = facts;
    if (usedBytes === null || roomBytes === null)
      return { topic: 'room', says: said.room.unknown, todo: null };
    const sayBytes = (bytes: number) => said.room.bytes(write(Math.ceil(bytes / BYTES_A_MB)));
    const says = said.room.taken(sayBytes(usedBytes), sayBytes(roomBytes));
    return { topic: 'room', says, todo: usedBytes >= ASSUMED_FULL_SHARE * roomBytes ? said.room.todo : null };
  };

  const findBackup = (): Finding => {
    const { lastBackupAtMs, atMs } = told;
    if (lastBackupAtMs === null) return { topic: 'backup', says: said.backup.never, todo: said.backup.todo };
    const isOld = atMs - lastBackupAtMs > ASSUMED_BACKUP_DAYS * msPerDay;
    const says = said.backup.at(words.moments.shortDayAndTime(lastBackupAtMs));
    return { topic: 'backup', says, todo: isOld ? said.backup.todo : null };
  };

  const findClock = (): Finding => {
    const topic = 'clock';
    if (told.behindMs > 0) return { topic, says: said.clock.back, todo: said.clock.todo };
    if (told.jumpsMs.length > 0) return { topic, says: said.clock.jumped, todo: said.clock.todo };
    return { topic, says: said.clock.good(facts.zone), todo: null };
  };

  const findScreen = (): readonly Finding[] => {
    const { screen } = told;
    if (screen === null) return [];
    const topic = 'screen';
    if (screen === 'awake') return [{ topic, says: words.tablet.screenIsAwake, todo: null }];
    if (screen === 'resting') return [{ topic, says: words.tablet.screenRests, todo: null }];
    return [{ topic, says: said.screen.dark, todo: said.screen.todo[screen] }];
  };

  const findSound = (): readonly Finding[] => {
    const { sound, heard } = told;
    if (sound === null) return [];
    const topic = 'sound';
    if (sound !== 'ready') return [{ topic, says: words.tablet.sound[sound], todo: said.sound.todo }];
    if (heard?.answer === 'heard') return [{ topic, says: said.sound.heard, todo: null }];
    const says = heard?.answer === 'notHeard' ? said.sound.notHeard : said.sound.untried;
    return [{ topic, says, todo: said.sound.todo }];
  };

  const findGlass = (): Finding => {
    const { widthPx, heightPx } = facts;
    const size = said.glass.size(write(widthPx), write(heightPx));
    const opened = facts.isOwnApp ? said.glass.asApp : said.glass.inBrowser;
    const isSmall =
      Math.min(widthPx, heightPx) < SMALLEST_PX.short || Math.max(widthPx, heightPx) < SMALLEST_PX.long;
    const says = [size, opened, ...(isSmall ? [said.glass.small] : [])].join(' ');
    return { topic: 'glass', says, todo: isSmall ? said.glass.todo : null };
  };

  return [
    findBuild(),
    findPage(),
    findCopies(),
    ...findAside(),
    findKept(),
    findRoom(),
    findBackup(),
    findClock(),
    ...findScreen(),
    ...findSound(),
    findGlass(),
  ];
}
