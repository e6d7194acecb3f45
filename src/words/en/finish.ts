import type { planForm } from '../../../shared/records/forms/bowl';
import type { FormWords } from '../formWords';
import { figures } from './figures';

const plan: FormWords<typeof planForm> = {
  settingC: { ask: 'Iron no hotter than', hint: 'The lowest that still does it.' },
  passes: { ask: 'Passes a section', hint: `One is best. Each is done within ${figures.longestPass}.` },
  restH: {
    ask: 'Nothing hot for, hours',
    short: 'No heat, hours',
    hint: `${figures.restHours} h after colour at the least.`,
  },
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
  skinNow: {
    ask: 'How is her skin now?',
    short: 'Skin now',
    hint: 'Ask her, and look along the hairline.',
    options: { calm: 'Calm', pink: 'Pink, no pain', burns: 'Stings, burns or swells' },
  },
  toolsNow: {
    ask: 'Where are the irons?',
    short: 'Irons',
    options: { noneUsed: 'None was on', offCooling: 'Off, cooling' },
  },
  lateItching: {
    ask: 'Late itching: whom does she call?',
    short: 'Late itching',
    hint: 'A reaction may come days later.',
    options: { saidItBack: 'Said it back', toldHer: 'Told her', notTold: 'Not told' },
  },
  cardNow: {
    ask: 'How does she take her card along?',
    short: 'Card',
    hint: '“Printed” opens the print window. For a photo it is shown next.',
    options: {
      printed: 'Printed',
      byHand: 'Written by hand',
      photographed: 'Photo',
      notWanted: 'She wants none',
    },
  },
};

export const finish = {
  plan,
  title: 'Home with a heat plan',
  goThere: 'Finish: the heat plan',
  /** `passes`: how many of a section, null where it is one; a protectant is a must where the iron is that hot. */
  rules: (passes: string | null, isProtectantMust: boolean) => [
    'Completely dry first. No tool made for wet hair, ever.',
    passes === null
      ? `Fine sections, one pass, done within ${figures.longestPass}.`
      : `Fine sections, ${passes} passes at most, each done within ${figures.longestPass}.`,
    isProtectantMust ? 'Heat protectant each time: so hot it is a must.' : 'Heat protectant each time.',
    'No aerosol or alcohol spray near hot plates.',
    'Scorched hair does not recover: it is cut.',
  ],
  lateItching: (whom: string) => `Late itching or rash: call ${whom}; see a doctor.`,
  /** Where the salon has set nobody to call. */
  lateItchingAlone: 'Late itching or rash: ask a doctor, or call the emergency number.',
  toCall: 'To call:',
  noNumber: 'No number to call is set (Settings, The salon): write one on her card.',
  emergency: 'Throat, breath or faint: the emergency number at once.',
  whyThis: {
    weak: 'An estimate: this hair has shown damage, or much of it is not known.',
    lower: 'An estimate: lower than the hottest she told.',
    least: 'An estimate: as low as does anything; less only takes longer.',
    usual: 'An estimate: she told no hot tool.',
  },
  /** Said beside a figure that is hotter than the suggested one: as the page's name, and at the figure itself. */
  hotter: 'Hotter than suggested',
  hotterWhy: (heat: string) => `Hotter than the ${heat} suggested for this hair.`,
  print: 'Print her card',
  printHint: 'One page of A5. While the print window is open nothing calls.',
  mapTitle: 'What heat and bleach have done, by what she told: an estimate',
  card: 'Her heat plan',
  cardTitle: (ticket: string) => `${ticket}: heat at home`,
  noHotter: 'No hotter than',
  passes: 'Passes',
  rest: 'No heat for',
  back: 'Come back',
  hours: (hours: string) => `${hours} h`,
  openYet: 'Once the questions are answered, her plan stands here as one card.',
  ironsStayHot: (heat: string) => `An iron stays over ${heat} for 6 to 8 min.`,
  give: 'Give her the plan and close',
  done: 'Today:',
  bowl: (zone: string, line: string, bottle: string, minutes: string) =>
    `${zone} ${line}, ${bottle}, ${minutes}.`,
  hair: {
    line: (zone: string, told: readonly string[]) => `${zone}: ${told.join(', ')}.`,
    parts: {
      leftOut: 'left out today',
      broken: 'a strand broke',
      gummy: 'a strand went gummy',
      brokeOnHead: 'broke with colour on',
      snapped: 'snapped when pulled wet',
      toCut: 'to be cut first',
    },
  },
  burns: 'Not home yet. Water on it now; throat, breath or faint: call 112 or your local emergency number.',
  caution: 'Tape the tested strand to her card. Nobody leaves with colour on.',
};
