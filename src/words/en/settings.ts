import type { settingsForm } from '../../../shared/records/forms/settings';
import type { FormWords } from '../formWords';
import { figures } from './figures';

const questions: FormWords<typeof settingsForm> = {
  temperature: { ask: 'Heat', options: { C: '°C', F: '°F' } },
  mass: { ask: 'Weight', options: { g: 'Grams', oz: 'Ounces' } },
  length: { ask: 'Length', options: { cm: 'cm', in: 'Inches' } },
  altitude: { ask: 'Height above the sea', hint: 'Water boils cooler higher up.' },
  scaleStepG: { ask: 'The scale shows', options: { '0.1': '0.1 g', '0.5': '0.5 g', '1': '1 g' } },
  chairs: { ask: 'Chairs' },
  staff: {
    ask: 'Staff',
    rows: { name: { ask: 'Name' } },
    rowTitle: (row) => `Person ${row}`,
    addRow: 'Add a person',
    removeRow: (row) => `Take person ${row} off`,
  },
  shelf: {
    ask: 'Shelf',
    hint: 'What is offered when a strand or a spray is asked for.',
    rows: {
      name: { ask: 'Product line' },
      kind: { ask: 'Kind', options: { lightener: 'Lightener', colour: 'Colour', spray: 'Heat spray' } },
    },
    rowTitle: (row) => `Product ${row}`,
    addRow: 'Add a product',
    removeRow: (row) => `Take product ${row} off`,
  },
  hasAgeLine: {
    ask: 'Does the local rule draw an age line?',
    hint: 'EU and UK label text: not meant for under 16 (Reg. 1223/2009, Annex III).',
    options: { yes: 'Yes', no: 'No' },
  },
  ageLine: { ask: 'Nobody younger than' },
  skinTestWaitH: {
    ask: 'Hours until a skin test is read',
    hint: 'One maker’s protocol: 48 (Cosmetics Europe 2023). The maker’s directions come first.',
  },
  skinTestLapsesDays: {
    ask: 'Days until a skin test is too old',
    hint: `Our own choice: ${figures.skinTestLapsesDays}. The maker decides how often.`,
  },
  skinTestFor: {
    ask: 'Which services want a skin test?',
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

export const settings = {
  questions,
  title: 'Settings',
  altitudeIn: (unit: string) => `Height above the sea, ${unit}`,
  altitudeUnits: { m: 'metres', ft: 'feet' },
  note: 'Local law, the maker’s directions and a licensed professional’s judgement come first.',
  save: 'Save',
  saved: 'Saved. From now on consultations are judged under these.',
  unsaved: 'Not saved yet.',
};
