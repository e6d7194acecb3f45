import type { LessonSeed } from './lessonSeed';
import {
  asksAll,
  clearTest,
  goes,
  holds,
  usualClient,
  usualFeel,
  usualTools,
  wetUnderThePlate,
} from './usual';

/** Years of ironing wet under curls that look sound. */
export const wetIronedCurls: LessonSeed = {
  lesson: {
    id: 'wetIronedCurls',
    title: 'Curls that look sound',
    seat: { ticket: 'A.B.', chair: 1 },
    wants:
      'Two shades lighter all over, please. At weekends I let my curls be, and everybody says how good they look.',
    truth: {
      client: { ...usualClient, length: 'braLine' },
      hotTools: {
        ...usualTools,
        habits: [{ tool: 'flatIron', wetness: 'wet', daysAWeek: '5', forMonths: '48', settingC: '200' }],
        smoke: 'smellsBurnt',
      },
      feelHair: { ...usualFeel, porosity: 'high', curl: 'lostAtEnds' },
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.habits': {
        first: {
          words:
            'The front, once a week, dry, with the flat iron on 200 °C, that’s 392 °F. For four years now.',
          means: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '1', forMonths: '48', settingC: '200' }],
        },
        closer: {
          words:
            'Straight out of the shower, five mornings a week, for four years: 200 °C, 392 °F. It dries as it goes.',
          means: [{ tool: 'flatIron', wetness: 'wet', daysAWeek: '5', forMonths: '48', settingC: '200' }],
        },
      },
      'hotTools.smoke': {
        first: { words: 'Smoke? No, nothing ever burnt.', means: 'no' },
        closer: {
          words: 'It hisses, and there’s a white cloud. And afterwards it smells of singed feathers.',
          means: 'smellsBurnt',
        },
      },
      'feelHair.curl': {
        first: { words: 'Dry, the curls look the same from root to end.', means: 'sameAlong' },
        closer: {
          words: 'Wet and let go, the last hand’s width hangs straight.',
          means: 'lostAtEnds',
        },
      },
    },
    flags: [
      {
        id: 'ironedWet',
        asks: ['hotTools.habits'],
        ...wetUnderThePlate,
      },
      {
        id: 'scorched',
        asks: ['hotTools.smoke'],
        why: 'A cloud may be steam, and steam smells of nothing. Hair that smells singed was hotter than any setting that is told.',
        mark: 'common practice, no source',
      },
      {
        id: 'curlLost',
        asks: ['feelHair.curl'],
        why: 'The ends have lost the shape that the roots still have, so what held it is gone.',
        mark: 'common practice, no source',
      },
    ],
    strand: { seed: 11, zones: { lengths: holds, ends: goes } },
  },
  passes: { title: 'She is asked when she irons, and the wet curl is let go', ...asksAll },
  fails: {
    title: 'The ends break, three things speak against the rest, and that is lightened all the same',
    asksCloser: 'all',
    decides: 'endsOut',
    because: 'decision',
  },
};
