import type { BowlFact } from '../../../machines/consultation/facts';
import type { ThinningRefusal } from '../../../shared/chemistry/thinning';
import type { bowlForm } from '../../../shared/records/forms/bowl';
import type { FormWords } from '../formWords';
import { figures } from './figures';
import { mixWords } from './forms/strand';
import { general } from './general';

const bowl: FormWords<typeof bowlForm> = {
  zone: { ask: 'Which hair?', options: general.zones },
  shades: {
    ask: 'In the bowl',
    rows: { shade: { ask: 'Shade or lightener' }, parts: { ask: 'Parts' } },
    rowTitle: (row) => `Part ${row}`,
    addRow: 'Add a shade',
    removeRow: (row) => `Take out part ${row}`,
  },
  colourG: { ask: 'Colour or lightener, all together', short: 'All together' },
  ...mixWords,
  bottles: {
    ask: 'Two bottles',
    rows: { percent: { ask: 'Bottle' } },
    rowTitle: (row) => `Bottle ${row}`,
    addRow: 'Add a bottle',
    removeRow: (row) => `Take out bottle ${row}`,
  },
  weighed: {
    ask: 'Weighed item by item',
    rows: { amountG: { ask: 'The scale says' } },
    rowTitle: (row) => `Part ${row}`,
    addRow: 'Add a part',
    removeRow: (row) => `Take out part ${row}`,
  },
  mixedMinAgo: { ask: 'Mixed how long ago?' },
};

const thinning: Readonly<Record<ThinningRefusal | 'overHouseCeiling', string>> = {
  overHouseCeiling: 'Stronger than any bottle of this house.',
  notFinite: 'One of the figures is no number.',
  notADeveloper: 'Only another developer thins it. Never water.',
  overCeiling: `Over ${figures.ceiling} (${figures.ceilingVolumes}) goes on no hair.`,
  notWeaker: 'The second bottle has to be the weaker one.',
  bothWeaker: 'Both bottles are weaker than the bowl asks for.',
  bothStronger: 'Both bottles are stronger than the bowl asks for.',
  stepTooCoarse: 'So little of the stronger bottle that the scale cannot show it.',
  notPositive: 'The grams come first.',
  tooMuch: 'More than one bowl holds.',
};

export const mix = {
  bowl,
  title: 'Mix',
  titleFor: (zone: string) => `Bowl for the ${zone}`,
  states: {
    none: 'no bowl yet',
    weighed: 'weighed, not on',
    on: 'on the head',
    rinsed: 'rinsed',
    thrown: 'thrown away',
  } satisfies Readonly<Record<Exclude<BowlFact, 'tonerWeighed'>, string>>,
  /** The same of a toner. */
  tonerStates: { weighed: 'toner weighed, not on', on: 'toner on the head', rinsed: 'toner rinsed' },
  limits: 'Within what was tested:',
  limitLine: (line: string) => `${line}, no other line`,
  limitDeveloper: (percent: string, vol: string) => `no stronger than ${percent} (${vol})`,
  /** Why that is less than the strand held. */
  onScalp: 'no more on the scalp',
  signForScalp: 'Sign for more on the scalp',
  signScalp: 'More on the scalp',
  limitRatio: (ratio: string) => `1 : ${ratio}`,
  limitMinutes: (minutes: string) => `at most ${minutes}`,
  limitHeat: { none: 'no heat', foil: 'foil, no dry heat', dryHeat: 'dry heat' } satisfies Readonly<
    Record<'none' | 'foil' | 'dryHeat', string>
  >,
  headHeat: {
    none: 'No heat',
    foil: 'In foil, no dry heat',
    dryHeat: 'With dry heat, if the maker says so',
  } satisfies Readonly<Record<'none' | 'foil' | 'dryHeat', string>>,
  batch: (batch: string) => `batch ${batch}`,
  weighedColour: (grams: string, stuff: 'colour' | 'lightener') => `${grams} ${stuff}`,
  bottle: (percent: string, vol: string) => `${percent} bottle (${vol})`,
  weighedBy: (name: string, time: string) => `weighed ${time}, ${name}`,
  byStrand: (number: string) => `from strand ${number}`,
  notPowder: 'Lightener: the maker’s directions decide, not a skin test.',
  skinTestOfNone: 'Nobody noted which line the skin test was of.',
  skinTestOfOther: (line: string) => `The skin test was of ${line}, not of this line.`,
  grams: 'Weigh',
  developer: 'developer',
  together: 'together',
  amount: (typical: string, low: string, high: string) =>
    `For this hair about ${typical} mixed, ${low} to ${high}.`,
  inAll: (grams: string) => `${grams} together`,
  developerOff: (grams: string, way: 'more' | 'less') =>
    `${grams} ${way} developer than the ratio asks: the scale’s step`,
  remainder: (grams: string) => `${grams} the scale cannot show are left out`,
  fieldsOpen: 'Fill in the marked fields.',
  weigh: 'Weighed',
  weighedWith: (percent: string) => `Weighed: ${percent} bottle`,
  weighedWithTwo: (strong: string, weak: string) => `Weighed: ${strong}, ${weak}`,
  /** How much of which of two bottles. */
  pour: (grams: string, percent: string) => `${grams} of ${percent}`,
  poured: (strong: string, weak: string, made: string, vol: string) =>
    `${strong} and ${weak}, together ${made} (${vol})`,
  twoBottles: (strong: string, weak: string, made: string, vol: string) =>
    `${strong} and ${weak} bottles, together ${made} (${vol})`,
  /** From one bowl to what stands at the scale: the bowls of all zones. */
  toBowls: 'All bowls',
  weighFor: (zone: string) => `Mix for the ${zone}`,
  /** The pause before it goes on: read from bowl and record, said aloud, and the skin answered by its value. */
  sayFirst: 'Look at scalp and face, say this aloud, then begin: its clock starts.',
  who: (chair: string, ticket: string) => `chair ${chair}, ${ticket}`,
  lookEvery: (minutes: string) => `a look every ${minutes}`,
  rootsLast: 'the roots last',
  fromTips: (length: string) => `stays ${length} from the tips`,
  apply: (zone: string) => `Skin calm: begin on the ${zone}`,
  notCalm: 'Skin not calm',
  calmAfterAll: 'Calm after all',
  /** Before it is written, and while how scalp and face are is open. */
  notCalmThen:
    'Nothing goes on skin that is not calm. Throw the bowl away; Client asks how scalp and face are.',
  thrownNotCalm: 'thrown away: skin not calm',
  throwAway: 'Throw the bowl away',
  useBy: (time: string) => `use by ${time}`,
  tooOld: (useBy: string) =>
    `Bowl too old: to be on by ${useBy}. If it is on her, rinse it off. Throw it away and mix anew.`,
  /** Back to the strand test, past the question what that costs. */
  secondRound: 'Second round: new strand',
  finish: 'No more bowls: finish',
  thin: {
    open: 'Other bottles at hand?',
    title: 'Two bottles of one line',
    close: 'Back to the bowl',
    use: 'Use these two',
    one: 'One bottle after all',
    form: {
      strongPercent: { ask: 'How strong is the stronger bottle?', short: 'Stronger bottle' },
      weakPercent: { ask: 'And the weaker one, of the same line?', short: 'Weaker bottle' },
    },
    summary: 'Weigh',
    of: (percent: string) => `of the ${percent} bottle`,
    makes: 'makes',
    wants: (grams: string, percent: string) => `${grams} developer of ${percent}, from two bottles`,
    hint: 'Never with water. Used up now, never kept thinned.',
    refusals: thinning,
  },
  /** One thing after another onto the scale. */
  weighIn: {
    open: 'Weigh in one by one',
    title: (zone: string) => `Weigh in: ${zone}`,
    developer: 'Developer',
    bottle: (percent: string) => `${percent} bottle`,
    pour: (what: string, grams: string) => `${what}: ${grams}`,
    more: (what: string) => `more ${what}`,
    hint: 'Scale to zero, pour, then tap what it says.',
    inOf: (grams: string, total: string) => `${grams} of ${total} in`,
    grew: 'Too much went in: the rest grows with it.',
    tooMuch: 'More than a bowl holds. Throw it away.',
    foreign: 'Something is in that this bowl no longer asks for. Throw it away.',
    goOn: 'Go on weighing in',
    summary: 'In the bowl',
    anew: 'Begin anew',
    close: 'Back to the bowl',
  },
};
