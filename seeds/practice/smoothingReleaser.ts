import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, clearTest, holds, usualClient, usualFeel, usualTools } from './usual';

/** A smoothing treatment last week, whose label says "formaldehyde-free" and whose list does not. */
export const smoothingReleaser: LessonSeed = {
  lesson: {
    id: 'smoothingReleaser',
    title: 'Smooth since Friday',
    seat: { ticket: 'L.M.', chair: 6 },
    wants: 'It’s so shiny now. A few levels lighter and it’s perfect.',
    shelf: [
      {
        name: 'Headland smooth',
        kind: 'spray',
        ingredients: 'AQUA, METHYLENE GLYCOL, HYDROLYZED KERATIN, CETEARYL ALCOHOL, PARFUM',
      },
    ],
    truth: {
      client: usualClient,
      hotTools: { ...usualTools, history: ['keratin'], relaxedWithinTwoWeeks: 'yes' },
      feelHair: { ...usualFeel, porosity: 'low' },
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.history': {
        first: { words: 'Nothing on it. Just a kind of conditioner.', means: ['none'] },
        closer: {
          words:
            'A smoothing treatment, ironed in. Headland smooth. The bottle said formaldehyde-free, but my eyes were streaming.',
          means: ['keratin'],
        },
      },
      'hotTools.relaxedWithinTwoWeeks': {
        first: { words: 'Oh, a while ago.', means: 'no' },
        closer: { words: 'On Friday. So, six days.', means: 'yes' },
      },
    },
    flags: [
      {
        id: 'smoothed',
        asks: ['hotTools.history'],
        why: 'Methylene glycol on a label is formaldehyde in water: heat drives it off. No hot tool on what is left of it.',
        mark: 'published: OSHA hazard alert 2011; 29 CFR 1910.1048 · no hot tool: common practice, no source',
      },
      {
        id: 'judgement.relaxedRecently',
        asks: ['hotTools.relaxedWithinTwoWeeks'],
        why: 'Six days after it the hair has not settled. Two weeks are waited: she comes again then, without a hot tool until she does.',
        mark: 'common practice, no source · where she goes next: common practice, no source',
      },
    ],
    strand: { seed: 16, zones: { lengths: holds, ends: holds } },
  },
  passes: { title: 'She is asked what makes it shine, and since when', ...asksAll },
  fails: {
    title: 'A kind of conditioner is written down as nothing',
    ...asksNothing,
    because: 'judgement.relaxedRecently',
  },
};
