import type { HoldsDay } from '../../../shared/records/holdsDay';
import type { Ending } from '../../../shared/records/record';
import { sayCount } from './sayCount';

const endings: Readonly<Record<Ending, string>> = {
  done: 'done',
  weSaidNo: 'we said no',
  clientSaidNo: 'she said no',
  calledOff: 'called off',
  reaction: 'reaction',
};

/** "no bowl", "1 bowl", "2 bowls". */
const sayHowMany = (count: string, thing: string): string =>
  count === '0' ? `no ${thing}` : sayCount(count, thing);

export const day = {
  title: 'Today’s records',
  titleOf: (day: string) => `Records of ${day}`,
  titleFromTo: (from: string, to: string) => `Records, ${from} to ${to}`,
  dayBefore: 'Day before',
  dayAfter: 'Day after',
  sevenDays: 'Seven days',
  closedThen: 'Closed',
  nothingClosedThen: 'Nothing closed then.',
  outcomes: 'Strands',
  nothingTested: 'No outcome recorded.',
  outcomeCount: { sound: 'sound', rough: 'rough', gummy: 'gummy', broken: 'broke' },
  late: 'Left on too long',
  nothingLate: 'Nothing.',
  lateOf: (ticket: string, what: string) => `${ticket} · ${what}`,
  lateBy: (kind: 'strand' | 'head', zone: string) => `${kind === 'head' ? 'HEAD' : 'STRAND'} ${zone}`,
  missed: 'Looks nobody made',
  nothingMissed: 'None.',
  closed: 'Closed today',
  open: 'Still open',
  goneOn: 'Went on after that',
  openNow: 'still open now',
  nothingClosed: 'Nothing closed yet today.',
  nothingOpen: 'Nobody is open.',
  endings,
  entry: (ticket: string, chair: string) => `${ticket} · chair ${chair}`,
  endedAt: (how: string, time: string) => `${how}, ${time}`,
  strands: (count: string) => sayHowMany(count, 'strand'),
  bowls: (count: string) => sayHowMany(count, 'bowl'),
  parked: 'parked',
  carriesOver: 'may wait until another day',
  /** What holds the end of the day: to be done before anybody goes home. */
  holds: {
    onHead: 'first: rinse her',
    reaction: 'first: answer the reaction',
    strandRuns: 'first: take the strand off',
    bowlStands: 'first: use the bowl, or throw it away',
    notWritten: 'over, record not written',
  } satisfies Readonly<Record<HoldsDay, string>>,
  /** "Done 3", of all that closed today. */
  endingCount: (how: Ending, count: string) => `${endings[how]} ${count}`,
  broken: 'Hair that gave way',
  nothingBroken: 'None today.',
  strandOf: (ticket: string, number: string, zone: string) => `${ticket} · strand ${number} ${zone}`,
  onHeadOf: (ticket: string, zone: string) => `${ticket} · on the head, ${zone}`,
  gaveWay: { gummy: 'gummy', broken: 'broke' },
  told: 'Burning or reaction',
  nothingTold: 'Nothing was told today.',
  toldAt: (ticket: string, time: string, by: string) => `${ticket} · ${time} · ${by}`,
  toldRecorded: (signs: string) => `recorded: ${signs}`,
  toldNone: (by: string, time: string, why: string) => `it was none, says ${by}, ${time}: ${why}`,
  toldOpen: 'still open',
  lifted: 'Stops that were lifted',
  nothingLifted: 'None today.',
  liftedOf: (lifted: string, stopped: string) => `lifted for ${lifted} of ${stopped} it stopped today`,
  badlyWritten: '· more than half: the rule may be written badly',
  liftedFor: (ticket: string, by: string, time: string) => `${ticket} · ${by} · ${time}`,
  unread: (count: string) => `Records that cannot be read here: ${count}. The file holds them as they are.`,
  download: 'Save the day as a file',
  downloadTable: 'Save as a table',
  downloadColumns: 'Its key',
  downloadHint:
    'The file holds every record with every tap; the table (CSV) a row for each strand, look and bowl, and “Its key” says what each column means. They name clients by ticket: keep them where only staff can read them.',
  print: 'Print',
  sheet: {
    client: 'Client',
    state: 'Ended',
    by: 'Who',
    service: 'Wanted',
    strands: 'Strands',
    decision: 'Decided',
    bowls: 'On the head',
    missed: 'Looks missed',
    printed: (when: string) => `printed ${when}`,
    signed: 'Seen by: ______________________________',
  },
  downloaded: (name: string) => `Saved as ${name}`,
};
