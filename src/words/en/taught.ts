import type { CovariateName } from '../../../shared/judgement/chance/covariates';
import { sayCount } from './sayCount';

/** Each thing that bears on the chance, as the hair that has it. */
const hair: Readonly<Record<CovariateName | 'base', string>> = {
  base: 'hair with nothing against it',
  helixLost: 'hair long under heat and bleach',
  tryptophanLost: 'hair with marks of heat',
  ironedWet: 'hair ironed wet',
  scorched: 'hair that smoked',
  bleaches: 'bleached hair',
  curlLost: 'hair that lost its curl',
  slowStretch: 'hair that came back slowly',
  porous: 'porous hair',
  breakage: 'hair that breaks already',
  veryHot: 'hair ironed very hot',
  smoothing: 'hair with keratin on it',
  relaxer: 'relaxed or permed hair',
  strangeColour: 'hair with a colour nobody knows',
};

const whatTeaches =
  'Every recorded strand of a lightening or lift teaches from the day after it. Nothing is taken from the demo, from other tablets or from strands put aside.';

const sayBetter = (by: string | null): string => (by === null ? 'no better' : `${by} better`);

/** What this station's own strands taught, in words of somebody who never heard of statistics. */
export const taught = {
  way: 'Our strands',
  title: 'What our strands taught',
  kicker: 'The chance that strands break, by the strands of this station',
  count: (strands: string) => `${sayCount(strands, 'strand')} taught`,
  broke: (broken: string, of: string) => `${broken} of ${of} went gummy or broke.`,
  tooFew: 'Too few to tell. From 20 strands on it says here how well it is foreseen.',
  /** Both by how much nearer they come than whoever says the average of every strand. */
  foreseen: (learnt: string | null, assumed: string | null) =>
    `Foreseen ${sayBetter(learnt)} than by the plain average; as assumed, ${sayBetter(assumed)}.`,
  nothingToCompare: 'All of them came out alike: there is nothing to foresee yet.',
  moved: {
    more: (hair: readonly string[]) => `Breaks more than assumed: ${hair.join(', ')}.`,
    less: (hair: readonly string[]) => `Breaks less than assumed: ${hair.join(', ')}.`,
  },
  hair,
  nothingMoved: 'Each thing weighs about as was assumed.',
  shownOnly: 'It changes the chance that is shown, never how many strands are asked for. The strand decides.',
  isOff: 'What was assumed is shown now. “Learn again” takes it back.',
  saidAndSeen: 'Said, and what came',
  assumedAndSeen: 'Assumed, and what came',
  range: (from: string, to: string) => `${from}–${to}`,
  seen: (count: string, of: string, fits: 'fits' | 'more' | 'fewer' | null) =>
    fits === null ? `${count} of ${of}` : `${count} of ${of}, ${fits}`,
  rowInWords: (said: string, seen: string) => `Said ${said}: ${seen}.`,
  legend: 'Diamond: what was said. Dot: how many broke. Bar: where the true share lies, 19 times in 20.',
  /** Where there is nothing to show: why, in large, and what that means. */
  nothing: {
    taught: ['No strand has taught yet.', whatTeaches],
    reckoning: ['Being reckoned. Go on working.'],
    failed: ['Could not be reckoned.', 'What was assumed is shown instead. “Learn again” tries once more.'],
    demo: ['The demo teaches nothing.', whatTeaches],
  },
  backToAssumed: 'Back to what was assumed',
  learnAgain: 'Learn again',
};
