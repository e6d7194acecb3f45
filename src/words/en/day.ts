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
  closed: 'Closed today',
  open: 'Still open',
  nothingClosed: 'Nothing closed yet today.',
  nothingOpen: 'Nobody is open.',
  endings,
  entry: (ticket: string, chair: string) => `${ticket} · chair ${chair}`,
  endedAt: (how: string, time: string) => `${how}, ${time}`,
  strands: (count: string) => sayHowMany(count, 'strand'),
  bowls: (count: string) => sayHowMany(count, 'bowl'),
  parked: 'parked',
  /** "Done 3", of all that closed today. */
  endingCount: (how: Ending, count: string) => `${endings[how]} ${count}`,
  broken: 'Strands that gave way',
  nothingBroken: 'None today.',
  strandOf: (ticket: string, number: string, zone: string) => `${ticket} · strand ${number} ${zone}`,
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
  notWritten: 'over, record not written',
  unread: (count: string) => `Records that cannot be read here: ${count}. The file holds them as they are.`,
  download: 'Save the day as a file',
  downloadTable: 'Save as a table',
  downloadColumns: 'Its key',
  downloadHint:
    'The file holds every record with every tap; the table (CSV) a row for each strand, look and bowl, and “Its key” says what each column means. They name clients by ticket: keep them where only staff can read them.',
  downloaded: (name: string) => `Saved as ${name}`,
};
