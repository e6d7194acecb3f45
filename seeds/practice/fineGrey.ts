import type { LessonSeed } from './lessonSeed';
import { asksAll, clearTest, holds, usualClient, usualFeel, usualTools } from './usual';

/** Fine grey hair that she calls strong: nothing speaks against a soft colour on it, and she need not be refused. */
export const fineGrey: LessonSeed = {
  lesson: {
    id: 'fineGrey',
    title: 'Strong as wire',
    seat: { ticket: 'B.C.', chair: 6 },
    wants: 'Just a soft beige over the grey. It takes anything, it’s like wire.',
    truth: {
      client: {
        ...usualClient,
        service: 'depositOnly',
        targetLevel: '7',
        naturalLevel: '8',
        endsLevel: '8',
        greyPercent: '90',
        texture: 'fine',
      },
      hotTools: {
        ...usualTools,
        habits: [{ tool: 'hotBrush', wetness: 'dry', daysAWeek: '2', forMonths: '36', settingC: '150' }],
      },
      feelHair: usualFeel,
      skinTest: clearTest,
      glass: 'nothing',
    },
    says: {
      'client.texture': {
        first: { words: 'It springs up, so it looks coarse.', means: 'coarse' },
        closer: { words: 'One single hair between the fingers: hardly to be felt.', means: 'fine' },
      },
      'client.greyPercent': {
        first: { words: 'A bit of grey, a third maybe.', means: '30' },
        closer: { words: 'Under the top layer it is nearly all white.', means: '90' },
      },
    },
    flags: [
      {
        id: 'fineHair',
        asks: ['client.texture', 'client.greyPercent'],
        why: 'Grey: hair without pigment lost more tryptophan in ten minutes of heat than light-brown hair did in twelve. Fine: each hair has little to lose, a reason to test and not to refuse. Nothing told here speaks against a colour that only deposits.',
        mark: 'published: McMullen & Jachowicz, Thermal degradation of hair II, J. Cosmet. Sci. 49:245–256, 1998, pp. 248–249 · fine hair: common practice, no source',
      },
    ],
    strand: { seed: 24, zones: { lengths: holds, ends: holds } },
  },
  passes: { title: 'One hair is felt by itself, and she gets her beige', ...asksAll },
  fails: {
    title: 'Fine and grey is taken for too weak, and she is sent away',
    asksCloser: 'all',
    decides: 'weSayNo',
    because: 'decision',
  },
};
