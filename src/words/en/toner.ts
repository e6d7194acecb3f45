import type { stretchForm, tonerForm } from '../../../shared/records/forms/bowl';
import type { FormWords } from '../formWords';
import { correctionWords } from './forms/correction';
import { pullHint, stretchTaps } from './forms/stretch';
import { mix } from './mix';

const { heat: _heat, ...bowl } = mix.bowl;

export const toner = {
  bowl: bowl satisfies FormWords<typeof tonerForm>,
  felt: {
    by: { ask: 'Who takes it back?' },
    code: {
      ask: 'How did that come?',
      options: { wrongTap: 'A wrong tap', otherZone: 'It was another zone' },
    },
    words: correctionWords.words,
    stretch: { ask: 'Lightly pulled, let go', short: 'Wet stretch', hint: pullHint, options: stretchTaps },
  } satisfies Omit<FormWords<typeof stretchForm>, 'zone' | 'before'> & {
    readonly by: { readonly ask: string };
  },
  /** What stands in the first part before anybody types a shade. */
  shade: 'Toner',
  feelSummary: 'Wet, after the rinse',
  feelFor: (zone: string) => `Toner? Feel the ${zone}`,
  mixFor: (zone: string) => `Mix a toner: ${zone}`,
  feelTitle: (zone: string) => `Feel the ${zone}, rinsed and wet`,
  noToner: 'No toner stands on the shelf, or a strand was in each of them today. The shelf is in Settings.',
  slowWaits: 'Only hair that springs back takes a toner today.',
  brokeOnHead: 'It broke with colour on',
  brokeWaits: 'No toner on it, and no second round today. Another visit, with a new strand.',
  noneToday: 'No toner today',
  toldWrongly: 'It was told wrongly',
  keep: 'That is how it feels',
  title: (zone: string) => `Toner for the ${zone}`,
  feelAgain: 'Feel again',
  limits: (developer: string, minutes: string) =>
    `Deposit only: no stronger than ${developer}, at most ${minutes}, no heat. The maker’s directions come first.`,
};
