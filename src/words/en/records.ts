import type { RecordsRefusal } from '../../../shared/records/json/consultationFile';
import type { RefusalWords } from './refusals';
import { sayCount } from './sayCount';

const unchanged = 'Nothing was changed.';

/** A file of records that is not brought in: nothing here was changed. */
export const recordsRefusals: Readonly<Record<RecordsRefusal, RefusalWords>> = {
  notRead: {
    what: 'The file of records cannot be read.',
    clears: `${unchanged} Is it still there? Choose it again.`,
  },
  anotherProgram: {
    what: 'That is no file of records of a station.',
    clears: `${unchanged} Choose one that “Save as JSON” made under “Today’s records”.`,
  },
  table: {
    what: 'That is the table, which is for spreadsheets and leaves taps out.',
    clears: `${unchanged} Choose the JSON file of the same days.`,
  },
  backup: {
    what: 'That is a backup of a whole station.',
    clears: `${unchanged} It goes in under “Backup and move”.`,
  },
  notText: {
    what: 'Another program saved that file in its own letters.',
    clears: `${unchanged} Copy it again, without opening it in between.`,
  },
  cutOff: { what: 'That file of records ends too early.', clears: `${unchanged} Save or copy it again.` },
  damaged: {
    what: 'That file was damaged or changed since it was saved.',
    clears: `${unchanged} Save or copy it again.`,
  },
  newer: {
    what: 'Those records are of a newer edition of the station.',
    clears: `${unchanged} Bring this tablet up to date first.`,
  },
  invented: {
    what: 'Those records are of another kind of salon: one of the two is the invented one.',
    clears: `${unchanged} Leave the demo, or go into it, and choose the file there.`,
  },
  practice: {
    what: 'Somebody in those records was practised with: nobody was treated.',
    clears: `${unchanged} Practice stays in practice.`,
  },
  fromLater: {
    what: 'Those records are from more than a day after what this tablet’s clock says.',
    clears: `${unchanged} Set date and time of this tablet right, then choose the file again.`,
  },
};

export const recordRefused = (ticket: string, entry: string): RefusalWords => ({
  what: `The record of ${ticket} does not add up: entry ${entry} could not have been tapped like that.`,
  clears: `${unchanged} Save the file again where she was looked after.`,
});

export const recordDiffers = (ticket: string): RefusalWords => ({
  what: `${ticket} is here already, and the file tells her otherwise.`,
  clears: `${unchanged} What is here stays. Keep the file, and ask who was with her.`,
});

export const recordsNotSaved = (came: string): RefusalWords => ({
  what: `${came === '0' ? 'None' : sayCount(came, 'record')} came in, then the tablet took no more: it may be full.`,
  clears: 'What is here stays. Make room, then choose the same file again: it goes on from there.',
});

/** Bringing records in, beside the backup. */
export const records = {
  title: 'Records from a file',
  hint: 'Closed records of a file that “Save as JSON” made come in beside the clients who are here. Each is judged anew, tap by tap, before the first is kept.',
  choose: 'Choose a JSON file',
  came: (count: string) => `${sayCount(count, 'record')} came in.`,
  here: (count: string) => `${sayCount(count, 'record')} here already.`,
  erased: (count: string) => `${sayCount(count, 'record')} erased here before, and left out.`,
  none: 'No closed record stands in that file.',
  open: (tickets: string) =>
    `Still open when it was saved, and left out: ${tickets}. An open client is at one station, or two would go on with her.`,
  care: 'A record stands with the day it ended, and a stop comes in with it: whoever opens her ticket here meets it. The file names clients by ticket: keep it where only staff can read it.',
};
