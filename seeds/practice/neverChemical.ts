import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, clearTest, holds, usualClient, usualFeel, usualTools } from './usual';

/** "Never had a chemical service", which is not so. */
export const neverChemical: LessonSeed = {
  lesson: {
    id: 'neverChemical',
    title: 'Never anything chemical',
    seat: { ticket: 'C.D.', chair: 2 },
    wants: 'It’s virgin hair, so you can go straight for blond.',
    truth: {
      client: { ...usualClient, naturalLevel: '5', endsLevel: '7' },
      hotTools: {
        ...usualTools,
        history: ['lightener'],
        bleaches: '2',
        lastBleachMonthsAgo: '10',
        bleachReach: 'ends',
      },
      feelHair: usualFeel,
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.history': {
        first: { words: 'Nothing. I’ve never had a chemical service in my life.', means: ['none'] },
        closer: {
          words:
            'Just the summer before last, and again last year: my cousin painted the ends lighter. That’s not a salon.',
          means: ['lightener'],
        },
      },
      'hotTools.bleaches': {
        first: { words: 'Twice, I think. Yes, twice.', means: '2' },
      },
    },
    flags: [
      {
        id: 'bleachedTwice',
        asks: ['hotTools.history', 'hotTools.bleaches'],
        why: 'Each bleach takes its share of the helix, and two add up. The cue: her ends are two levels lighter than her roots. Ask why.',
        mark: 'published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Fig. 4 · the cue: common practice, no source',
      },
    ],
    strand: { seed: 12, zones: { lengths: holds, ends: holds } },
  },
  passes: { title: 'She is asked what has been on it at home, by whomever', ...asksAll },
  fails: { title: '“Never” is written down as none', ...asksNothing, because: 'bleachedTwice' },
};
