import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, usualClient, usualFeel, usualTools } from './usual';

/** Fifteen, and says that she is old enough. */
export const minor: LessonSeed = {
  lesson: {
    id: 'minor',
    title: 'For the school dance',
    seat: { ticket: 'F.H.', chair: 8 },
    wants: 'A copper gloss for Saturday. Mum knows.',
    truth: {
      client: { ...usualClient, service: 'gloss', targetLevel: '6', ageBand: 'under' },
      hotTools: usualTools,
      feelHair: usualFeel,
      skinTest: null,
      glass: 'nothing',
    },
    says: {
      'client.ageBand': {
        first: { words: 'Old enough!', means: 'over' },
        closer: { words: 'Fifteen. But in March I’ll be sixteen.', means: 'under' },
      },
    },
    flags: [
      {
        id: 'stop.underAge',
        asks: ['client.ageBand'],
        why: 'Hair colour is not meant for anybody under sixteen, whoever allows it; local law may draw another line. For Saturday there is a set or a braid, and no kit at home either.',
        mark: 'published: Reg. (EC) 1223/2009 Annex III label text · where she goes next: common practice, no source',
      },
    ],
    strand: { seed: 26 },
  },
  passes: { title: 'She is asked how old she is, in years', ...asksAll },
  fails: { title: '“Old enough” is written down as it sounds', ...asksNothing, because: 'stop.underAge' },
};
