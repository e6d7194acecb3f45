import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, usualClient, usualFeel, usualTools } from './usual';

/** A black temporary tattoo on holiday, years ago. */
export const blackTattoo: LessonSeed = {
  lesson: {
    id: 'blackTattoo',
    title: 'A holiday tattoo',
    seat: { ticket: 'P.Q.', chair: 8 },
    wants: 'Dark brown over the grey, the way I always see it on others. My first time!',
    truth: {
      client: {
        ...usualClient,
        service: 'depositOnly',
        targetLevel: '3',
        greyPercent: '30',
        reactions: ['blackTattoo'],
      },
      hotTools: usualTools,
      feelHair: usualFeel,
      skinTest: null,
      glass: 'nothing',
    },
    says: {
      'client.reactions': {
        first: { words: 'No, I’ve never reacted to a hair colour. I’ve never had one.', means: ['none'] },
        closer: {
          words: 'On the beach, one of those black tattoos that wash off. It came up in blisters.',
          means: ['blackTattoo'],
        },
      },
    },
    flags: [
      {
        id: 'stop.blackTattoo',
        asks: ['client.reactions'],
        why: 'Who reacted to a black temporary tattoo is not coloured: no skin test first, for nothing seen in one never means safe. No kit at home either; a doctor can find out what she reacts to.',
        mark: 'published: Reg. (EC) 1223/2009 Annex III label text · the skin test: published: Coenraads et al., Dermatitis 2018, doi 10.1097/DER.0000000000000405 · where she goes next: common practice, no source',
      },
    ],
    strand: { seed: 18 },
  },
  passes: { title: 'She is asked for the tattoo by its name', ...asksAll },
  fails: { title: 'A first time is taken for no reaction', ...asksNothing, because: 'stop.blackTattoo' },
};
