import { LEGAL_CEILING_PERCENT } from '../../chemistry/peroxide';
import type { AnswersOf, Form } from '../form';
import { shelfForm } from './shelf';

const services = ['lighten', 'liftAndDeposit', 'depositOnly', 'gloss', 'tone'] as const;

/**
 * How is this salon set up? The questions behind `settingsSchema`, with its limits or narrower ones: a value these fields
 * take, the schema takes too, and their marks stand there. Altitude is in metres; a station that speaks of inches asks it
 * in feet. Ranges: ASSUMED, wide enough that only a slip of the finger lies outside.
 * Checked in tests/src/screens/settings/settingsDraft.test.tsx.
 */
export const settingsForm = {
  locale: { kind: 'choice', options: ['en', 'es'] },
  temperature: { kind: 'choice', options: ['C', 'F'] },
  mass: { kind: 'choice', options: ['g', 'oz'] },
  length: { kind: 'choice', options: ['cm', 'in'] },
  altitude: { kind: 'number', field: { quantity: 'count', min: -430, max: 5500 } },
  scaleStepG: { kind: 'choice', options: ['0.1', '0.5', '1'] },
  chairs: { kind: 'number', field: { quantity: 'count', min: 1, max: 30, step: 1 } },
  staff: { kind: 'list', of: { name: { kind: 'text', maxLength: 20 } }, min: 0, max: 30 },
  figuresByStylist: { kind: 'choice', options: ['no', 'yes'] },
  shelf: {
    kind: 'list',
    of: shelfForm,
    min: 0,
    max: 60,
  },
  carried: { kind: 'choice', options: ['no', 'yes'] },
  spoken: { kind: 'choice', options: ['no', 'yes'] },
  contact: { kind: 'text', maxLength: 40, or: '' },
  keeps: { kind: 'choice', options: ['months', 'noEnd'] },
  keepMonths: {
    kind: 'number',
    field: { quantity: 'count', min: 1, max: 600, step: 1 },
    when: { question: 'keeps', is: ['months'] },
  },
  erasesByItself: {
    kind: 'choice',
    options: ['no', 'yes'],
    when: { question: 'keeps', is: ['months'] },
  },
  hasAgeLine: { kind: 'choice', options: ['yes', 'no'] },
  ageLine: {
    kind: 'number',
    field: { quantity: 'count', min: 10, max: 21, step: 1 },
    when: { question: 'hasAgeLine', is: ['yes'] },
  },
  skinTestWaitH: { kind: 'number', field: { quantity: 'count', min: 0.5, max: 96 } },
  skinTestLapsesDays: { kind: 'number', field: { quantity: 'count', min: 1, max: 365 } },
  ceilingPercent: {
    kind: 'number',
    field: { quantity: 'percent', min: 1.5, max: LEGAL_CEILING_PERCENT },
  },
  isAnyReactionAbsolute: { kind: 'choice', options: ['no', 'yes'] },
  skinTestFor: { kind: 'choices', options: ['never', ...services], none: 'never' },
} as const satisfies Form;

export type SettingsAnswers = AnswersOf<typeof settingsForm>;
