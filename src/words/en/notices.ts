import type { ReplayFault } from '../../../machines/consultation/replay';
import type { AsideReason, CopyName, LostWhy, UnreadReason, WriteFailureKind } from '../noticeKinds';
import { sayCount } from './sayCount';

const copies: Readonly<Record<CopyName, string>> = { journal: 'the journal', index: 'the index' };

const asideReasons: Readonly<Record<AsideReason, string>> = {
  badLine: 'a line in it cannot be read',
  gap: 'an entry is missing inside it',
  repeat: 'an entry stands in it twice',
  contradiction: 'the two copies contradict each other',
  tornTail: 'its last line was torn off',
  refused: 'it claims what cannot have happened',
  unknownVersion: 'a newer edition of this station wrote it',
};

const faults: Readonly<Record<ReplayFault['code'], string>> = {
  notAnEvent: 'it is no entry of this station',
  newerVersion: 'a newer edition of this station wrote it',
  unknownType: 'it is of a kind nobody knows here',
  badPayload: 'its answers cannot be read',
  badTokens: 'its verdicts cannot be read',
  bowlWithoutStrand: 'it claims a mix without a strand',
  bowlWithoutOutcome: 'it claims a mix without an outcome',
  bowlWithoutDecision: 'it claims a mix without a decision',
  bowlAfterFailedStrand: 'it claims a mix after a strand that failed',
  bowlOfAnotherLine: 'it claims a mix of another line than was tested',
  bowlTooStrong: 'it claims a mix stronger than was tested',
  bowlLiftsOnCarried: 'it claims a lift on the strand of an earlier visit',
  bowlOnOldStrand: 'it claims a mix on a strand that was too old',
  tonerWithoutStretch: 'it claims a toner on hair that nobody felt',
  tonerWithoutRinse: 'it claims a toner where nothing was rinsed',
  tonerOnWeakHair: 'it claims a toner on hair that did not spring back',
  tonerBeforeRinse: 'it claims a toner on hair felt before its rinse',
  tonerOfTestedLine: 'it claims a toner of a line that a strand was in',
  tonerTooStrong: 'it claims a toner stronger or longer than one may be',
  wentBackInTime: 'it is older than the entry before it',
  saysOtherwise: 'its verdict is not what its answers say',
  notNow: 'it could not have followed the entry before it',
  empty: 'there is nothing in it',
};

/** What the copy does not do, said of it. */
const failures: Readonly<Record<WriteFailureKind, string>> = {
  indexUnavailable: 'does not answer',
  journalUnavailable: 'does not answer',
  quotaExceeded: 'has no room left, the tablet is full',
  lockedElsewhere: 'is held by another window',
  timedOut: 'did not answer in time',
  notRestored: 'has not been read yet',
  wrongSeq: 'waits for another entry',
  badName: 'knows no log of this name',
  notJson: 'cannot write this down',
};

const unread: Readonly<Record<UnreadReason, string>> = {
  badLine: 'a line in it cannot be read, and its other copy cannot be reached',
  gap: 'an entry is missing in it, and its other copy cannot be reached',
  repeat: 'an entry stands in it twice, and its other copy cannot be reached',
  badName: 'its name is none of this station’s',
};

const lost: Readonly<Record<LostWhy, string>> = {
  unavailable: 'This browser gives no locks to this page, so this window cannot be the one that writes.',
  brokenOff: 'Another script took the writer’s place. This window no longer writes.',
};

/** What the station has to tell about its own memory. */
export const notices = {
  title: 'What the station has to tell',
  count: (count: string) => sayCount(count, 'notice'),
  read: 'Read',
  dismiss: 'I have read it',
  copies,
  failures,
  settingsLog: 'the settings',
  monthLog: (month: string) => `the closed records of ${month}`,
  skinTestLog: 'a skin test',
  benchLog: 'a trial at the bench',
  erasedLog: 'the list of what was erased',
  otherLog: 'something that is not of this station',
  consultation: (whose: string) => `the consultation of ${whose}`,
  nobodyKnown: 'a client who cannot be named',
  setAside: (log: string, copy: string, reason: AsideReason) =>
    `Set aside, not deleted: ${log} in ${copy}: ${asideReasons[reason]}. Look there whether anything is missing.`,
  refusedLog: (log: string, entry: string, fault: ReplayFault['code']) =>
    `Not taken up: ${log}, entry ${entry}: ${faults[fault]}. Start this client anew, strand test included.`,
  refusedEntry: (log: string, entry: string) =>
    `Cannot be read: entry ${entry} of ${log}. It was left where it is.`,
  wasMissing: (log: string, copy: string, entries: string) =>
    `Put back: ${log}, missing in ${copy}. Entries from the other copy: ${entries}. Nothing to do.`,
  wasBehind: (log: string, copy: string, entries: string) =>
    `Caught up: ${log}, behind in ${copy}. Entries from the other copy: ${entries}. Nothing to do.`,
  wasDamaged: (log: string, copy: string, entries: string) =>
    `Mended: ${log}, damaged in ${copy}. Entries from the other copy: ${entries}. Nothing to do.`,
  tailCut: (log: string, copy: string) =>
    `A power cut tore off the last line of ${log} in ${copy}. What was left of it is kept aside.`,
  lostTail: (log: string, entries: string) =>
    `Lost: the last entries of ${log}, in both copies, at least ${entries}. Ask again what is missing.`,
  troubleAll: (copy: string, kind: WriteFailureKind) => `Nothing can be written: ${copy} ${failures[kind]}.`,
  troubleLog: (log: string, copy: string, kind: WriteFailureKind) =>
    `No entry can be added to ${log} now: ${copy} ${failures[kind]}. Reload the station.`,
  unread: (log: string, copy: string, reason: UnreadReason) =>
    `Left where it is: ${log} in ${copy}: ${unread[reason]}.`,
  notSaved: (log: string, kind: WriteFailureKind) =>
    `Not saved in ${log}: the store ${failures[kind]}. Tap it again.`,
  notSavedMaybe: (log: string, kind: WriteFailureKind) =>
    `Perhaps not saved in ${log}: the store ${failures[kind]}. What the screen shows now is what is held.`,
  jumped: (when: string, ahead: string) =>
    `${when}: the tablet’s clock went on by ${ahead} at once. The tablet slept, or its clock was put ahead.`,
  runsOn: 'What is in a mix, in a glass or on a head counts the whole time.',
  testWaits: 'A skin test that is on waits so much longer, until somebody says which it was.',
  slept: 'It only slept',
  putAhead: 'It was put ahead',
  lostPlace: (why: LostWhy) => lost[why],
  notLearnt:
    'What our strands taught could not be reckoned. What is assumed is shown instead. Nothing to do.',
  leftOut: (count: string) =>
    `Left out of what stations share: ${count}. Nothing here was changed. Settings, Other stations, says what and why.`,
};
