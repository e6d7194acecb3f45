import type { ReplayFault } from '../../machines/consultation/replay';
import type { AsideNote } from '../storage/asideNote';
import type { MendedNote } from '../storage/reconcile';
import type { CopyTrouble, Reloaded, UnreadNote, WriteFailure } from '../storage/store';
import type { LostWhy } from '../storage/writerLock';

/** What the station has to tell about its own memory: named on screen, never swallowed. */
export type Notice =
  | { readonly kind: 'setAside'; readonly note: AsideNote }
  | {
      readonly kind: 'refusedLog';
      readonly name: string;
      readonly ticket: string | null;
      readonly fault: ReplayFault;
    }
  | { readonly kind: 'refusedEntry'; readonly name: string; readonly seq: number }
  | { readonly kind: 'mended'; readonly note: MendedNote }
  | { readonly kind: 'trouble'; readonly trouble: CopyTrouble }
  | { readonly kind: 'unread'; readonly note: UnreadNote }
  | { readonly kind: 'notSaved'; readonly failure: WriteFailure }
  | { readonly kind: 'lostPlace'; readonly why: LostWhy }
  | { readonly kind: 'notLearnt' }
  /** So much of what other stations share was left out. */
  | { readonly kind: 'leftOut'; readonly count: number };

/** What a restore has to tell, or a log that was read by itself. */
export const listNotices = ({
  aside,
  mended,
  troubles,
  unread,
}: Omit<Reloaded, 'entries'>): readonly Notice[] => [
  ...aside.map((note) => ({ kind: 'setAside', note }) as const),
  ...mended.map((note) => ({ kind: 'mended', note }) as const),
  ...troubles.map((trouble) => ({ kind: 'trouble', trouble }) as const),
  ...unread.map((note) => ({ kind: 'unread', note }) as const),
];
