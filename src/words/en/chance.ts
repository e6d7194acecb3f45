import type { CovariateName } from '../../../shared/judgement/chance/covariates';
import type { ChanceWord } from '../../../shared/judgement/chance/estimate';
import { sayCount } from './sayCount';

/** What bears on the chance, short enough for one line. */
const reasons: Readonly<Record<CovariateName, string>> = {
  helixLost: 'heat and bleach on what carries the hair',
  tryptophanLost: 'the marks of heat in it',
  ironedWet: 'ironed wet or damp, or not known',
  scorched: 'it smoked or smelt burnt, or not known',
  bleaches: 'how often it was bleached, or not known',
  curlLost: 'the curl at the ends, gone or not known',
  slowStretch: 'how it came back wet, or not known',
  porous: 'high porosity, or not known',
  breakage: 'it breaks already, or not known',
  veryHot: 'a very hot setting, or not known',
  smoothing: 'a keratin service, or not known',
  relaxer: 'a relaxer or perm, or not known',
  strangeColour: 'metal salts or a colour nobody knows',
};

/** Said of an estimate, never of a strand. */
const words: Readonly<Record<ChanceWord, string>> = { low: 'Low', raised: 'Raised', high: 'High' };

export const chance = {
  title: 'Chance that strands like this break',
  why: 'Why this chance?',
  reasons,
  /** The word first, the figures behind “Why?”. */
  line: (word: ChanceWord) => `${words[word]} chance that strands like this break.`,
  /** Where what makes hair suspect sets the care, and not the chance. */
  bySigns: (risk: ChanceWord) => `${words[risk]} risk: its signs set the care.`,
  /** Where it is not the signs: nothing that is asked for goes by what strands taught. */
  byAssumed: (risk: ChanceWord) => `${words[risk]} risk as assumed: that sets the care.`,
  byStrands: (word: ChanceWord) => `${words[word]} chance by our own strands: take more care.`,
  strandsSay: (word: ChanceWord) =>
    `${words[word]} by our own strands. How it is tested still goes by its signs and by what is assumed.`,
  basedOn: (strands: string, assumed: string) =>
    `Based on ${sayCount(strands, 'strand')} of this station. Assumed before them: about ${assumed}.`,
  noStrandsYet: 'Assumed: no strands of this station have taught yet.',
  notLearnt: 'As assumed: what our strands taught is not used now.',
  signsAskMore: (word: ChanceWord) =>
    `${words[word]} by itself. The signs ask for more care, so they set how it is tested.`,
  odds: (middle: string, low: string, high: string) => `About ${middle}, from ${low} to ${high}.`,
  weighMost: 'What weighs most in it',
  /** After a reason that went further than any figure that was measured. */
  beyond: 'beyond what was measured: counted as the most that was',
  nothing: 'Nothing told or felt adds to it.',
  assumed:
    'What each of these weighs is assumed, not measured: no published figure tells how likely hair breaks.',
  moved: 'What each of these weighs was assumed first; our own strands have moved it since.',
  decides: 'An estimate. The strand decides.',
};
