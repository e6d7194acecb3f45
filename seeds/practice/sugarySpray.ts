import type { LessonSeed } from './lessonSeed';
import { asksAll, clearTest, holds, usualClient, usualFeel, usualTools } from './usual';

/** A spray with sugar in it, and an iron over it. */
export const sugarySpray: LessonSeed = {
  lesson: {
    id: 'sugarySpray',
    title: 'It smells like toffee',
    seat: { ticket: 'V.W.', chair: 3 },
    wants: 'Two levels lighter. And iron it afterwards with my own Cove mist, please, I brought it.',
    finish: { finish: 'styled', spray: 'Cove mist', tool: 'flatIron', settingC: '190' },
    shelf: [
      {
        name: 'Cove mist',
        kind: 'spray',
        ingredients:
          'Aqua, Alcohol Denat., Sucrose, Hydrolyzed Wheat Protein, Panthenol, Glycerin, Phenoxyethanol, Parfum',
      },
    ],
    truth: {
      client: usualClient,
      hotTools: {
        ...usualTools,
        habits: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '4', forMonths: '24', settingC: '190' }],
        smoke: 'smellsBurnt',
        spray: 'always',
      },
      feelHair: { ...usualFeel, porosity: 'high' },
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.smoke': {
        first: { words: 'No, it never smokes.', means: 'no' },
        closer: {
          words: 'It smells of toffee each time. And of singed hair a little, once it’s warm.',
          means: 'smellsBurnt',
        },
      },
    },
    flags: [
      {
        id: 'scorched',
        asks: ['hotTools.smoke'],
        why: 'Sugar browns on the plate and smells of toffee. Hair that smells singed was hotter than any setting that is told.',
        mark: 'common practice, no source',
      },
      {
        id: 'sugarCaramelises',
        asks: ['heatSpray.spray', 'heatSpray.settingC'],
        why: 'Sugar caramelises above about 120 °C (248 °F). Her iron is at 190 °C (374 °F).',
        mark: 'published: Kroh, Food Chem. 51:373–379, 1994',
      },
      {
        id: 'alcoholBurns',
        asks: ['heatSpray.spray'],
        why: 'A spark lights alcohol in water from 26 °C (79 °F) on at 40 per cent by weight, from 21 °C (70 °F) at 70: no alcohol spray near hot plates. And no hot tool at all for 48 hours after lightener.',
        mark: 'published: a table of ethanol–water flash points, publisher not named · the 48 hours: assumed: the aftercare of this station',
      },
    ],
    strand: { seed: 21, zones: { lengths: holds, ends: holds } },
  },
  passes: { title: 'She is asked what it smells of, and the list on the bottle is read', ...asksAll },
  fails: {
    title: 'She is ironed as she asks, with an alcohol spray on it',
    ...asksAll,
    finishesAsAsked: true,
    because: 'finish',
  },
};
