import type { BackupRefusal } from '../../shared/records/backupFile';
import type { ClassifyRefusal } from '../../shared/records/conflict';
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
  | { readonly kind: 'badSettings'; readonly path: string }
  | { readonly kind: 'notSaved'; readonly failure: WriteFailure };
