import type { ReplayFault } from '../../machines/consultation/replay';
import { formatQuantity } from '../../shared/units/format';
import type { UnitSettings } from '../../shared/units/quantity';
import type { AsideReason, CopyName, LostWhy, UnreadReason, WriteFailureKind } from './noticeKinds';
import type { Words } from './words';

interface InCopy {
  readonly name: string;
  readonly copy: CopyName;
}

/** Everything the station may tell about its own memory. */
export type AnyNotice =
  | {
      readonly kind: 'setAside';
      readonly note: InCopy & { readonly reason: AsideReason; readonly kept: string };
    }
  | {
      readonly kind: 'refusedLog';
      readonly name: string;
      readonly ticket: string | null;
      readonly fault: ReplayFault;
    }
  | { readonly kind: 'refusedEntry'; readonly name: string; readonly seq: number }
  | {
      readonly kind: 'mended';
      readonly note:
        | (InCopy & { readonly kind: 'wasMissing' | 'wasBehind' | 'wasDamaged'; readonly entries: number })
        | (InCopy & { readonly kind: 'tailCut' })
        | (InCopy & { readonly kind: 'lostTail'; readonly atLeast: number });
    }
  | {
      readonly kind: 'trouble';
      readonly trouble: {
        readonly copy: CopyName;
        readonly kind: WriteFailureKind;
        readonly name: string | null;
      };
    }
  | { readonly kind: 'unread'; readonly note: InCopy & { readonly reason: UnreadReason } }
  | {
      readonly kind: 'notSaved';
      readonly failure: {
        readonly name: string;
        readonly kind: WriteFailureKind;
        readonly mayBeHeld: boolean;
      };
    }
  | { readonly kind: 'lostPlace'; readonly why: LostWhy }
  | { readonly kind: 'notLearnt' }
  | { readonly kind: 'leftOut'; readonly count: number };

/** Whose consultation is it, by its id? null where nobody can be named any more. */
export type FindWhose = (id: string) => string | null;

/** A log by what it is to a person: whose consultation, which month, the settings. Never by its id. */
function nameLog(name: string, whose: string | null, { notices }: Words): string {
  const [kind = '', ...rest] = name.split('-');
  const at = rest.join('-');
  if (kind === 'settings') return notices.settingsLog;
  if (kind === 'closed') return notices.monthLog(at);
  if (kind === 'erased') return notices.erasedLog;
  if (kind === 'skintest') return notices.skinTestLog;
  if (kind === 'bench') return notices.benchLog;
  if (kind !== 'open') return notices.otherLog;
  return notices.consultation(whose ?? notices.nobodyKnown);
}

/** Which log is this notice about? null where it is about the station as a whole. */
export function findLogName(notice: AnyNotice): string | null {
  switch (notice.kind) {
    case 'setAside':
    case 'mended':
    case 'unread':
      return notice.note.name;
    case 'refusedLog':
    case 'refusedEntry':
      return notice.name;
    case 'trouble':
      return notice.trouble.name;
    case 'notSaved':
      return notice.failure.name;
    case 'lostPlace':
    case 'notLearnt':
    case 'leftOut':
      return null;
  }
}

/** Whose consultation is this notice about? null where it is about none. */
export function findWhose(notice: AnyNotice, words: Words, whose: FindWhose): string | null {
  const name = findLogName(notice);
  if (name === null || !name.startsWith('open-')) return null;
  const ticket = notice.kind === 'refusedLog' ? notice.ticket : null;
  return ticket ?? whose(name.slice('open-'.length)) ?? words.notices.nobodyKnown;
}

/** What has the station to tell? One plain sentence or two, with the log named. */
export function sayNotice(
  notice: AnyNotice,
  words: Words,
  units: UnitSettings,
  whose: FindWhose = () => null,
): string {
  const { notices } = words;
  const write = (count: number) => formatQuantity(count, 'count', units, words.locale);
  const about = findWhose(notice, words, whose);
  const log = (name: string) => nameLog(name, about, words);
  switch (notice.kind) {
    case 'setAside': {
      const { name, copy, reason } = notice.note;
      return notices.setAside(log(name), notices.copies[copy], reason);
    }
    case 'refusedLog':
      return notices.refusedLog(log(notice.name), write(notice.fault.seq + 1), notice.fault.code);
    case 'refusedEntry':
      return notices.refusedEntry(log(notice.name), write(notice.seq + 1));
    case 'mended': {
      const { note } = notice;
      const copy = notices.copies[note.copy];
      if (note.kind === 'tailCut') return notices.tailCut(log(note.name), copy);
      if (note.kind === 'lostTail') return notices.lostTail(log(note.name), write(note.atLeast));
      return notices[note.kind](log(note.name), copy, write(note.entries));
    }
    case 'trouble': {
      const { name, copy, kind } = notice.trouble;
      return name === null
        ? notices.troubleAll(notices.copies[copy], kind)
        : notices.troubleLog(log(name), notices.copies[copy], kind);
    }
    case 'unread':
      return notices.unread(log(notice.note.name), notices.copies[notice.note.copy], notice.note.reason);
    case 'notSaved': {
      const { name, kind, mayBeHeld } = notice.failure;
      return mayBeHeld ? notices.notSavedMaybe(log(name), kind) : notices.notSaved(log(name), kind);
    }
    case 'lostPlace':
      return notices.lostPlace(notice.why);
    case 'notLearnt':
      return notices.notLearnt;
    case 'leftOut':
      return notices.leftOut(write(notice.count));
  }
}
