import type { ReportFault } from '../../../shared/records/report/reportFault';
import type { Place } from '../../../shared/records/report/reportFile';
import { day } from './day';
import { general } from './general';
import { rules } from './rules';
import { sayCount } from './sayCount';
import { settings } from './settings';

const outOfReport = 'It is left out of these figures.';

/** Why a whole file is left out, and what helps. */
const files: Readonly<Record<(ReportFault & { of: 'file' })['why'], string>> = {
  notRead: 'It cannot be read. Is it there, and may you open it?',
  empty: 'There is nothing in it. Save it again at the station.',
  anotherProgram: 'It is no file of a station. Give it what “Save as JSON” or “Save the station” made.',
  table: 'It is the table for spreadsheets, which leaves taps out. Give it the JSON of the same days.',
  notText: 'Another program saved it in its own letters. Copy it again, without opening it in between.',
  cutOff: 'It ends too early. Copy or save it again.',
  damaged: 'It was damaged or changed since it was saved. Copy or save it again.',
  newer: 'It is of a newer edition of the station. Bring this copy of the program up to date.',
  beyondDays:
    'It says that it was saved at a moment beyond any date. Set the clock of its tablet right, and save it again.',
};

/** "hall.backup, line 12", "bar.json, consultation 3 (Q.F.)". */
function sayPlace(name: string, place: Place | null): string {
  if (place === null) return name;
  if ('line' in place) return `${name}, line ${place.line}`;
  return `${name}, consultation ${place.consultation}${place.ticket === null ? '' : ` (${place.ticket})`}`;
}

/** " of Q.F.", where the place does not say so already. */
const sayWhose = ({ place, ticket }: { readonly place: Place; readonly ticket: string | null }): string =>
  'line' in place && ticket !== null ? ` of ${ticket}` : '';

function sayFault(fault: ReportFault): string {
  switch (fault.of) {
    case 'file':
      return `${sayPlace(fault.name, fault.place)}: ${files[fault.why]}`;
    case 'record': {
      const where = sayPlace(fault.name, fault.place);
      if (fault.entry === null) return `${where}: This is no record that this edition knows. ${outOfReport}`;
      const whose = sayWhose(fault);
      return `${where}: The record${whose} does not add up: entry ${fault.entry} could not have been tapped like that. ${outOfReport}`;
    }
    case 'beyondDays':
      return `${sayPlace(fault.name, fault.place)}: Entry ${fault.entry} of the record${sayWhose(fault)} says a moment beyond any date. ${outOfReport}`;
    case 'fromLater':
      return `${sayPlace(fault.name, fault.place)}: Entry ${fault.entry} of the record${sayWhose(fault)} is of more than a day after the file was saved, so a clock was wrong: do not rely on its days.`;
    case 'differing': {
      const places = fault.places.map(({ name, place }) => sayPlace(name, place)).join('; ');
      return `${places}: These tell the same consultation of ${fault.ticket} otherwise. It is counted in neither way: ask who was with her.`;
    }
    case 'mixed':
      return `${fault.invented.join(', ')}: of the invented salon, and ${fault.real.join(', ')} not. Give one kind at a time.`;
    case 'names':
      return `${fault.names.join(', ')}: That station does not let figures name who works there. If everybody was told, answer “${settings.questions.figuresByStylist.ask}” with yes under Settings, ${settings.sections.staff}; once something more was tapped there, save the file again.`;
  }
}

/** The report of a week for owner and trainer, on paper or in a terminal. */
export const report = {
  title: (from: string, to: string) => (from === to ? `Report of ${from}` : `Report, ${from} to ${to}`),
  invented: 'INVENTED: of the salon that is made up for looking around. No real client stands here.',
  note: 'A rule, a late clock or a missed look is a question about how the day runs, before it is one about a person. Chances are estimates; the strand decides. Local law, the maker’s directions and a licensed professional’s judgement come first.',
  daysBy: (zone: string) => `Days by ${zone}.`,
  ofThisMachine: (zone: string) => `${zone}, the zone of this computer, since the files name none`,
  offsetsDiffer: (offsets: string) => `The files’ clocks stood apart (${offsets}): --zone settles it.`,
  sayFault,
  leftOut: 'Left out, or in doubt',
  clients: {
    title: 'Clients',
    heads: ['Ended', 'Clients'],
    all: 'everybody with whom something was done',
    endings: day.endings,
    open: 'open still, or closed after these days',
    nobody: 'Nobody in these days.',
  },
  strands: {
    title: 'Strands',
    heads: ['Counted as', 'Strands'],
    grades: day.outcomeCount,
    none: day.nothingTested,
  },
  chance: {
    title: 'Chance said, and what was seen',
    heads: ['Said', 'On average', 'Strands', 'Broke', 'Share that broke', 'True share, 19 times in 20'],
    band: (from: string, to: string) => `${from} to ${to}`,
    hint: 'Strands of lightening and lift; gummy counts as broken. What was said is the estimate before anything was learnt. Few strands say little.',
    score: (ours: string, ofBaseRate: string) =>
      `Mean squared miss (Brier): ${ours}. Saying the same of every strand would miss by ${ofBaseRate}.`,
    none: 'No strand that teaches ended in these days.',
  },
  late: {
    title: day.late,
    heads: ['Client', 'Clock', 'Over, min:s'],
    clock: (kind: 'strand' | 'head', zone: string | null) =>
      day.lateBy(kind, zone === null ? '' : general.zones[zone as keyof typeof general.zones]),
    none: day.nothingLate,
  },
  missed: {
    title: day.missed,
    heads: ['Client', 'Looks'],
    none: day.nothingMissed,
  },
  rules: {
    title: 'Stops',
    heads: ['Rule', 'Stopped', 'Lifted for', ''],
    what: (rule: keyof typeof rules) => rules[rule].what,
    often: 'lifted for more than half: it may be written badly',
    none: 'No rule stopped anybody.',
  },
  told: {
    title: day.told,
    heads: ['Client', 'What came of it'],
    came: { recorded: 'recorded', none: 'it was none', open: day.toldOpen },
    none: 'Nothing was told.',
  },
  open: {
    title: day.open,
    heads: ['Client', 'How it stood when its file was saved'],
    how: { ...day.holds, parked: day.parked, carriesOver: day.carriesOver },
    none: day.nothingOpen,
  },
  people: {
    title: 'By first name',
    heads: [
      'Name',
      'Clients',
      'Sound',
      'Rough',
      'Gummy',
      'Broke',
      'Late clocks',
      'Missed looks',
      'Stops lifted',
    ],
    hint: 'Strands, clocks and looks are those of the clients whose hair they do; a lifted stop is told of whoever lifted it. Few of anything says little.',
    none: 'Nobody in these days.',
  },
  files: {
    title: 'Files read',
    heads: ['File', 'What', 'Consultations'],
    kinds: { records: 'records of days', backup: 'backup of a station' },
    unread: (count: string) => `${sayCount(count, 'record')} its station could not read`,
    again: (count: string) => `In more than one file, counted once: ${count}.`,
    erased: (count: string) => `Erased at a station, left out: ${count}.`,
    outside: (count: string) => `On other days: ${count}.`,
  },
  calls: {
    usage: `npm run report -- FILE… [--from 2026-11-16] [--to 2026-11-22] [--zone Europe/Lisbon] [--lang es] [--by-stylist] [--html PAGE.html] [--json]

Reads what stations saved (“Save as JSON” of a day or of days, and backups of a whole station), of any number of
tablets, and tells what the week came to. The same consultation in two files counts once.

  --from, --to    days as YYYY-MM-DD; else the seven days up to the newest entry that is no more than a day after
                  its file was saved
  --zone          the salon's time zone, by which days are parted; else as the newest file says
  --lang          en or es; else en
  --by-stylist    also by first name, where the settings of every file allow it
  --html FILE     writes the report as one page for paper (A4 or Letter), too
  --json          prints figures as JSON instead of text
  --help          this

Ends with 0, with 1 where something was left out, refused or in doubt (it is named), and with 2 where it was called
wrongly.`,
    noFiles: 'Which files? Name at least one.',
    badDay: (option: string, given: string) => `${option} takes a day such as 2026-11-16, not “${given}”.`,
    backwards: (from: string, to: string) => `The days end before they begin: ${from} to ${to}.`,
    badLanguage: (given: string) => `There is no report in “${given}”. It is written in en or es.`,
    badZone: (given: string) => `There is no time zone “${given}”. One is written like Europe/Lisbon.`,
    notWritten: (name: string, why: string) => `${name}: The page could not be written (${why}).`,
    isRead: (name: string) =>
      `${name}: This file is read, and the page would take its place. Give the page another name.`,
    isOfOthers: (name: string) =>
      `${name}: Something else is there that no report wrote. Give the page another name.`,
    written: (name: string) => `Written: ${name}`,
  },
};
