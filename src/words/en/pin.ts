import { figures } from './figures';

/** The PIN of this tablet: what it asks, and what it does not do. */
export const pin = {
  title: 'PIN',
  why: 'This part of the station is kept for whoever knows its PIN. Clients, clocks and alarms need none.',
  entered: (count: string, of: string) => `${count} of ${of} figures`,
  checking: 'Checking …',
  wrong: 'That is not the PIN.',
  waits: (time: string) => `Wrong. The next try in ${time}.`,
  notKept: 'The tablet is full and cannot count tries. Make room, then try again.',
  done: 'Open',
  forgotten: 'PIN forgotten?',
  forgottenTitle: 'PIN forgotten',
  forgottenHint: `Nobody can read it back. Say so here, and it falls after ${figures.forgottenPinHours} hours (our own choice); the right PIN stops that. No record is lost.`,
  forget: `Let it fall in ${figures.forgottenPinHours} hours`,
  falls: (when: string) =>
    `Somebody said that the PIN is forgotten. It falls ${when}, unless it is entered before.`,
  backToPin: 'Back to the PIN',
  panel: 'PIN for this tablet',
  panelHint:
    'Asked for before settings, files of days and backups, records kept and erasing, what is learned, and the trainer’s page. Not for the cover, a client or an alarm.',
  isSet: 'A PIN is set on this tablet.',
  isNotSet: 'No PIN is set: whoever stands here may change settings.',
  needsSecure: 'This browser can make none here: the page is not served securely.',
  set: 'Set a PIN',
  change: 'Change the PIN',
  takeOff: 'Take the PIN off',
  newTitle: 'New PIN',
  newHint: 'Six figures that are no date of anybody here.',
  again: 'Once more, the same six.',
  differs: 'They differ. Begin anew.',
  easy: 'One figure six times, or figures in their order, are tried first. Choose others.',
  next: 'Next',
  keep: 'Keep it',
  notSet: 'The tablet could not keep it. Make room, then try again.',
  honestTitle: 'What it does not protect',
  honest: [
    'It keeps a screen closed. What is stored on this tablet is not encrypted by it.',
    'Whoever holds the unlocked tablet and knows a browser’s tools, or takes its storage out, reads all of it, and can take the PIN off.',
    'A clock put ahead shortens the wait after a wrong PIN, and after a forgotten one. Lock the tablet itself, and its settings, by its own means.',
    'It is of this tablet alone: in no backup, no file and at no other station. Set one on each.',
  ],
};
