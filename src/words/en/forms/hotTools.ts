import type { hotToolsForm } from '../../../../shared/records/forms/hotTools';
import type { FormWords } from '../../formWords';
import { sayCount } from '../sayCount';

export const hotToolsWords: FormWords<typeof hotToolsForm> = {
  habits: {
    ask: 'Which hot tools at home?',
    askAnother: 'Another tool?',
    short: 'Hot tools',
    hint: 'One she gave up still counts while that hair is there.',
    rowTitle: (row) => `Tool ${row}`,
    addRow: 'Add a tool',
    noRows: 'No hot tool',
    removeRow: (row) => `Take tool ${row} out`,
    rows: {
      tool: {
        ask: 'Which tool?',
        short: 'Tool',
        options: {
          flatIron: 'Flat iron',
          curlingIron: 'Curling iron',
          wand: 'Wand',
          hotBrush: 'Hot brush',
          rollers: 'Hot rollers',
          dryer: 'Dryer',
          other: 'Another',
        },
      },
      wetness: {
        ask: 'On wet or dry hair?',
        short: 'Hair is',
        options: { wet: 'Wet', damp: 'Damp', dry: 'Dry', unknown: "Don't know" },
      },
      daysAWeek: {
        ask: 'How many days a week?',
        short: 'Days a week',
        told: (figure) => `${sayCount(figure, 'day')} a week`,
      },
      forMonths: {
        ask: 'For how many months?',
        short: 'Months',
        told: (figure) => sayCount(figure, 'month'),
      },
      settingC: { ask: 'At which setting?', short: 'Setting' },
      secondsASection: { ask: 'How many seconds a section?', short: 'A section' },
      plateWidthCm: { ask: 'How wide is the plate, along the strand?', short: 'Plate' },
      passes: {
        ask: 'How many passes a section?',
        short: 'Passes',
        hint: 'How often it goes over the same hair in that time.',
      },
      stoppedMonthsAgo: {
        ask: 'How many months ago did she stop?',
        short: 'Stopped',
        hint: '0 while she still does.',
        told: (figure) => (figure === '0' ? 'still does' : `stopped ${sayCount(figure, 'month')} ago`),
      },
    },
  },
  smoke: {
    ask: 'Does it ever smoke, or smell burnt?',
    short: 'Smoke',
    options: { no: 'No', smokes: 'It smokes', smellsBurnt: 'It smells burnt', unknown: "Don't know" },
  },
  spray: {
    ask: 'Heat spray at home?',
    short: 'Spray at home',
    options: { never: 'Never', sometimes: 'Sometimes', always: 'Always', unknown: "Don't know" },
  },
  history: {
    ask: 'What has been on it, at home too?',
    short: 'Been on it',
    hint: '“None of these” says nothing about the heat.',
    options: {
      none: 'None of these',
      unknown: "She doesn't know",
      salonColour: 'Salon colour',
      boxColour: 'Box colour',
      unknownBoxColour: 'Box colour, which unknown',
      henna: 'Pure henna',
      compoundHenna: 'Compound henna',
      metallicColour: 'Grey restorer, metal colour',
      gloss: 'Gloss',
      sunSpray: 'Sun spray',
      keratin: 'Keratin',
      relaxer: 'Relaxer',
      perm: 'Perm',
      lightener: 'Lightener',
      poolWater: 'Pool water',
      wellWater: 'Well water',
    },
  },
  bleaches: {
    ask: 'How many times bleached, at the oldest ends?',
    short: 'Bleached',
    hint: 'If only a band was bleached: how many times there.',
  },
  lastBleachMonthsAgo: {
    ask: 'How many months ago was the last bleach?',
    short: 'Last bleach',
    hint: 'Hair that grew since has none. 0 for this month.',
    told: (figure) => (figure === '0' ? 'this month' : `${sayCount(figure, 'month')} ago`),
  },
  bleachReach: {
    ask: 'Where did the bleach go?',
    short: 'Bleach on',
    options: {
      all: 'All of it',
      roots: 'Each new growth',
      ends: 'Ends only',
      band: 'A band, not the ends',
      unknown: "Don't know",
    },
  },
  relaxedWithinTwoWeeks: {
    ask: 'Relaxer, perm or keratin in the last two weeks?',
    short: 'Last two weeks',
    options: { no: 'No', yes: 'Yes', unknown: "Don't know" },
  },
  growth: {
    ask: 'Was her growth measured?',
    short: 'Growth',
    hint: 'By what has grown since a colour of known date. If not, a wide usual range is taken.',
    options: { usual: 'Not measured', measured: 'Measured' },
  },
  regrowthCm: { ask: 'How much has grown since that colour?', short: 'Grown' },
  regrowthWeeks: {
    ask: 'How many weeks ago was that colour?',
    short: 'Since',
    told: (figure) => `in ${sayCount(figure, 'week')}`,
  },
};
