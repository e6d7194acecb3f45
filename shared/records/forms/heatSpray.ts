import type { AnswersOf, Form } from '../form';

const styled = { question: 'finish', is: ['styled'] } as const;

/**
 * How is it finished today: no hot tool, or which spray with which tool and setting?
 * Ranges: ASSUMED, wide enough that only a slip of the finger lies outside: from hand-warm to past what tools are
 * sold for.
 */
export const heatSprayForm = {
  finish: { kind: 'choice', options: ['noHotTool', 'styled'], or: 'noHotTool', aside: true },
  spray: { kind: 'text', maxLength: 40, when: styled, aside: true },
  tool: {
    kind: 'choice',
    options: ['flatIron', 'curlingIron', 'hotBrush', 'dryer'],
    when: styled,
    aside: true,
  },
  settingC: {
    kind: 'number',
    field: { quantity: 'temperature', min: 40, max: 250 },
    when: styled,
    aside: true,
  },
} as const satisfies Form;

export type HeatSprayAnswers = AnswersOf<typeof heatSprayForm>;
