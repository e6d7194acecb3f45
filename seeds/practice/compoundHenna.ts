import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, clearTest, usualClient, usualFeel, usualTools } from './usual';

/** "Only plants": compound henna, whose metal salts meet peroxide. */
export const compoundHenna: LessonSeed = {
  lesson: {
    id: 'compoundHenna',
    title: 'Only plants',
    seat: { ticket: 'E.F.', chair: 3 },
    wants: 'I’d like to be out of this near-black and light brown again.',
    truth: {
      client: { ...usualClient, targetLevel: '6', naturalLevel: '5', endsLevel: '3' },
      hotTools: { ...usualTools, history: ['compoundHenna'] },
      feelHair: { ...usualFeel, porosity: 'low' },
      skinTest: clearTest,
      glass: 'reacted',
    },
    says: {
      'hotTools.history': {
        first: { words: 'Colour? No, never. There’s nothing on it.', means: ['none'] },
        closer: {
          words:
            'Only plants, they can’t do any harm. A henna powder from the market, “black-brown in one hour” it said.',
          means: ['compoundHenna'],
        },
      },
    },
    flags: [
      {
        id: 'incompatible',
        asks: ['hotTools.history'],
        why: 'Henna by itself dyes red. Black-brown in an hour may be metal salts, or PPD, so she is asked for skin reactions too; with indigo it may be neither. Nobody sees which: a cutting goes into the glass first, off the head.',
        mark: 'common practice, no source: training texts; the maker’s method comes first · what is in such powders: from memory: general cosmetic chemistry',
      },
      {
        id: 'stop.incompatibilityReacted',
        asks: [],
        why: 'The cutting heated and bubbled, as it would have done on her head. Nothing with peroxide on it, here or at home, until it has grown out and been cut off.',
        mark: 'common practice, no source: training texts; the maker’s method comes first · where she goes next: common practice, no source',
      },
    ],
    strand: { seed: 13 },
  },
  passes: { title: 'The packet is asked for, the glass answers, and she is refused', ...asksAll },
  fails: {
    title: 'Plants are written down as none, and no glass is set up',
    ...asksNothing,
    because: 'stop.incompatibilityReacted',
  },
};
