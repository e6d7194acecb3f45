import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, clearTest, goes, holds, usualClient, usualFeel, usualTools } from './usual';

/** A relaxer that she does not call chemistry, and lightener after it. */
export const relaxer: LessonSeed = {
  lesson: {
    id: 'relaxer',
    title: 'Nothing on it',
    seat: { ticket: 'J.K.', chair: 5 },
    wants: 'Caramel, please, all the way through.',
    truth: {
      client: { ...usualClient, targetLevel: '7', naturalLevel: '2', endsLevel: '2' },
      hotTools: { ...usualTools, history: ['relaxer'], relaxedWithinTwoWeeks: 'no' },
      feelHair: { ...usualFeel, curl: 'lostAtEnds', breakage: 'some' },
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.history': {
        first: { words: 'No colour, nothing. Just as it is.', means: ['none'] },
        closer: {
          words: 'A relaxer, every other month. Six weeks ago the last time. But that’s not colour.',
          means: ['relaxer'],
        },
      },
      'feelHair.curl': {
        first: { words: 'Straight, from the parting to the tip.', means: 'straight' },
        closer: {
          words: 'Close to the scalp a finger’s width of curl; below it, straight.',
          means: 'lostAtEnds',
        },
      },
      'feelHair.breakage': {
        first: { words: 'Nothing on the cape so far.', means: 'no' },
        closer: { words: 'Short pieces in the comb, all along the parting.', means: 'some' },
      },
    },
    flags: [
      {
        id: 'judgement.relaxerThenLightener',
        asks: ['hotTools.history'],
        why: 'A relaxer has already taken bonds; lightener takes from those that are left. For a new hire it is no. A shade that only deposits can be offered, or waiting until it has grown out.',
        mark: 'common practice, no source · where she goes next: common practice, no source',
      },
      {
        id: 'curlLost',
        asks: ['feelHair.curl'],
        why: 'What grew last curls and the rest does not: something took its shape. Ask what.',
        mark: 'common practice, no source',
      },
      {
        id: 'breakage',
        asks: ['feelHair.breakage'],
        why: 'It breaks already, without any mix on it.',
        mark: 'common practice, no source',
      },
    ],
    strand: { seed: 15, zones: { lengths: holds, ends: goes } },
  },
  passes: { title: 'She is asked what makes it straight, and is refused lightener', ...asksAll },
  fails: {
    title: 'Straight hair is taken for natural',
    ...asksNothing,
    because: 'judgement.relaxerThenLightener',
  },
};
