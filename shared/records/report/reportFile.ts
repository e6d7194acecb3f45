import type { Settings } from '../settings';

/** Where in its file something stands: its line, from 1; or which consultation of the list it is, from 1, and its ticket. */
export type Place =
  | { readonly line: number }
  | { readonly consultation: number; readonly ticket: string | null };

/** One consultation as a file tells it; nothing of it is believed before its log was judged anew. */
export interface ToldVisit {
  readonly id: string;
  readonly log: readonly unknown[];
  readonly place: Place;
  /** Under which settings was this entry judged? */
  readonly find: (settingsId: number) => Settings;
  /** Known to be closed without being judged: of other days it need not be. */
  readonly isClosed: boolean;
  /** When its file was made, ms since 1970-01-01 UTC: what still ran then is told as it stood. */
  readonly madeAtMs: number;
}

/** What a file is, and all that it tells. */
export interface ReportFile {
  readonly kind: 'records' | 'backup';
  /** Of the invented salon. */
  readonly isDemo: boolean;
  readonly madeAtMs: number;
  /** Minutes ahead of UTC, where the file says how its clocks stood; null of a backup, which has none. */
  readonly offsetMin: number | null;
  readonly visits: readonly ToldVisit[];
  /** Erased at that station, by id: no file brings them back. */
  readonly erased: readonly string[];
  /** Closed records that are none this edition knows: left out, each by its place. */
  readonly notUnderstood: readonly Place[];
  /** So many records that the station itself could not read any more. */
  readonly unread: number;
  /** May figures name who works there, by the settings in force when it was made? */
  readonly mayName: boolean;
}

/** Why a file is not read; where, if one place can be named. */
export interface FileRefusal {
  readonly why:
    | 'empty'
    | 'anotherProgram'
    | 'table'
    | 'notText'
    | 'cutOff'
    | 'damaged'
    | 'newer'
    | 'beyondDays';
  readonly place: Place | null;
}
