import type { LessonSeed } from './lessonSeed';
import { asksAll, clearTest, holds, usualClient, usualFeel, usualTools } from './usual';

const slow = { ...holds, lift: 0.6, evenness: 'patchy' } as const;

/** A box of colour that nobody remembers: the glass first, and then it lifts slowly and in patches. */
export const unknownBoxColour: LessonSeed = {
  lesson: {
    id: 'unknownBoxColour',
    title: 'A box from somewhere',
    seat: { ticket: 'G.H.', chair: 4 },
    wants: 'I had it coloured a while ago. I’d love to be a light blond by tonight.',
    truth: {
      client: { ...usualClient, targetLevel: '8', naturalLevel: '5', endsLevel: '4' },
      hotTools: { ...usualTools, history: ['unknownBoxColour'] },
      feelHair: { ...usualFeel, porosity: 'high' },
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.history': {
        first: { words: 'Coloured, yes, at a salon I suppose.', means: ['salonColour'] },
        closer: {
          words: 'No, a box from the chemist’s. Three, really. I couldn’t tell you which.',
          means: ['unknownBoxColour'],
        },
      },
    },
    flags: [
      {
        id: 'incompatible',
        asks: ['hotTools.history'],
        why: 'Nobody knows what was in that box: a cutting meets peroxide in a glass before any strand does. Nothing seen clears nothing: it may still break next day, so it is kept for 24 hours.',
        mark: 'common practice, no source: training texts; the maker’s method comes first',
      },
    ],
    strand: { seed: 14, zones: { lengths: slow, ends: slow } },
  },
  passes: {
    title: 'The glass shows nothing and the cutting is kept; the strands fall short, and less is promised',
    ...asksAll,
  },
  fails: {
    title: 'The strands came out two levels short and patchy, and it is done as she wished',
    asksCloser: 'all',
    decides: 'asPlanned',
    because: 'decision',
  },
};
