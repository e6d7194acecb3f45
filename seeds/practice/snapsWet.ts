import type { LessonSeed } from './lessonSeed';
import {
  asksAll,
  clearTest,
  goes,
  holds,
  usualClient,
  usualFeel,
  usualTools,
  wetUnderThePlate,
} from './usual';

/** Dry it feels thick; wet it snaps. */
export const snapsWet: LessonSeed = {
  lesson: {
    id: 'snapsWet',
    title: 'Thick and heavy',
    seat: { ticket: 'M.N.', chair: 3 },
    wants: 'It can take it, feel how thick it is. Light blond by Saturday.',
    truth: {
      client: { ...usualClient, targetLevel: '9', density: 'thick', texture: 'coarse' },
      hotTools: {
        ...usualTools,
        habits: [{ tool: 'curlingIron', wetness: 'damp', daysAWeek: '5', forMonths: '36', settingC: '210' }],
      },
      feelHair: { ...usualFeel, porosity: 'high', breakage: 'some', wetStretch: 'snaps' },
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'feelHair.wetStretch': {
        first: { words: 'Dry, a strand pulls firm. That says nothing: feel again, wet.', means: null },
        closer: { words: 'Wet and pulled lightly, it gives way and is in two pieces.', means: 'snaps' },
      },
      'feelHair.breakage': {
        first: { words: 'Smooth to the hand.', means: 'no' },
        closer: { words: 'Short ends stand off all over, none of them new.', means: 'some' },
      },
    },
    flags: [
      {
        id: 'judgement.snapsWhenWet',
        asks: ['feelHair.wetStretch'],
        why: 'Wet hair broke when stretched by 51 % on average where it was measured; hair that snaps on a light pull is far from that. Not today: a cut and no heat, and a strand of it again in some weeks.',
        mark: 'published: J. Soc. Cosmet. Chem. 17:769–787, 1966, Table I · a light pull: common practice, no source · where she goes next: common practice, no source',
      },
      {
        id: 'ironedWet',
        asks: ['hotTools.habits'],
        ...wetUnderThePlate,
      },
      {
        id: 'slowStretch',
        asks: ['feelHair.wetStretch'],
        why: 'It does not come back when wet: the nearest to a strand test that there is before one.',
        mark: 'common practice, no source',
      },
      {
        id: 'breakage',
        asks: ['feelHair.breakage'],
        why: 'Short ends that are no new growth: it breaks already, without any mix on it.',
        mark: 'common practice, no source',
      },
      {
        id: 'veryHot',
        asks: ['hotTools.habits'],
        why: 'Above 400 °F (204 °C) the cortex softens.',
        mark: 'common practice, no source',
      },
    ],
    strand: { seed: 29, zones: { lengths: holds, ends: goes } },
  },
  passes: { title: 'A strand is wetted before it is pulled', ...asksAll },
  fails: {
    title: 'It snapped wet, and is answered for because she wants it so',
    ...asksAll,
    liftsStops: true,
    because: 'stopSigned',
  },
};
