import type { planForm } from '../../../shared/records/forms/bowl';
import type { FormWords } from '../formWords';
import { figures } from './figures';

const plan: FormWords<typeof planForm> = {
  settingC: { ask: 'Iron no hotter than', hint: 'The lowest that still does it.' },
  passes: { ask: 'Passes a section', hint: `One slow pass, done within ${figures.longestPass}.` },
  restH: { ask: 'Nothing hot for, hours', hint: `${figures.restHours} h after colour at the least.` },
  back: {
    ask: 'When is she to come back?',
    short: 'Back',
    options: {
      weeks4: 'In 4 weeks',
      weeks6: 'In 6 weeks',
      weeks8: 'In 8 weeks',
      weeks12: 'In 12 weeks',
      noDate: 'No date',
    },
  },
};

export const finish = {
  plan,
  title: 'Home with a heat plan',
  goThere: 'Finish: the heat plan',
  rules: [
    'Completely dry first. No hot tool on wet or damp hair.',
    'Fine sections, one pass.',
    'No aerosol or alcohol spray near hot plates.',
    'Late itching or a rash: call us, and see a doctor.',
  ],
  card: 'Her heat plan',
  cardTitle: (ticket: string) => `${ticket}: heat at home`,
  noHotter: 'Iron no hotter than',
  passes: 'Passes a section',
  rest: 'Nothing hot for',
  back: 'Come back',
  hours: (hours: string) => `${hours} h`,
  openYet: 'Once the questions are answered, her plan stands here as one card.',
  ironsStayHot: (heat: string) => `An iron stays over ${heat} for 6 to 8 min after use.`,
  give: 'Give her the plan and close',
  done: 'Today:',
  bowl: (zone: string, line: string, bottle: string, minutes: string) =>
    `${zone} ${line}, ${bottle}, ${minutes}.`,
  caution: 'Tape the tested strand to her card. Nobody leaves with colour on.',
};
