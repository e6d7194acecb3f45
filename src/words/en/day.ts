import type { Ending } from '../../../shared/records/record';

const endings: Readonly<Record<Ending, string>> = {
  done: 'done',
  weSaidNo: 'we said no',
  clientSaidNo: 'she said no',
  calledOff: 'called off',
  reaction: 'reaction',
};

/** "no bowl", "1 bowl", "2 bowls". */
const sayCount = (count: string, thing: string): string => {
  if (count === '0') return `no ${thing}`;
  return count === '1' ? `1 ${thing}` : `${count} ${thing}s`;
};

export const day = {
  title: 'Today’s records',
  closed: 'Closed today',
  open: 'Still open',
  nothingClosed: 'Nothing closed yet today.',
  nothingOpen: 'Nobody is open.',
  endings,
  entry: (ticket: string, chair: string) => `${ticket} · chair ${chair}`,
  endedAt: (how: string, time: string) => `${how}, ${time}`,
  strands: (count: string) => sayCount(count, 'strand'),
  bowls: (count: string) => sayCount(count, 'bowl'),
  parked: 'parked',
  notWritten: 'over, record not written',
  unread: (count: string) => `Records that cannot be read here: ${count}. The file holds them as they are.`,
  download: 'Save the day as a file',
  downloadHint:
    'The file holds every record with every tap. It names clients by ticket: keep it where only staff can read it.',
  downloaded: (name: string) => `Saved as ${name}`,
};
