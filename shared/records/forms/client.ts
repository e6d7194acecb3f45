import type { AnswersOf, Form } from '../form';

/**
 * Ranges: ASSUMED, wide enough that only a slip of the finger lies outside. Levels from 1 to 10 are the trade's
 * depths (from memory: cosmetology textbooks), told to half a level: common practice, no source.
 */
const level = { quantity: 'level', min: 1, max: 10, step: 0.5 } as const;

/**
 * What does she want, and may anything go on this skin at all?
 * Absolute reactions: published, Reg. (EC) 1223/2009 Annex III label text, and Pang & Fiume,
 * Int. J. Toxicol. 20(S3):7–21, 2001 (hives, tight chest with persulfates). What tingled and stopped on rinsing is
 * `tingledStops` where the house reads "any reaction ever" strictly (forms/askedHere.ts), so that a log says for ever
 * under which reading it was told.
 */
export const clientForm = {
  service: { kind: 'choice', options: ['lighten', 'liftAndDeposit', 'depositOnly', 'gloss', 'tone'] },
  reach: { kind: 'choice', options: ['fullHead', 'roots', 'endsOut'] },
  targetLevel: { kind: 'number', field: level },
  naturalLevel: { kind: 'number', field: level, unknown: true },
  endsLevel: { kind: 'number', field: level, unknown: true },
  greyPercent: {
    kind: 'number',
    field: { quantity: 'percent', min: 0, max: 100 },
    unknown: true,
    or: 0,
    aside: true,
  },
  texture: { kind: 'choice', options: ['fine', 'medium', 'coarse', 'unknown'], or: 'medium', more: true },
  density: {
    kind: 'choice',
    options: ['thin', 'medium', 'thick', 'unknown'],
    or: 'medium',
    more: true,
    aside: true,
  },
  length: { kind: 'choice', options: ['ear', 'chin', 'collarbone', 'braLine', 'waist'] },
  lengthCm: {
    kind: 'number',
    field: { quantity: 'length', min: 1, max: 200 },
    unknown: true,
    or: 'unknown',
    more: true,
    aside: true,
  },
  reactions: {
    kind: 'choices',
    options: [
      'none',
      'tingled',
      'tingledStops',
      'swelling',
      'blisters',
      'weeping',
      'hives',
      'tightChest',
      'rash',
      'blackTattoo',
    ],
    none: 'none',
    aside: true,
    absolute: [
      'tingledStops',
      'swelling',
      'blisters',
      'weeping',
      'hives',
      'tightChest',
      'rash',
      'blackTattoo',
    ],
  },
  scalp: {
    kind: 'choice',
    options: ['sound', 'tight', 'irritated', 'broken', 'faceRash'],
    aside: true,
    absolute: ['irritated', 'broken', 'faceRash'],
  },
  ageBand: {
    kind: 'choice',
    options: ['over', 'under'],
    absolute: ['under'],
    aside: true,
    whenAgeLine: true,
  },
} as const satisfies Form;

export type ClientAnswers = AnswersOf<typeof clientForm>;
