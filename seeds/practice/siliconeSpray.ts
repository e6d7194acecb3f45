import type { LessonSeed } from './lessonSeed';
import { asksAll, asksNothing, clearTest, holds, usualClient, usualFeel, usualTools } from './usual';

/** A silicone spray at the hottest setting: "it protects". */
export const siliconeSpray: LessonSeed = {
  lesson: {
    id: 'siliconeSpray',
    title: 'Always protected',
    seat: { ticket: 'X.Y.', chair: 4 },
    wants: 'Blonder! And ironed straight after, at my setting. My Harbour veil protects it.',
    finish: { finish: 'styled', spray: 'Harbour veil', tool: 'flatIron', settingC: '221' },
    agreesTo: {
      words: 'If you say it is enough: 180 °C then, 356 °F, and only today.',
      finish: { finish: 'styled', spray: 'Harbour veil', tool: 'flatIron', settingC: '180' },
    },
    shelf: [
      {
        name: 'Harbour veil',
        kind: 'spray',
        ingredients: 'CYCLOPENTASILOXANE, DIMETHICONE, CYCLOHEXASILOXANE, ARGANIA SPINOSA KERNEL OIL, PARFUM',
        makerSaysUpToC: 230,
      },
    ],
    truth: {
      client: usualClient,
      hotTools: {
        ...usualTools,
        habits: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '3', forMonths: '24', settingC: '221' }],
        spray: 'always',
      },
      feelHair: usualFeel,
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'hotTools.habits': {
        first: {
          words: 'Three days a week for two years, dry, at a normal setting: 182 °C, so 360 °F.',
          means: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '3', forMonths: '24', settingC: '182' }],
        },
        closer: {
          words:
            'Three days a week for two years, dry. The dial says 221 °C, so 430 °F. With that spray nothing less works.',
          means: [{ tool: 'flatIron', wetness: 'dry', daysAWeek: '3', forMonths: '24', settingC: '221' }],
        },
      },
    },
    flags: [
      {
        id: 'veryHot',
        asks: ['hotTools.habits'],
        why: 'Above 400 °F (204 °C) the cortex softens, sprayed or not.',
        mark: 'common practice, no source',
      },
      {
        id: 'siliconeGivesFormaldehyde',
        asks: ['heatSpray.spray', 'heatSpray.settingC'],
        why: 'Methyl silicones in air begin to give off formaldehyde above 149 °C (300 °F), so at a normal setting too. The figure is from silicone rubber, not from a film on hair.',
        mark: 'published: Timpe, Formaldehyde generation from silicone rubber',
      },
      {
        id: 'siliconeSprayHelpsNoMore',
        asks: ['heatSpray.spray', 'heatSpray.settingC'],
        why: 'Above 400 °F (204 °C) a silicone spray is held to help no more. What its maker says comes first; it makes no hair sound.',
        mark: 'common practice, no source',
      },
      {
        id: 'd5Boils',
        asks: ['heatSpray.spray', 'heatSpray.settingC'],
        why: 'Cyclopentasiloxane boils at 210 °C (410 °F); a thin film leaves well before that.',
        mark: 'published: ECHA registration dossier 14807 · the film: from memory: general physical chemistry, vapour pressure below the boiling point',
      },
    ],
    strand: { seed: 22, zones: { lengths: holds, ends: holds } },
  },
  passes: { title: 'She is asked what the dial says', ...asksAll },
  fails: { title: 'A normal setting is written down as she calls it', ...asksNothing, because: 'veryHot' },
};
