import type { settingsForm } from '../../../shared/records/forms/settings';
import type { FormWords } from '../formWords';
import { figures } from './figures';
import { sayCount } from './sayCount';

const questions: FormWords<typeof settingsForm> = {
  /** Each language in itself, and the question in both: it is looked for by whoever reads only one of them. */
  locale: { ask: 'Language · Idioma', options: { en: 'English', es: 'Español' } },
  temperature: { ask: 'Heat', options: { C: '°C', F: '°F' } },
  mass: { ask: 'Weight', options: { g: 'Grams', oz: 'Ounces' } },
  length: { ask: 'Length', options: { cm: 'cm', in: 'Inches' } },
  altitude: { ask: 'Height above the sea', hint: 'Water boils cooler higher up.' },
  scaleStepG: { ask: 'The scale shows', options: { '0.1': '0.1 g', '0.5': '0.5 g', '1': '1 g' } },
  chairs: { ask: 'How many chairs?' },
  staff: {
    ask: 'Who works here?',
    rows: { name: { ask: 'Name' } },
    rowTitle: (row) => `Person ${row}`,
    addRow: 'Add a person',
    removeRow: (row) => `Take person ${row} out`,
  },
  figuresByStylist: {
    ask: 'May the week’s report name who works here?',
    hint: 'It then tells strands, lifted stops, late clocks and missed looks for each first name: figures about people, not about hair. Tell everybody first; local law may ask for more.',
    options: { no: 'No, only the whole salon', yes: 'Yes, everybody was told' },
  },
  shelf: {
    ask: 'What is on the shelf?',
    hint: 'Offered when a strand or a spray is asked for.',
    rows: {
      name: { ask: 'Product line' },
      kind: { ask: 'Kind', options: { lightener: 'Lightener', colour: 'Colour', spray: 'Heat spray' } },
      ingredients: { ask: 'Ingredient list', hint: 'Typed or pasted from the pack, once.' },
      makerSaysUpToC: { ask: 'The maker says: up to', hint: 'Only a figure from the pack.' },
      useWithinMin: {
        ask: 'Mixed, use within',
        hint: `The maker’s minutes. Left empty: ${figures.useWithin}.`,
      },
      trial: {
        ask: 'Warmth trial',
        rows: {
          atMs: { ask: 'When' },
          bareS: { ask: 'Bare forearm' },
          sprayedS: { ask: 'Sprayed forearm' },
        },
        rowTitle: (row) => `Trial ${row}`,
        addRow: 'Add a trial',
        removeRow: (row) => `Take trial ${row} out`,
      },
    },
    rowTitle: (row) => `Product ${row}`,
    addRow: 'Add a product',
    removeRow: (row) => `Take product ${row} out`,
  },
  carried: {
    ask: 'May a returning gloss stand on its last strand?',
    hint: `Deposit only, the same mix, nothing new, the strand no older than ${figures.carriedLapsesWeeks} weeks, and today’s wet stretch. Else a strand each time.`,
    options: { no: 'No, a strand each time', yes: 'Yes' },
  },
  spoken: {
    ask: 'Is a line spoken after the pulses?',
    hint: '“Chair 3: rinse.” No name and no ticket, since other clients hear it.',
    options: { no: 'No', yes: 'Yes' },
  },
  contact: {
    ask: 'Whom does she call about late itching?',
    hint: 'Stands on her card: a number, or what the salon answers to.',
  },
  ceilingPercent: {
    ask: 'The strongest bottle here',
    hint: `The law’s ceiling is ${figures.ceiling} (EU Reg. 1223/2009, Annex III). This house may draw it lower.`,
  },
  isAnyReactionAbsolute: {
    ask: 'Does a tingle that stopped on rinsing stop her too?',
    hint: '“Any reaction ever” (label text, Reg. 1223/2009, Annex III), read strictly. Else a named person judges: common practice.',
    options: { no: 'No, a person judges', yes: 'Yes, it stops her' },
  },
  keeps: {
    ask: 'For how long are closed records and skin tests kept?',
    hint: 'The law of the place says how long they must be kept, and how long they may. Ask there: this station does not know it.',
    options: { months: 'So many months', noEnd: 'No end' },
  },
  keepMonths: {
    ask: 'Kept for, months',
    hint: `From the day it closed. ${figures.keepMonths} is our own choice: a complaint may come long after a visit.`,
  },
  erasesByItself: {
    ask: 'And then?',
    hint: 'A stop that stands is never erased by itself, and nothing of a client who is open.',
    options: { no: 'Somebody erases it', yes: 'It goes by itself' },
  },
  hasAgeLine: {
    ask: 'Is anybody too young to be coloured here?',
    hint: 'EU and UK label text: not meant for under 16 (Reg. 1223/2009, Annex III).',
    options: { yes: 'Yes', no: 'No' },
  },
  ageLine: { ask: 'The youngest you colour' },
  skinTestWaitH: {
    ask: 'A skin test is read after, hours',
    hint: 'One maker’s protocol: 48 (Cosmetics Europe 2023). The maker’s directions come first.',
  },
  skinTestLapsesDays: {
    ask: 'A skin test is too old after, days',
    hint: `${figures.skinTestLapsesDays} is our own choice. The maker decides how often.`,
  },
  skinTestFor: {
    ask: 'Which services need a skin test?',
    hint: 'The label asks for a preliminary test (21 U.S.C. 361(a)); advice: each time.',
    options: {
      never: 'None of them',
      lighten: 'Lighten',
      liftAndDeposit: 'Lift and deposit',
      depositOnly: 'Deposit only',
      gloss: 'Gloss',
      tone: 'Tone',
    },
  },
};

type Say = (question: string) => string;

/** What a figure or a name may be, with its unit. */
const ranges = {
  altitude: (low: string, high: string, unit: string) => `${low} to ${high} ${unit}.`,
  ceilingPercent: (low: string, high: string) => `${low} to ${high}.`,
  chairs: (low: string, high: string) => `${low} to ${high}.`,
  keepMonths: (low: string, high: string) => `${low} to ${high} months.`,
  ageLine: (low: string, high: string) => `${low} to ${high} years.`,
  skinTestWaitH: (low: string, high: string) => `${low} to ${high} hours.`,
  skinTestLapsesDays: (low: string, high: string) => `${low} to ${high} days.`,
  staff: (people: string, letters: string) => `Up to ${people} first names, each at most ${letters} letters.`,
  shelf: (products: string, letters: string) =>
    `Up to ${products} products, each at most ${letters} letters.`,
};

export const settings = {
  backup: {
    title: 'Backup and move',
    tile: 'Save the whole station to a file, or bring one in',
    saveTitle: 'Save',
    saveHint: 'Every client, test and setting of this station in one file.',
    save: 'Save the station',
    bringTitle: 'Bring in',
    bringHint:
      'Onto a station without clients all of it comes, settings too. Beside clients come closed records and skin tests; the settings here stay.',
    bring: 'Choose a file',
    /** Empty where nothing went. */
    gone: (entries: string) => (entries === '0' ? '' : ` Erased there, so erased here too: ${entries}.`),
    tests: (count: string) => `${sayCount(count, 'skin test')} came in or went on.`,
    toldTwice: (tickets: string) => `${tickets}: told otherwise here, both are kept.`,
    nothingNew: 'Nothing in it is new here.',
    open: (tickets: string) => `${tickets}: open there, and left there.`,
    moved: (closed: string) => `All of it is here, closed records: ${closed}.`,
    care: 'The file names clients by ticket: keep it where only staff can read it. Once a station has moved, put the old tablet away: a client who is open is at one station.',
  },
  ranges,
  questions,
  title: 'Settings',
  sectionTitle: (section: string) => `Settings · ${section}`,
  all: 'All settings',
  toShelf: 'The shelf',
  unnamedSpray: 'Spray without a name',
  sections: {
    salon: 'The salon',
    staff: 'Who works here',
    shelf: 'The shelf',
    units: 'Units and scale',
    skinTest: 'Skin tests',
    keeping: 'What is kept',
    rules: 'House rules',
  },
  nobodyYet: 'nothing yet',
  andMore: (names: string, more: string) => `${names} and ${more} more`,
  /** What holds now, in one line; `say` answers one question. */
  summaries: {
    salon: (say: Say) => `${say('locale')} · ${say('chairs')} chairs · ${say('altitude')} above the sea`,
    staff: (say: Say) => say('staff'),
    shelf: (say: Say) => say('shelf'),
    units: (say: Say) => [say('temperature'), say('mass'), say('length'), say('scaleStepG')].join(' · '),
    skinTest: (say: Say) =>
      `read after ${say('skinTestWaitH')} h, too old after ${say('skinTestLapsesDays')} days`,
    keeping: (say: Say) =>
      say('keepMonths') === ''
        ? 'closed records: no end'
        : `closed records: ${say('keepMonths')} months, then ${say('erasesByItself').toLowerCase()}`,
    rules: (say: Say) =>
      [
        say('ageLine') === '' ? 'no age line' : `nobody under ${say('ageLine')}`,
        `no bottle over ${say('ceilingPercent')}`,
        `carried outcomes: ${say('carried').toLowerCase()}`,
      ].join(' · '),
  },
  altitudeIn: (unit: string) => `Height above the sea, ${unit}`,
  altitudeTold: (figure: string, unit: string) => `${figure} ${unit}`,
  altitudeUnits: { m: 'metres', ft: 'feet' },
  note: 'Local law, the maker’s directions and a licensed professional’s judgement come first.',
  save: 'Save',
  saved: 'Saved. They hold for every client from now on.',
  unsaved: 'Not saved yet.',
};
