import type { LessonSeed } from './lessonSeed';
import { asksAll, holds, usualClient, usualFeel, usualTools } from './usual';

/** A skin test of six weeks ago: a strand may be tested today, her head waits for a new one. */
export const lapsedSkinTest: LessonSeed = {
  lesson: {
    id: 'lapsedSkinTest',
    title: 'Fine last time',
    seat: { ticket: 'S.T.', chair: 3 },
    wants: 'A warm brown all over, please. The skin test is done, it was fine.',
    truth: {
      client: { ...usualClient, service: 'depositOnly', targetLevel: '5', length: 'chin' },
      hotTools: usualTools,
      feelHair: usualFeel,
      skinTest: { hoursAgo: 1008, seen: 'nothing' },
      glass: 'nothing',
    },
    says: {
      'client.reactions': {
        first: { words: 'No. You tested me, so you know.', means: ['none'] },
        closer: {
          words: 'Never, nothing. That was for the last time, though, six weeks ago.',
          means: ['none'],
        },
      },
    },
    flags: [
      {
        id: 'skinTestLapsed',
        asks: [],
        why: 'A skin test counts for so many days as the house says, and hers is older: nothing goes on her head before a new one was read. Her strands may be tested today.',
        mark: 'common practice, no source',
      },
    ],
    strand: { seed: 30, zones: { lengths: holds, ends: holds } },
  },
  passes: { title: 'Her strands are tested today, and her head waits for a new skin test', ...asksAll },
  fails: {
    title: 'The skin test has lapsed, and she is refused altogether',
    asksCloser: 'all',
    decides: 'weSayNo',
    because: 'decision',
  },
};
