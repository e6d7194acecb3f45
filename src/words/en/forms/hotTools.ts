import type { hotToolsForm } from '../../../../shared/records/forms/hotTools';
import type { FormWords } from '../../formWords';

export const hotToolsWords: FormWords<typeof hotToolsForm> = {
  habits: {
    ask: 'Hot tools at home',
    hint: 'Each tool on its own. One she gave up still counts while that hair is there.',
    rowTitle: (row) => `Tool ${row}`,
    addRow: 'Add a tool',
    noRows: 'No hot tools',
    removeRow: (row) => `Take tool ${row} out`,
    rows: {
      tool: {
        ask: 'Which tool?',
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
        ask: 'On hair that is',
        options: { wet: 'Wet', damp: 'Damp', dry: 'Dry', unknown: "Don't know" },
      },
      daysAWeek: { ask: 'Days a week' },
      forMonths: { ask: 'For how many months?' },
      settingC: { ask: 'Setting' },
      secondsASection: { ask: 'Seconds a section' },
      plateWidthCm: { ask: 'Plate width along the strand' },
      passes: { ask: 'Passes a section', hint: 'How often it goes over the same hair in that time.' },
    },
  },
  smoke: {
    ask: 'Does it ever smoke, or smell burnt?',
    options: { no: 'No', smokes: 'It smokes', smellsBurnt: 'It smells burnt', unknown: "Don't know" },
  },
  spray: {
    ask: 'Heat spray at home?',
    options: { never: 'Never', sometimes: 'Sometimes', always: 'Always', unknown: "Don't know" },
  },
  history: {
    ask: 'What has been on it, at home too?',
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
  bleaches: { ask: 'How often bleached, the oldest ends?' },
  relaxedWithinTwoWeeks: {
    ask: 'Relaxer, perm or keratin in the last two weeks?',
    options: { no: 'No', yes: 'Yes', unknown: "Don't know" },
  },
};
