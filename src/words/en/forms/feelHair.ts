import type { feelHairForm } from '../../../../shared/records/forms/feelHair';
import type { FormWords } from '../../formWords';
import { pullHint, stretchTaps } from './stretch';

const touch = { dry: 'Dry', damp: 'Damp' };
const hint = 'Damp hair hides what it is like: towel and cool air first, no hot tool.';

export const feelHairWords: FormWords<typeof feelHairForm> = {
  nape: { ask: 'How does it feel at the nape?', short: 'Nape', hint, options: touch },
  mid: { ask: 'How does it feel mid-length?', short: 'Mid-length', hint, options: touch },
  ends: { ask: 'How do the ends feel?', short: 'Ends', hint, options: touch },
  porosity: {
    ask: 'Smooth or rough?',
    short: 'Porosity',
    hint: 'Slide two fingers up one strand, towards the root.',
    options: {
      low: 'Smooth, water runs off',
      normal: 'A little grip',
      high: 'Rough, drinks water',
      unknown: 'Cannot tell',
    },
  },
  curl: {
    ask: 'Curl at the roots against the ends?',
    short: 'Curl',
    options: {
      straight: 'Straight all along',
      sameAlong: 'Same all along',
      lostAtEnds: 'Lost at the ends',
      unknown: 'Cannot tell',
    },
  },
  breakage: {
    ask: 'Short broken hairs?',
    short: 'Broken hairs',
    options: { no: 'No', some: 'Some', much: 'Many', unknown: 'Cannot tell' },
  },
  wetStretch: {
    ask: 'One wet strand, pulled lightly?',
    short: 'Wet stretch',
    hint: pullHint,
    options: { ...stretchTaps, unknown: 'Cannot tell' },
  },
};
