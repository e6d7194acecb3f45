import type { AnswersOf, Form } from '../form';

const touch = { kind: 'choice', options: ['dry', 'damp'] } as const;

/** What do fingers find, dry at nape, mid and ends, then on one wet strand with the curl pulled straight first? */
export const feelHairForm = {
  nape: touch,
  mid: touch,
  ends: touch,
  porosity: { kind: 'choice', options: ['low', 'normal', 'high', 'unknown'] },
  curl: { kind: 'choice', options: ['straight', 'sameAlong', 'lostAtEnds', 'unknown'] },
  breakage: { kind: 'choice', options: ['no', 'some', 'much', 'unknown'] },
  wetStretch: { kind: 'choice', options: ['springsBack', 'staysLong', 'snaps', 'unknown'] },
} as const satisfies Form;

export type FeelHairAnswers = AnswersOf<typeof feelHairForm>;
