import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, usualClient, usualFeel, usualTools } from './usual';

/** A tight chest with lightener, which she took for a cold. */
export const wheeze: LessonSeed = {
  lesson: {
    id: 'wheeze',
    title: 'A cold that day',
    seat: { ticket: 'R.S.', chair: 1 },
    wants: 'Highlights again, please. Last time it looked lovely.',
    truth: {
      client: { ...usualClient, reactions: ['tingled', 'tightChest'] },
      hotTools: {
        ...usualTools,
        history: ['lightener'],
        bleaches: '1',
        lastBleachMonthsAgo: '6',
        bleachReach: 'all',
      },
      feelHair: usualFeel,
      skinTest: null,
      glass: 'nothing',
    },
    says: {
      'client.reactions': {
        first: { words: 'It tingled a little and stopped on rinsing.', means: ['tingled'] },
        closer: {
          words: 'It tingled, and I wheezed the whole evening with a tight chest. But I had a cold coming.',
          means: ['tingled', 'tightChest'],
        },
      },
    },
    flags: [
      {
        id: 'stop.persulfateReaction',
        asks: ['client.reactions'],
        why: 'Persulfates cause hives, asthma and, rarely, shock. Wheezing with lightener once: never again, here or at home; to a doctor with it. Should her breath go short now: the emergency number first.',
        mark: 'published: Pang & Fiume, Int. J. Toxicol. 20(S3):7–21, 2001 · where she goes next: common practice, no source',
      },
    ],
    strand: { seed: 19 },
  },
  passes: { title: 'She is asked how she breathed that evening', ...asksAll },
  fails: {
    title: 'A tingle is lifted by name, and nobody asks about her breath',
    ...asksNothing,
    liftsStops: true,
    because: 'stop.persulfateReaction',
  },
};
