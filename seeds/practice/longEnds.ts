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

const stopped = {
  tool: 'flatIron',
  wetness: 'wet',
  daysAWeek: '6',
  forMonths: '24',
  settingC: '200',
  stoppedMonthsAgo: '24',
} as const;

/** Hair whose ends are older than her good habits. */
export const longEnds: LessonSeed = {
  lesson: {
    id: 'longEnds',
    title: 'I don’t own an iron',
    seat: { ticket: 'D.E.', chair: 7 },
    wants: 'A golden blond. I’ve grown it all out, it’s never seen an iron.',
    truth: {
      client: { ...usualClient, lengthCm: '37' },
      hotTools: { ...usualTools, habits: [stopped] },
      feelHair: usualFeel,
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.habits': {
        first: { words: 'I don’t own an iron. Air-dried, always.', means: [] },
        closer: {
          words:
            'Before, yes: six mornings a week, wet, at 200 °C, that’s 392 °F, for two years. I threw it out two years ago.',
          means: [stopped],
        },
      },
    },
    flags: [
      {
        id: 'endsAtRisk',
        asks: ['hotTools.habits'],
        why: 'Hair grows about 1.1 cm a month: two years of good habits are the first 27 cm. Her last 10 cm are older than they are.',
        mark: 'published: Loussouarn, El Rawadi, Genain, Int. J. Dermatol. 44(Suppl 1):6–9, 2005, Table 1',
      },
      {
        id: 'ironedWet',
        asks: ['hotTools.habits'],
        ...wetUnderThePlate,
      },
    ],
    strand: { seed: 25, zones: { lengths: holds, ends: goes } },
  },
  passes: { title: 'She is asked what she did before, and the ends stay out', ...asksAll },
  fails: {
    title: 'The ends came apart, and go in with the rest',
    asksCloser: 'all',
    decides: 'asPlanned',
    because: 'decision',
  },
};
