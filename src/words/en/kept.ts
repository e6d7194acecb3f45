import type { EraseCode } from '../../../shared/records/tombstone';
import type { AskWords } from '../formWords';
import { sayCount } from './sayCount';

const codes: Readonly<Record<EraseCode, string>> = {
  sheAsked: 'She asked for it',
  keptLongEnough: 'Kept long enough',
  wrongClient: 'Made for the wrong client',
};

/** "2 closed records and 1 skin test", "1 skin test". */
const sayThings = (records: string, tests: string): string =>
  [
    ...(records === '0' ? [] : [sayCount(records, 'closed record')]),
    ...(tests === '0' ? [] : [sayCount(tests, 'skin test')]),
  ].join(' and ');

/** What is kept of clients who have left, for how long, and the erasing of it. */
export const kept = {
  title: 'Records kept',
  kicker: 'What this tablet keeps of clients who have left',
  things: sayThings,
  none: 'Nothing is kept yet.',
  since: (date: string) => `The oldest is of ${date}.`,
  forMonths: (months: string) =>
    `Kept for ${sayCount(months, 'month')}, a record from the day it closed, a skin test from its last entry.`,
  noEnd: 'Kept without end: somebody chose so in Settings.',
  thenAsked: 'Then they stand here, and somebody erases them.',
  thenByItself: 'Then they go by themselves.',
  why: 'Why they are kept: what stopped her and what her strand stood count when she is back, and answer for her if she complains.',
  law: 'The law of the place says how long they must and may be kept. The owner sets it in Settings.',
  whatStays: 'What stays of what is erased',
  stays: [
    'That it was erased: when, by whom and why. No ticket, no initials. So no backup brings it back.',
    'No count of it stays. What a day’s end counts is counted from the records that are there; this station learns nothing that outlives them.',
    'A file, a printed card or a backup that has left this tablet is not reached from here. Erase it where it lies.',
    'What was set aside because nobody could read it stays set aside: whose it is, nobody can tell.',
    'The memory of the tablet may hold traces for a while, as with any file that is deleted.',
  ],
  pastTitle: 'Past their time',
  nothingPast: 'Nothing is past its time.',
  notWithoutEnd: 'Nothing is, where there is no end.',
  stopsLeft: (count: string) => `With a stop that stands, ${count}: erased only by ticket.`,
  openLeft: (count: string) => `Of a client who is open, ${count}: not while she is here.`,
  lookAt: (count: string) => `Look at them · ${count}`,
  unfinished: 'Erased, and shown nowhere any more; but not out of every copy yet. Is the tablet full?',
  finishIt: 'Finish it',
  erasedTitle: 'Erased so far',
  nothingErased: 'Nothing yet.',
  erasedSo: (count: string, date: string, by: string, code: EraseCode) =>
    `${count} in all, the last on ${date} by ${by}: ${codes[code].toLowerCase()}.`,
  justErased: 'Erased.',
  byTicket: 'Erase by ticket',
  way: 'Records kept',
  wayUnfinished: 'Records kept · an erasing is not finished',
  wayPast: (count: string) => `Records kept · ${count} past their time`,
  findTitle: 'Whose records go?',
  nothingUnder: 'Nothing is kept under this ticket.',
  under: (things: string) => `Kept under it: ${things}.`,
  isOpen: 'Somebody of this ticket is open or parked. Close her first.',
  look: 'Look at them',
  pickTitle: (ticket: string) => `What goes of ${ticket}?`,
  pickHint: 'The same initials may be two clients. Tap what is not hers: it stays.',
  pastPickHint: 'Kept long enough. Tap what is to stay for now.',
  goes: 'goes',
  staysHere: 'stays',
  record: (date: string, how: string) => `${date} · ${how}`,
  unreadable: 'cannot be read any more',
  test: (date: string) => `Skin test · ${date}`,
  testSeen: { notReadYet: 'not read', nothing: 'nothing seen', reaction: 'it reacted' },
  takenBack: 'taken back',
  ofOthers: (date: string, kind: string) => `Other station’s ${kind} · ${date}`,
  otherKinds: { consultation: 'record', skinTest: 'test' },
  notJudged: {
    newer: 'from a newer edition of the station',
    notJudged: 'it could not have been tapped so',
  },
  stop: 'a stop stands',
  page: (page: string, pages: string) => `Page ${page} of ${pages}`,
  goOn: (count: string) => `Go on · ${count}`,
  nothingPicked: 'All of it stays',
  eraseTitle: 'Erase it?',
  form: {
    by: { ask: 'Who erases it?', short: 'Who' },
    code: { ask: 'Why?', short: 'Why', options: codes },
  } satisfies { readonly by: AskWords; readonly code: AskWords & { readonly options: object } },
  goesNow: (things: string) =>
    `Goes: ${things}, with all that was told, tested, weighed and seen. In both copies. It cannot be undone.`,
  staysAfter: 'Stays: that it was erased, when, by whom and why. No ticket.',
  laterReads: 'A later visit stays, and in it what was taken over from this one.',
  stopGoes:
    'A stop that stands goes too. Then nothing here warns anybody: tell her to say it herself at every visit. To keep it, go back and tap what holds it.',
  elsewhere: 'Files, cards and backups that left this tablet: erase them where they lie.',
  hold: (count: string) => `Erase ${count} for good`,
};
