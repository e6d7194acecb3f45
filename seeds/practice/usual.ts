import type { RawForm } from '../../shared/records/readForm';
import type { LessonStory } from './lessonSeed';

/** What is true of a practice client where her lesson says nothing else. Numbers in °C and cm. Nobody in it is real. */
export const usualClient: RawForm = {
  service: 'lighten',
  reach: 'fullHead',
  targetLevel: '8',
  naturalLevel: '6',
  endsLevel: '6',
  greyPercent: '0',
  texture: 'medium',
  density: 'medium',
  length: 'collarbone',
  reactions: ['none'],
  scalp: 'sound',
  ageBand: 'over',
};

/** A row of the hot tools: now and then, dry and not very hot. */
export const seldomIroned: RawForm = {
  tool: 'flatIron',
  wetness: 'dry',
  daysAWeek: '1',
  forMonths: '12',
  settingC: '160',
};

export const usualTools: RawForm = { habits: [seldomIroned], smoke: 'no', history: ['none'] };

export const usualFeel: RawForm = {
  nape: 'dry',
  mid: 'dry',
  ends: 'dry',
  porosity: 'normal',
  curl: 'sameAlong',
  breakage: 'no',
  wetStretch: 'springsBack',
};

/** Put on two days ago and more, and nothing to be seen. The hours: ASSUMED, past the wait of a new station, and far from lapsing. */
export const clearTest = { hoursAgo: 54, seen: 'nothing' } as const;

/**
 * This zone's strand holds in the usual mix, or goes in it, whatever is drawn. Where her history speaks against it, it holds by
 * luck and comes off rough: nothing is ever better for its damage. Both chances: ASSUMED, so near to never and always that no
 * draw turns them round.
 */
export const holds = { chance: 0.02 } as const;
export const goes = { chance: 0.97 } as const;

/** Who asks closer whatever was answered quickly, and does as the strand and the table say. */
export const asksAll: Pick<LessonStory, 'asksCloser' | 'decides'> = {
  asksCloser: 'all',
  decides: 'asSuggested',
};
/** Who takes the first answer to every question. */
export const asksNothing: Pick<LessonStory, 'asksCloser' | 'decides'> = {
  asksCloser: [],
  decides: 'asSuggested',
};

/** Of hair that is ironed wet or damp: the nearest figure there is. */
export const wetUnderThePlate = {
  why: 'Ironed after a water-based spray hair lost 23.5 % of its break stress, after an ethanol-based one 11.8 %. Wet against dry was not measured: it is the nearest figure there is. Damp counts as wet.',
  mark: 'published: Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III · damp: common practice, no source',
} as const;
