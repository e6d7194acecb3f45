import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, clearTest, usualClient, usualFeel, usualTools } from './usual';

/** A scratch under the hair, made this morning. */
export const scratchedScalp: LessonSeed = {
  lesson: {
    id: 'scratchedScalp',
    title: 'Brushed hard this morning',
    seat: { ticket: 'K.L.', chair: 2 },
    wants: 'Roots, please, as last time. I’m in a bit of a hurry.',
    truth: {
      client: {
        ...usualClient,
        service: 'liftAndDeposit',
        reach: 'roots',
        targetLevel: '7',
        endsLevel: '7',
        scalp: 'broken',
      },
      hotTools: { ...usualTools, history: ['salonColour'] },
      feelHair: usualFeel,
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'client.scalp': {
        first: { words: 'My skin is fine, thank you.', means: 'sound' },
        closer: {
          words: 'Under the crown: a red line that weeps. The metal brush, this morning.',
          means: 'broken',
        },
      },
    },
    flags: [
      {
        id: 'stop.scalpBroken',
        asks: ['client.scalp'],
        why: 'Nothing goes on skin that is sensitive, irritated or damaged. Part the hair and look. She comes again when it has healed, and sees a doctor if it goes on weeping.',
        mark: 'published: Reg. (EC) 1223/2009 Annex III label text · where she goes next: common practice, no source',
      },
    ],
    strand: { seed: 28 },
  },
  passes: { title: 'The hair is parted and the skin looked at', ...asksAll },
  fails: { title: 'Her word is taken for a look', ...asksNothing, because: 'stop.scalpBroken' },
};
