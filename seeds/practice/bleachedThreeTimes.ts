import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, clearTest, goes, holds, usualClient, usualFeel, usualTools } from './usual';

/** Bleached three times, and once more is asked for. */
export const bleachedThreeTimes: LessonSeed = {
  lesson: {
    id: 'bleachedThreeTimes',
    title: 'Once more won’t hurt',
    seat: { ticket: 'Z.A.', chair: 5 },
    wants: 'It’s blond already, only not quite. One more round, all over.',
    truth: {
      client: { ...usualClient, targetLevel: '9', naturalLevel: '6', endsLevel: '8' },
      hotTools: {
        ...usualTools,
        history: ['lightener'],
        bleaches: '3',
        lastBleachMonthsAgo: '4',
        bleachReach: 'all',
      },
      feelHair: { ...usualFeel, porosity: 'high' },
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.bleaches': {
        first: { words: 'Bleached? Just the once, really.', means: '1' },
        closer: { words: 'Once here, and twice at home before that. All over, each time.', means: '3' },
      },
    },
    flags: [
      {
        id: 'bleachedTwice',
        asks: ['hotTools.bleaches'],
        why: 'Three bleaches left about 71 % of the helix where it was measured, and the ends had all three.',
        mark: 'published: Wortmann, Springob, Sendelbach, J. Cosmet. Sci. 53:219–228, 2002, Table I',
      },
    ],
    strand: { seed: 23, zones: { lengths: holds, ends: goes } },
  },
  passes: { title: 'Each time is counted, and the ends stay out', ...asksAll },
  fails: {
    title: '“Just the once” is written down, and the ends are the surprise',
    ...asksNothing,
    because: 'bleachedTwice',
  },
};
