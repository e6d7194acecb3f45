import type { SkinTestStatus } from '../../../shared/judgement/skinTest';
import type { skinTestForms } from '../../../shared/records/forms/skinTest';
import type { AskWords, FormWords } from '../formWords';
import { correctionWords } from './forms/correction';

const status: Readonly<Record<SkinTestStatus | 'missing' | 'notNeeded', string>> = {
  missing: 'None yet',
  notNeeded: 'Not asked for',
  due: 'Read it now',
  waiting: 'Wait',
  lapsedUnread: 'Never read',
  lapsed: 'Too old',
  reaction: 'It reacted',
  clear: 'Nothing seen',
};

const takenBackForm: FormWords<(typeof skinTestForms)['SKIN_TEST_TAKEN_BACK']> & { readonly by: AskWords } = {
  by: { ask: 'Who says so?', short: 'Who' },
  what: {
    ask: 'What was wrong?',
    short: 'Wrong was',
    options: { reading: 'The reading: it is read again', test: 'The whole test' },
  },
  code: {
    ask: correctionWords.code.ask,
    short: 'Why',
    options: { ...correctionWords.code.options, cameOff: 'It came off, or nobody will read it' },
  },
  words: { ...correctionWords.words, short: 'In words' },
};

/** The skin tests by ticket, without any consultation. */
export const skinTests = {
  title: 'Skin tests',
  lead: 'Those to be read first',
  way: (count: string) => `Skin tests ${count}`,
  wayDue: (count: string, due: string) => `Skin tests ${count} · ${due} due`,
  none: 'No skin test is on.',
  noneHint: 'Put one on, and it stands here until it is read. It needs no chair.',
  page: (page: string, pages: string) => `Page ${page} of ${pages}`,
  putOnOne: 'Put one on',
  putOnTitle: 'Put a skin test on',
  onSince: (when: string) => `on since ${when}`,
  status,
  from: (when: string) => `from ${when}`,
  /** It was put on at another station, and waits here since it came in. */
  hereFrom: (when: string) => `here from ${when}`,
  since: (when: string) => `since ${when}`,
  counts: (when: string) => `counts until ${when}`,
  seenAt: (when: string) => `seen ${when}`,
  lapsedAt: (when: string) => `too old since ${when}`,
  putOn: 'Put on',
  wait: 'Its wait',
  how: 'How',
  read: 'Read',
  record: 'Its record',
  readingTakenBack: 'Reading taken back',
  notedBy: (when: string, by: string) => `${when}, noted by ${by}`,
  takenBackBy: (when: string, by: string, why: string) => `${when}, by ${by}: ${why}`,
  notedUnder: 'Noted',
  underTicket: (by: string, ticket: string) => `by ${by}, under “${ticket}”`,
  here: 'Here now',
  makers:
    'Method, site, how long and what counts are the maker’s. So is how often: a repeat may itself sensitise.',
  /** Which product it is of; empty where nobody noted it. */
  covers: (line: string) =>
    `${line === '' ? 'Nobody noted of which product it is' : `It is of ${line} alone`}. For lightener the maker’s directions decide.`,
  takeBack: 'Take it back',
  takeBackTitle: 'Take it back?',
  takeBackLead: 'It stays in the log. Every open consultation of this ticket hears of it.',
  holdToTakeBack: 'Take it back',
  takenBackForm,
};
