import type { LessonSeed } from './lessonSeed';
import { asksAll, clearTest, holds, usualClient, usualFeel, usualTools } from './usual';

/** Nothing speaks against her: to refuse her is the mistake. */
export const safeClient: LessonSeed = {
  lesson: {
    id: 'safeClient',
    title: 'A good question',
    seat: { ticket: 'H.J.', chair: 1 },
    wants: 'Is it dangerous? I’ve read such things. Only a little lighter, if you think it’s all right.',
    truth: {
      client: { ...usualClient, targetLevel: '7', length: 'chin' },
      hotTools: usualTools,
      feelHair: usualFeel,
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.smoke': {
        first: { words: 'Oh dear, I don’t know. Could it?', means: 'unknown' },
        closer: { words: 'No smoke, no smell, nothing.', means: 'no' },
      },
      'hotTools.history': {
        first: { words: 'I can’t say for sure, what counts?', means: ['unknown'] },
        closer: { words: 'Shampoo and water. Never anything else.', means: ['none'] },
      },
      'hotTools.bleaches': {
        first: { words: 'Bleach? I wouldn’t know.', means: 'unknown' },
        closer: { words: 'No. Never.', means: '0' },
      },
      'hotTools.relaxedWithinTwoWeeks': {
        first: { words: 'What would that be?', means: 'unknown' },
        closer: { words: 'Nothing of the kind.', means: 'no' },
      },
    },
    flags: [],
    strand: { seed: 27, zones: { lengths: holds, ends: holds } },
  },
  passes: { title: 'She is asked calmly, tested, and gets what she came for', ...asksAll },
  fails: {
    title: 'Her question is taken for a reason, and she is refused',
    asksCloser: 'all',
    decides: 'weSayNo',
    because: 'decision',
  },
};
