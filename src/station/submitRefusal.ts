import type { BackupRefusal } from '../../shared/records/backupFile';
import type { ClassifyRefusal } from '../../shared/records/conflict';
import type { RecordsRefusal } from '../../shared/records/json/consultationFile';
import type { PutOnRefusal } from '../../shared/records/skinTest/citation';
import type { SkinTestConflict } from '../../shared/records/skinTest/conflict';
import type { WriteFailure } from '../storage/store';

/** Why the station did not take an answer. */
export type SubmitRefusal =
  | ClassifyRefusal
  | SkinTestConflict
  | PutOnRefusal
  | { readonly kind: 'notNow' }
  /** The clock jumped ahead while a skin test was on, and nobody has said whether it slept. */
  | { readonly kind: 'waitInDoubt'; readonly doubtMs: number }
  | { readonly kind: 'stoppedElsewhere' }
  /** Earlier months are still being looked through, so many of so many; a stop may lie there. */
  | { readonly kind: 'stillReading'; readonly read: number; readonly all: number }
  | { readonly kind: 'noSuchChair' }
  /** `ticket`: whose chair it is. */
  | { readonly kind: 'chairTaken'; readonly ticket: string }
  /** Somebody of that ticket is open: nothing of hers is erased now. */
  | { readonly kind: 'ticketOpen' }
  /** Erased, and shown nowhere any more; but a copy refused to be rewritten, and is as soon as it can be. */
  | { readonly kind: 'eraseUnfinished'; readonly failure: WriteFailure }
  | { readonly kind: 'notWriting' }
  /** A backup that is none, or not whole: nothing of it was used. */
  | { readonly kind: 'backup'; readonly why: BackupRefusal }
  /** A file of consultations that is none, or not whole: nothing of it was used. */
  | { readonly kind: 'records'; readonly why: RecordsRefusal }
  /** One of its logs is none that people here could have written, at this entry, from 1: nothing of it was used. */
  | { readonly kind: 'recordRefused'; readonly ticket: string; readonly entry: number }
  /** What is here under the same name says something else: nothing of it was used. */
  | { readonly kind: 'recordDiffers'; readonly ticket: string }
  /** The store took so many of it and refused the next. */
  | { readonly kind: 'recordsNotSaved'; readonly came: number }
  | { readonly kind: 'badSettings'; readonly path: string }
  | { readonly kind: 'notSaved'; readonly failure: WriteFailure };
