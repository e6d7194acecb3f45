import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, clearTest, holds, usualClient, usualFeel, usualTools } from './usual';

/** A salon high up, where water boils lower; under any plate it boils, there as by the sea. */
export const highAltitude: LessonSeed = {
  lesson: {
    id: 'highAltitude',
    title: 'Up in the mountains',
    seat: { ticket: 'T.U.', chair: 2 },
    wants: 'Lighter for the summer season, please. I look after it: only ever the low setting!',
    altitudeM: 2400,
    truth: {
      client: usualClient,
      hotTools: {
        ...usualTools,
        habits: [{ tool: 'flatIron', wetness: 'damp', daysAWeek: '3', forMonths: '18', settingC: '130' }],
      },
      feelHair: { ...usualFeel, porosity: 'high' },
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.habits': {
        first: {
          words: 'Three days a week for a year and a half, at 130 °C, that’s 266 °F, and always dry.',
          means: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '3', forMonths: '18', settingC: '130' }],
        },
        closer: {
          words:
            'Three days a week for a year and a half, at 130 °C, 266 °F. Damp at the back, where it crackles a little.',
          means: [{ tool: 'flatIron', wetness: 'damp', daysAWeek: '3', forMonths: '18', settingC: '130' }],
        },
      },
    },
    flags: [
      {
        id: 'ironedWet',
        asks: ['hotTools.habits'],
        why: 'What crackles is water that boils in the hair: damp counts as wet. Up here it boils near 92 °C (198 °F). Her 130 °C is far above that, as it would be by the sea: damp is what matters, not the height.',
        mark: 'common practice, no source · where water boils: published: IAPWS R7-97(2012) with the U.S. Standard Atmosphere 1976',
      },
    ],
    strand: { seed: 20, zones: { lengths: holds, ends: holds } },
  },
  passes: { title: 'She is asked whether it crackles', ...asksAll },
  fails: { title: 'A low setting is taken for no harm', ...asksNothing, because: 'ironedWet' },
};
