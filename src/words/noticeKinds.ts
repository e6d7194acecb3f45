/** The store's own kinds, as words need them. The station's notices fit in here, or a screen does not compile. */
export type CopyName = 'journal' | 'index';
export type AsideReason =
  | 'badLine'
  | 'gap'
  | 'repeat'
  | 'contradiction'
  | 'tornTail'
  | 'refused'
  | 'unknownVersion';
export type WriteFailureKind =
  | 'indexUnavailable'
  | 'journalUnavailable'
  | 'quotaExceeded'
  | 'lockedElsewhere'
  | 'timedOut'
  | 'notRestored'
  | 'wrongSeq'
  | 'badName'
  | 'notJson';
export type UnreadReason = 'badLine' | 'gap' | 'repeat' | 'badName';
export type LostWhy = 'unavailable' | 'brokenOff';
