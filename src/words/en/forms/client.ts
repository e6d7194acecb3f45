import type { clientForm } from '../../../../shared/records/forms/client';
import type { FormWords } from '../../formWords';
import { figures } from '../figures';

export const clientWords: FormWords<typeof clientForm> = {
  service: {
    ask: 'What does she want?',
    short: 'Wants',
    options: {
      lighten: 'Lighten',
      liftAndDeposit: 'Lift and deposit',
      depositOnly: 'Deposit only',
      gloss: 'Gloss',
      tone: 'Tone',
    },
  },
  reach: {
    ask: 'Where does it go?',
    short: 'Where',
    options: { fullHead: 'Full head', roots: 'Roots', endsOut: 'Ends out' },
  },
  targetLevel: {
    ask: 'Which level does she want?',
    short: 'Level wanted',
    hint: `${figures.lowestLevel} black to ${figures.highestLevel} lightest blond`,
  },
  naturalLevel: { ask: 'Natural level at the roots?', short: 'Natural level' },
  endsLevel: { ask: 'Level at the ends?', short: 'Ends level' },
  greyPercent: { ask: 'How much is grey?', short: 'Grey' },
  texture: {
    ask: 'What is one hair like?',
    short: 'Texture',
    options: { fine: 'Fine', medium: 'Medium', coarse: 'Coarse', unknown: "Don't know" },
  },
  density: {
    ask: 'How much hair is there?',
    short: 'Density',
    options: { thin: 'Thin', medium: 'Medium', thick: 'Thick', unknown: "Don't know" },
  },
  length: {
    ask: 'How long is it?',
    short: 'Length',
    options: {
      ear: 'To the ear',
      chin: 'Chin',
      collarbone: 'Collarbone',
      braLine: 'Bra line',
      waist: 'Waist',
    },
  },
  lengthCm: { ask: 'Length by the tape?', short: 'By the tape', hint: 'From the scalp, pulled straight.' },
  reactions: {
    ask: 'Has she ever reacted?',
    short: 'Reactions',
    hint: 'To colour, lightener, black henna. Ask each aloud.',
    options: {
      none: 'None of these',
      tingled: 'Tingled, gone on rinsing',
      tingledStops: 'Tingled, gone on rinsing',
      swelling: 'Swelling',
      blisters: 'Blisters',
      weeping: 'Weeping skin',
      hives: 'Hives',
      tightChest: 'Tight chest',
      rash: 'Rash',
      blackTattoo: 'Black henna tattoo',
    },
  },
  scalp: {
    ask: 'Scalp and face today?',
    short: 'Scalp, face',
    hint: 'Look, part by part.',
    options: {
      sound: 'Sound',
      tight: 'Tight',
      irritated: 'Tender or irritated',
      broken: 'Scalp broken',
      faceRash: 'Rash on the face',
    },
  },
  ageBand: { ask: 'Age', options: { over: 'Old enough', under: 'Too young' } },
};
