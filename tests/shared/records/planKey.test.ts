import { describe, expect, it } from 'vitest';
import type { Form, Question } from '../../../shared/records/form';
import { type Answers, askForms } from '../../../shared/records/forms/asked';
import { formHistoryKey, formPlanKey, readPlanned } from '../../../shared/records/planKey';
import { askSteps } from '../../../shared/records/steps';
import { tell, until } from './telling';

const { answers } = tell(until('STRAND_STARTED')).record;
const changed = (step: string, name: string, answer: unknown): Answers =>
  ({ ...answers, [step]: { ...answers[step as keyof Answers], [name]: answer } }) as Answers;

/** Some other answer to the same question. */
function answerElse(question: Question, given: unknown): unknown {
  switch (question.kind) {
    case 'choice':
      return question.options.find((option) => option !== given);
    case 'choices':
      return question.options.filter((option) => option !== question.none).slice(0, 1);
    case 'number':
      return given === question.field.max ? question.field.min : question.field.max;
    case 'text':
      return `${given} else`;
    case 'time':
      return Number(given) + 1;
    case 'list':
      return [];
  }
}

describe('what a strand stands for', () => {
  it('is the same for the same answers, in whatever order they were given', () => {
    const turned = Object.fromEntries(
      [...askSteps]
        .reverse()
        .map((step) => [step, Object.fromEntries(Object.entries(answers[step] ?? {}).reverse())]),
    ) as Answers;
    expect(JSON.stringify(turned)).not.toBe(JSON.stringify(answers));
    expect(formPlanKey(turned)).toBe(formPlanKey(answers));
    expect(formPlanKey(JSON.parse(JSON.stringify(answers)))).toBe(formPlanKey(answers));
  });

  it('changes with each answer that bears on the plan, and with none that does not', () => {
    const keys = new Set([formPlanKey(answers)]);
    let bearing = 0;
    for (const step of askSteps) {
      for (const [name, question] of Object.entries(askForms[step] as Form)) {
        const given = (answers[step] as Record<string, unknown>)[name];
        const key = formPlanKey(changed(step, name, answerElse(question, given)));
        if (question.aside === true) expect(key, name).toBe(formPlanKey(answers));
        else {
          expect(keys.has(key), `${step}.${name}`).toBe(false);
          bearing += 1;
        }
        keys.add(key);
      }
    }
    expect(keys.size).toBe(bearing + 1);
    expect(bearing).toBe(21);
  });

  it('knows a step not said from one said, and one habit from two', () => {
    const { heatSpray: _left, ...rest } = answers;
    expect(formPlanKey(rest)).not.toBe(formPlanKey(answers));
    expect(formPlanKey({})).not.toBe(formPlanKey(rest));
    const [habit] = answers.hotTools?.habits ?? [];
    const twice = changed('hotTools', 'habits', [habit, habit]);
    expect(formPlanKey(twice)).not.toBe(formPlanKey(answers));
  });
});

describe('what an incompatibility test was made for', () => {
  it('is what on the hair asks for it, in whatever order, and nothing else', () => {
    const one = changed('hotTools', 'history', ['henna', 'metallicColour']);
    const other = changed('hotTools', 'history', ['gloss', 'metallicColour', 'henna']);
    expect(formHistoryKey(one)).toBe(formHistoryKey(other));
    expect(formHistoryKey(changed('client', 'targetLevel', 9))).toBe(formHistoryKey(answers));
    expect(formHistoryKey(one)).not.toBe(formHistoryKey(changed('hotTools', 'history', ['henna'])));
    expect(formHistoryKey({})).toBe(formHistoryKey(changed('hotTools', 'history', [])));
  });
});

it('a plan key still says for which service and to which level it was formed', () => {
  const { service, targetLevel } = answers.client ?? {};
  expect(service).toBeDefined();
  expect(readPlanned(formPlanKey(answers))).toEqual({ service, targetLevel });
  expect(readPlanned(formPlanKey(changed('client', 'targetLevel', 4))).targetLevel).toBe(4);
  expect(readPlanned(formPlanKey(changed('client', 'service', 'tone'))).service).toBe('tone');
  expect(readPlanned(formPlanKey({}))).toEqual({});
});
