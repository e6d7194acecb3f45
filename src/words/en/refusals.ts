import type { MixtureRefusal } from '../../../shared/judgement/mixture';
import type { NewThing } from '../../../shared/judgement/news';
import type { PermitRefusal } from '../../../shared/judgement/permitRefusal';
import type { BackupRefusal } from '../../../shared/records/backupFile';
import type { ClassifyRefusal } from '../../../shared/records/conflict';
import type { FieldRefusal } from '../../../shared/records/readForm';
import { figures } from './figures';
import { recordDiffers, recordRefused, recordsNotSaved, recordsRefusals } from './records';

type CarryCode = Extract<ClassifyRefusal, { kind: 'carry' }>['carry']['code'];

/** What was refused and why, and what clears it. */
export interface RefusalWords {
  readonly what: string;
  readonly clears: string;
}

/** What is wrong with a field; `low`, `high`, `most` and `step` are written figures with their unit. */
export interface Limits {
  readonly low: string;
  readonly high: string;
  readonly most: string;
  /** Empty but where a figure was off its steps. */
  readonly step: string;
}

const fields: Readonly<Record<FieldRefusal['code'], (limits: Limits) => string>> = {
  empty: ({ low, high }) => (low === '' ? 'Still to be filled in.' : `A number from ${low} to ${high}.`),
  notANumber: ({ low, high }) => `That is not a number. ${low} to ${high}, digits only.`,
  notFinite: ({ low, high }) => `That is no number anybody can measure. ${low} to ${high}.`,
  minusZero: ({ low, high }) => `Minus zero is not a number here. ${low} to ${high}.`,
  inFuture: ({ low, high }) => `That lies in the future. ${low} to ${high}, counted back from today.`,
  tooLow: ({ low, high }) => `Too low. ${low} to ${high}.`,
  tooHigh: ({ low, high }) => `Too high. ${low} to ${high}.`,
  notOnStep: ({ low, high, step }) =>
    step === '1' ? `Whole numbers only. ${low} to ${high}.` : `In steps of ${step}. ${low} to ${high}.`,
  notAnswered: () => 'Still to be answered.',
  notAnOption: () => 'That is not one of the answers.',
  noneAndOthers: () => '“None” goes with no other answer.',
  malformed: () => 'One line of plain letters, please.',
  tooLong: ({ most }) => `Too long. At most ${most} letters.`,
  isBirthDate: () => 'That looks like a date of birth. Use initials, a card number or a word.',
  isPhone: () => 'That looks like a phone number. Use initials, a card number or a word.',
  tooMany: ({ most }) => `At most ${most}.`,
  tooFew: ({ most }) => `At least ${most}.`,
  notYet: () => 'That is still to come. Choose a time that has passed.',
  alreadyPast: () => 'That has passed. Choose a time to come.',
  timeNotUp: () => 'Its time is not up. Say why it comes off now.',
  overLimit: () => 'Longer than the maker’s limit.',
  readTooEarly: () => 'Too early to be read as “nothing seen”.',
  earlierThanNoted: () => 'Earlier than was noted before. Take the first note back by name.',
  tonerLifts: () => 'That lifts. A toner only deposits: another line, please.',
  tonerNotOnShelf: () => 'Not on the shelf as a colour. Put it there in Settings, or choose another line.',
  tonerTested: () => 'A strand was in that line today, so it needs a strand. Choose another line.',
  anotherService: () => 'That lifts, and she asked for no lift. Say anew what she wants.',
  noStrandHeld: () => 'No strand speaks for that: it is of the skin, or none has held.',
  needsCorrection: () => 'What stopped her stays. Take it back by name, with a reason.',
  growsSo: () => 'No hair grows so fast, or so slowly. Look at tape and date again.',
  callFirst: () => 'Throat, breath or faint was told: the emergency number first.',
  notHomeYet: () => 'Not home yet. Rinse, and tap “Burning or reaction”.',
  notToldYet: () => 'Not told yet. Tell her, or call her: itching may come days later.',
  notAsTested: () => 'Not what was tested. Take what was tested, or test this one.',
  stepTooCoarse: () => 'Too little for this scale. Weigh more.',
  moreThanABowl: () =>
    'With its developer more than a bowl holds. Weigh less: one bowl goes with each strand.',
  bottlesDoNotMakeIt: () => 'These two bottles do not make it. Reckon them again.',
  notTheParts: () => 'Not the parts that were ordered. Weigh it in again.',
  madeStronger: () => 'Stronger than was ordered. Add of the weaker bottle, or weigh it in again.',
  hasBadSigns: () => 'It weakened, broke, or was recorded as worse than sound. Record its outcome.',
};

/** A file that is not brought in: nothing here was changed. */
const backup: Readonly<Record<BackupRefusal, RefusalWords>> = {
  notRead: {
    what: 'That file cannot be read.',
    clears: 'Nothing was changed. Is it still there? Choose it again.',
  },
  anotherProgram: {
    what: 'That is no backup of this station.',
    clears: 'Nothing was changed. Choose a file that “Save the station” made.',
  },
  invented: {
    what: 'That backup is of another kind of salon: one of the two is the invented one.',
    clears: 'Nothing was changed. Leave the demo, or go into it, and choose the file there.',
  },
  practice: {
    what: 'Something in that backup was practised: nobody was treated.',
    clears: 'Nothing was changed. Practice stays in practice.',
  },
  fromLater: {
    what: 'That backup was made more than a day after what this tablet’s clock says.',
    clears: 'Nothing was changed. Set date and time of this tablet right, then choose it again.',
  },
  erasesOpen: {
    what: 'That backup erases something of a client who is open here.',
    clears: 'Nothing was changed. Close her first, then choose it again.',
  },
  cutOff: { what: 'That backup ends too early.', clears: 'Nothing was changed. Save or copy it again.' },
  damaged: { what: 'That backup is damaged.', clears: 'Nothing was changed. Save or copy it again.' },
  newer: {
    what: 'That backup is of a newer edition of the station.',
    clears: 'Nothing was changed. Bring this tablet up to date first.',
  },
};

const permit: Readonly<Record<PermitRefusal['code'], RefusalWords>> = {
  stopped: {
    what: 'Stopped: nothing goes on this client.',
    clears: 'Only a named correction of the answer.',
  },
  forAJudgement: { what: 'A stop is open.', clears: 'A named person judges it, with a reason.' },
  closed: { what: 'This consultation is over.', clears: 'Start a new one.' },
  parked: { what: 'This consultation is parked.', clears: 'Take it up again first.' },
  reaction: { what: 'A reaction is being looked into.', clears: 'Record it, or say “It was none”.' },
  stepUnsaid: { what: 'Not every step has been asked.', clears: 'Go back and finish the open step.' },
  incompatibilityOpen: {
    what: 'A cutting has to meet peroxide in a glass first.',
    clears: `Start that test, and read it after ${figures.glass}.`,
  },
  skinTestMissing: { what: 'There is no skin test.', clears: 'Put one on, and read it when it is time.' },
  skinTestWaiting: { what: 'The skin test has not been read.', clears: 'Read it when its time has come.' },
  skinTestLapsed: { what: 'The skin test is too old.', clears: 'Put a new one on.' },
  zoneNotPlanned: {
    what: 'This zone is not in the plan.',
    clears: 'Choose a zone of the plan, or change it.',
  },
  noOutcome: { what: 'No strand outcome for this zone.', clears: 'Test a strand and record its outcome.' },
  outcomeOfAnotherPlan: { what: 'The strand was for another plan.', clears: 'Test a new strand.' },
  outcomeLapsed: {
    what: `The outcome is more than ${figures.outcomeLapsesDays} days old.`,
    clears: 'Test a new strand.',
  },
  carriedOff: {
    what: 'The settings ask for a strand each time.',
    clears: 'Test a strand, or let the owner turn it on.',
  },
  carriedTooOld: {
    what: `Last time’s strand is more than ${figures.carriedLapsesWeeks} weeks old.`,
    clears: 'Test a new strand.',
  },
  carriedNotToday: {
    what: 'Today’s wet stretch is missing.',
    clears: 'Pull one wet strand today, and say how it comes back.',
  },
  carriedLifts: { what: 'Nothing that lifts stands on last time’s strand.', clears: 'Test a strand.' },
  strandTooShort: {
    what: 'That strand was on for less than a minute: it is proven for no time on the head.',
    clears: 'Test a new strand for the time the plan needs.',
  },
  strandFailed: { what: 'The strand gummed or broke.', clears: 'Another plan, with a new strand.' },
  mixClosed: {
    what: 'A strand gummed or broke in this mix or a gentler one.',
    clears: 'A gentler mix, with a new strand.',
  },
  notRinsed: { what: 'A toner goes on after a rinse.', clears: 'Rinse this hair first.' },
  stretchUnfelt: {
    what: 'Nobody has felt this hair since the rinse.',
    clears: 'Feel it wet: a light pull, let go.',
  },
  stretchFails: {
    what: 'It does not spring back: no toner today, and no second round.',
    clears: 'Leave it be. Another visit, with a new strand. Felt wrongly? By name, with the reason.',
  },
  stretchDried: {
    what: 'It was felt too long ago.',
    clears: 'Feel it again, wet: a light pull, let go.',
  },
  hairBroke: {
    what: 'Hair broke on this head today.',
    clears: 'Rinse what is on. No other bowl goes on today; another visit begins with a new strand.',
  },
  hairStretchy: {
    what: 'Hair on this head was stretchy.',
    clears: 'Rinse it and feel it wet: if it springs back, the next bowl may go on.',
  },
  strandUsed: { what: 'That strand was for one bowl.', clears: 'A second round needs a new strand.' },
  notDecided: { what: 'Nothing has been decided.', clears: 'Decide first.' },
  freerThanSuggested: {
    what: 'Freer than the table suggests.',
    clears: 'A named person judges it, with a reason.',
  },
  anotherDay: {
    what: 'Reactions, scalp and age were told on another day.',
    clears: 'Go back to the client and ask them anew.',
  },
  endsLeftOut: { what: 'The ends stay out.', clears: 'Decide otherwise, if the strand allows it.' },
};

/** Why last time's outcome does not count today; `new` is said with what is new. */
const carry: Readonly<Record<CarryCode, RefusalWords>> = {
  off: {
    what: 'The settings ask for a strand each time.',
    clears: 'Test a strand, or let the owner turn it on.',
  },
  notSameClient: { what: 'Nobody said that she is the same client.', clears: 'Test a strand.' },
  stopStood: { what: 'A stop stood at the end of last time.', clears: 'Test a strand.' },
  lifts: { what: 'This lifts. Last time’s strand counts for deposit only.', clears: 'Test a strand.' },
  notDone: {
    what: 'Last time this was not coloured to its end on every zone of the plan.',
    clears: 'Test a strand.',
  },
  tooOld: {
    what: `Last time’s strand is more than ${figures.carriedLapsesWeeks} weeks old.`,
    clears: 'Test a new strand.',
  },
  new: { what: 'New since last time', clears: 'Test a strand.' },
  strandToday: { what: 'A strand was tested today: that one counts.', clears: 'Go on with today’s strand.' },
  notFeltToday: {
    what: 'Today’s wet stretch is missing.',
    clears: 'Go back to the feel, pull one wet strand, and say how it comes back.',
  },
  stretchSlow: { what: 'It does not spring back today.', clears: 'Test a strand.' },
  notRetractable: {
    what: 'This outcome is last time’s, not a tap of today.',
    clears: 'Go back and test a strand: that one counts then.',
  },
};

/** What can be new since last time. */
const news: Readonly<Record<NewThing, string>> = {
  plan: 'what she wants, her levels or her length',
  tool: 'another hot tool',
  hotter: 'a hotter setting',
  wetter: 'wetter hair under the tool',
  oftener: 'more heat',
  smoke: 'smoke or a burnt smell',
  chemical: 'something else on it',
  bleach: 'another bleach',
  relaxed: 'a relaxer, perm or keratin just now',
  hair: 'porosity, curl or broken hairs',
};

const mixture: Readonly<Record<MixtureRefusal['code'], RefusalWords>> = {
  forged: { what: 'No strand allows this mix.', clears: 'Start from the strand test.' },
  anotherZone: { what: 'The strand was for another zone.', clears: 'Mix for the zone that was tested.' },
  anotherLine: {
    what: 'This is not the line that was tested.',
    clears: 'Take the tested line, or test this one.',
  },
  anotherRatio: {
    what: 'This is not the ratio that was tested.',
    clears: 'Take the tested ratio, or test this one.',
  },
  hotter: { what: 'Hotter than was tested.', clears: 'Take the tested heat, or test this one.' },
  overCeiling: {
    what: `Over ${figures.ceiling} (${figures.ceilingVolumes}).`,
    clears: 'Nothing stronger goes on hair. Take a weaker developer.',
  },
  overHouseCeiling: {
    what: 'Stronger than any bottle of this house.',
    clears: 'Take a weaker developer. Settings say how strong.',
  },
  stronger: { what: 'Stronger than the strand and the decision allow.', clears: 'Take a weaker developer.' },
  longer: { what: 'Longer than the strand was.', clears: 'A shorter time, or a new strand.' },
  tooMuchForAStrand: { what: 'More than a strand needs.', clears: 'A few grams are enough.' },
  notFinite: { what: 'One of the amounts is no number.', clears: 'Look at the amounts.' },
  notPositive: { what: 'One of the amounts is nothing.', clears: 'Look at the amounts.' },
  noParts: { what: 'No shade is in the bowl.', clears: 'Add a shade.' },
  tooManyParts: { what: 'Too many shades for one bowl.', clears: 'Take some out.' },
  tooMuch: { what: 'More than a bowl holds.', clears: 'Weigh less: one bowl goes with each strand.' },
  stepTooFine: { what: 'Finer than the scale shows.', clears: 'Look at the scale’s step in settings.' },
  stepTooCoarse: {
    what: 'So little that the scale cannot show it.',
    clears: 'Weigh more, or on a finer scale.',
  },
};

export const refusals = {
  fields,
  permit,
  carry,
  news,
  mixture,
  lookAtFields: { what: 'Not yet.', clears: 'Look at the marked answers.' },
  clockWentBack: {
    what: 'The tablet’s clock is behind its own records.',
    clears: 'Answer the question about the clock.',
  },
  notLastTime: {
    what: 'That is not what was last under this ticket.',
    clears: 'Look again, or start her without it.',
  },
  nobody: { what: 'Nobody is chosen.', clears: 'Tap your name on the bar.' },
  unknownEvent: { what: 'This station does not know that step.', clears: 'Reload the station.' },
  skinNotCalm: {
    what: 'Nothing goes on skin that is not calm.',
    clears: 'Throw the bowl away, then say at Client how scalp and face are.',
  },
  bowlTooOld: (useBy: string): RefusalWords => ({
    what: `It was to go on by ${useBy}: bowl too old.`,
    clears: 'Is it on her? Rinse it off now. Throw it away and mix anew.',
  }),
  stoppedElsewhere: {
    what: 'The same ticket was stopped in another consultation.',
    clears: 'Close this one and start her again: the stop comes along and can be corrected by name.',
  },
  stillReading: (read: string, all: string): RefusalWords => ({
    what: `Not yet: still looking through earlier clients, ${read} of ${all} months.`,
    clears: 'A stop of hers may stand there. Tap again in a moment.',
  }),
  noSuchChair: { what: 'There is no such chair here.', clears: 'Choose one of the chairs in the settings.' },
  chairTaken: (ticket: string): RefusalWords => ({
    what: `${ticket} sits at that chair.`,
    clears: 'Choose a free one, or park her first.',
  }),
  ticketOpen: {
    what: 'Somebody of this ticket is open, or parked.',
    clears: 'Close her first: while she is here, what protects her stays.',
  },
  eraseUnfinished: {
    what: 'Erased, and shown nowhere any more. But a copy could not be written anew.',
    clears: 'Tap “Finish it” under Records kept, or start the station again: it goes on from there.',
  },
  skinTestTooEarly: (when: string): RefusalWords => ({
    what: 'It is too early to say that nothing is seen.',
    clears: `May be read from ${when}. A reaction can be noted now.`,
  }),
  waitInDoubt: (doubt: string): RefusalWords => ({
    what: `While it was on, the tablet’s clock went on by ${doubt} at once: it may have waited too short.`,
    clears:
      'Did the tablet only sleep? Say so in the notice at the foot of the screen. A reaction can be noted now.',
  }),
  skinTestOn: (putOn: string): RefusalWords => ({
    what: `This ticket has a skin test of that product line on, since ${putOn}.`,
    clears:
      'Read that one. Noted wrongly, or it came off? Take it back by name. Another client? Another ticket.',
  }),
  skinTestReacted: (putOn: string): RefusalWords => ({
    what: `A skin test of this ticket reacted, put on ${putOn}.`,
    clears: 'No second one goes on. Noted wrongly? Take it back by name. Another client? Another ticket.',
  }),
  dampHair: {
    what: 'The hair is damp: that hides what it is like.',
    clears: 'Dry it, towel and cool air, and feel it again.',
  },
  notNow: { what: 'That does not go now.', clears: 'Look where this client is on the strand.' },
  notWriting: { what: 'This window cannot write now.', clears: 'See what the top of the screen says.' },
  backup,
  records: recordsRefusals,
  recordRefused,
  recordDiffers,
  recordsNotSaved,
  badSettings: { what: 'The settings were not taken.', clears: 'Look at the marked setting.' },
  notSaved: {
    what: 'Not saved to both copies.',
    clears: 'What was saved before is still there. See the notices.',
  },
};
