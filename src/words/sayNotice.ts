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
  | { readonly kind: 'lostPlace'; readonly why: LostWhy };

/** A log by what it is to a person: whose consultation, which month, the settings. */
function nameLog(name: string, ticket: string | null, { notices }: Words): string {
  const [kind = '', ...rest] = name.split('-');
  const id = rest.join('-');
  if (kind === 'settings') return notices.settingsLog;
  if (kind === 'closed') return notices.monthLog(id);
  if (kind !== 'open') return notices.otherLog(name);
  return ticket === null ? notices.openLog(id) : notices.ticketLog(ticket, id);
}

/** What has the station to tell? One plain sentence or two, with the log named. */
export function sayNotice(notice: AnyNotice, words: Words, units: UnitSettings): string {
  const { notices } = words;
  const write = (count: number) => formatQuantity(count, 'count', units, words.locale);
  const log = (name: string) => nameLog(name, null, words);
  switch (notice.kind) {
    case 'setAside': {
      const { name, copy, reason, kept } = notice.note;
      return notices.setAside(log(name), notices.copies[copy], reason, kept);
    }
    case 'refusedLog':
      return notices.refusedLog(
        nameLog(notice.name, notice.ticket, words),
        write(notice.fault.seq + 1),
        notice.fault.code,
      );
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
  }
}
