import type { OthersDelay, OthersRefusal, OthersTrouble } from '../othersKinds';
import { sayCount } from './sayCount';

const troubles: Readonly<Record<OthersTrouble, string>> = {
  gone: 'They cannot be reached. Everything is kept here and goes out by itself once they are back.',
  silent:
    'The salon’s server is there, but the store behind it does not answer. Everything is kept here and goes out by itself once it does.',
  turnedAway:
    'The store behind the salon’s server turned this station away. Whoever set it up has to look. Everything is kept here until then.',
  strange: 'What answers there is no store of records. Whoever set it up has to look.',
  notTaken: 'This tablet could not write what came in: it may be full.',
};

const refusals: Readonly<Record<OthersRefusal | OthersDelay, string>> = {
  openHere: 'somebody it names is open here, and it is done once she is closed',
  fromLater: 'it is of more than a day after this tablet’s clock, so one of the clocks is wrong',
  foreign: 'its name is none of a record',
  damaged: 'its content is not what its name says',
  newer: 'a newer edition of the station wrote it',
  tooLarge: 'it is too large to be taken',
  otherContent: 'something else lies there under its name',
  notKept: 'the other side did not keep it',
  notJudged: 'it could not have been tapped like that',
};

/** Other stations that this one shares its records with. */
export const others = {
  title: 'Other stations',
  inStep: (ago: string) => `In step, ${ago}`,
  apart: (since: string) => `Not reached since ${since}`,
  neverReached: 'Not reached yet',
  justNow: 'just now',
  minutesAgo: (minutes: string) => `${sayCount(minutes, 'minute')} ago`,
  hoursAgo: (hours: string) => `${sayCount(hours, 'hour')} ago`,
  /** What has not gone out. */
  waiting: (records: string) =>
    records === '0'
      ? 'nothing waits to go out'
      : `${sayCount(records, 'record')} ${records === '1' ? 'waits' : 'wait'}`,
  inStepHint: 'What was closed at either station is at both.',
  troubles,
  hint: 'Closed records, skin tests and what was erased are shared. Whoever is open stays at her station until she is closed. What comes in is judged here anew, and nothing waits for it.',
  care: 'They lie on the salon’s own server too, with tickets. Whoever looks after it keeps it locked, and clears what was erased out of its files.',
  off: 'None: records stay on this tablet',
  asking: 'Looking for them',
  offHint:
    'Several tablets of one salon can share their records through a server of the salon’s own. Whoever looks after this tablet sets it up: how stands in the README of the station.',
  now: 'Share now',
  refusedTitle: (count: string) => `Left out: ${count}`,
  laterTitle: (count: string) => `Not taken up yet: ${count}`,
  refused: (name: string, why: OthersRefusal | OthersDelay) => `${name}: ${refusals[why]}.`,
  refusedHint: 'Nothing here was changed by them. Show this page to whoever set it up.',
  andMore: (count: string) => `and ${count} more`,
};
