import type { clientForm } from '../../../../shared/records/forms/client';
import type { FormWords } from '../../formWords';
import { figures } from '../figures';

export const clientWords: FormWords<typeof clientForm> = {
  service: {
    ask: 'What does she want?',
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
    options: { fullHead: 'Full head', roots: 'Roots', endsOut: 'Ends out' },
  },
  targetLevel: {
    ask: 'Level she wants',
    hint: `${figures.lowestLevel} black to ${figures.highestLevel} lightest blond`,
  },
  naturalLevel: { ask: 'Natural level at the roots' },
  endsLevel: { ask: 'Level at the ends' },
  greyPercent: { ask: 'How much is grey?' },
  texture: {
    ask: 'Texture',
    options: { fine: 'Fine', medium: 'Medium', coarse: 'Coarse', unknown: "Don't know" },
  },
  density: {
    ask: 'Density',
    options: { thin: 'Thin', medium: 'Medium', thick: 'Thick', unknown: "Don't know" },
  },
  length: {
    ask: 'How long is it?',
    options: {
      ear: 'To the ear',
      chin: 'Chin',
      collarbone: 'Collarbone',
      braLine: 'Bra line',
      waist: 'Waist',
    },
  },
  lengthCm: { ask: 'Length by the tape', hint: 'From the scalp, pulled straight.' },
  reactions: {
    ask: 'Has she ever reacted to colour, lightener or a black temporary tattoo?',
    hint: 'Ask each one aloud. The red ones stop everything: press and hold.',
    options: {
      none: 'None of these',
      tingled: 'Tingled, gone on rinsing',
      swelling: 'Swelling',
      blisters: 'Blisters',
      weeping: 'Weeping skin',
      hives: 'Hives',
      tightChest: 'Tight chest',
      rash: 'Rash',
      blackTattoo: 'To a black tattoo',
    },
  },
  scalp: {
    ask: 'Scalp and face today',
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
