import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, usualClient, usualFeel, usualTools } from './usual';

/** The skin test has reacted, and she wants it all the same. */
export const positiveSkinTest: LessonSeed = {
  lesson: {
    id: 'positiveSkinTest',
    title: 'It only itched a bit',
    seat: { ticket: 'N.O.', chair: 7 },
    wants: 'You put the drop behind my ear on Tuesday, so we’re all set.',
    truth: {
      client: { ...usualClient, service: 'depositOnly', targetLevel: '5' },
      hotTools: usualTools,
      feelHair: usualFeel,
      skinTest: { hoursAgo: 51, seen: 'reaction' },
      glass: 'nothing',
    },
    says: {
      'client.scalp': {
        first: {
          words: 'My skin’s fine. It only itched a bit where the drop was, that’s normal.',
          means: 'sound',
        },
      },
    },
    flags: [
      {
        id: 'stop.skinTestPositive',
        asks: [],
        why: 'How it is read stands with the maker, and itching where the drop was is never nothing: look behind the ear yourself. No colour of this kind, here or at home; to a doctor with it, and with the name of the product.',
        mark: 'published: Cosmetics Europe 2023 · the itching: common practice, no source · where she goes next: common practice, no source',
      },
    ],
    strand: { seed: 17 },
  },
  passes: { title: 'The place is looked at, and she is refused', ...asksAll },
  fails: { title: 'Her word is taken for a reading', ...asksNothing, because: 'stop.skinTestPositive' },
};
