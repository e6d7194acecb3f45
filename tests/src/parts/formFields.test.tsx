import { cleanup, fireEvent, render } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Form } from '../../../shared/records/form';
import type { RawForm } from '../../../shared/records/readForm';
import { defaultSettings } from '../../../shared/records/settings';
import { createDraft, listMistakes } from '../../../src/parts/form/draft';
import { FormFields } from '../../../src/parts/form/FormFields';
import { ASSUMED_HOLD_MS } from '../../../src/parts/hold';

afterEach(cleanup);

const row = {
  tool: { kind: 'choice', options: ['iron', 'dryer'] },
  settingC: { kind: 'number', field: { quantity: 'temperature', min: 40, max: 250 }, unknown: true },
} as const satisfies Form;

const form = {
  seen: { kind: 'choices', options: ['none', 'itch', 'hives'], none: 'none', absolute: ['hives'] },
  finish: { kind: 'choice', options: ['plain', 'styled'], or: 'plain' },
  heatC: {
    kind: 'number',
    field: { quantity: 'temperature', min: 40, max: 250 },
    when: { question: 'finish', is: ['styled'] },
  },
  grey: { kind: 'number', field: { quantity: 'percent', min: 0, max: 100 }, or: 0 },
  texture: { kind: 'choice', options: ['fine', 'coarse'], or: 'fine', more: true },
  age: { kind: 'choice', options: ['over', 'under'], whenAgeLine: true },
  tools: { kind: 'list', of: row, min: 0, max: 2 },
  back: { kind: 'time', tense: 'coming' },
} as const satisfies Form;

const options = (...names: readonly string[]) => Object.fromEntries(names.map((name) => [name, name]));
const words = {
  seen: { ask: 'Seen?', options: options('none', 'itch', 'hives') },
  finish: { ask: 'Finish?', options: options('plain', 'styled') },
  heatC: { ask: 'Heat?' },
  grey: { ask: 'Grey?' },
  texture: { ask: 'Texture?', options: options('fine', 'coarse') },
  age: { ask: 'Age?', options: options('over', 'under') },
  tools: {
    ask: 'Tools?',
    rows: { tool: { ask: 'Tool?', options: options('iron', 'dryer') }, settingC: { ask: 'Setting?' } },
    rowTitle: (number: string) => `Tool ${number}`,
    addRow: 'Add',
    removeRow: (number: string) => `Remove ${number}`,
    noRows: 'No tools',
  },
  back: { ask: 'Back?' },
};

const nowMs = Date.UTC(2026, 2, 3, 12);
const { units } = defaultSettings;

function show(initial: RawForm = {}, hasAgeLine = false) {
  const draft = createDraft(initial);
  const { container } = render(() => (
    <FormFields
      form={form}
      words={words}
      draft={draft}
      refusals={listMistakes(form, draft.raw(), { units, hasAgeLine, nowMs })}
      units={units}
      hasAgeLine={hasAgeLine}
      nowMs={nowMs}
    />
  ));
  const find = (selector: string): HTMLElement => {
    const element = container.querySelector<HTMLElement>(selector);
    if (element === null) throw new Error(`nothing at ${selector}`);
    return element;
  };
  const at = (path: string, option: string) => find(`[data-question="${path}"] [data-option="${option}"]`);
  const tap = (path: string, option: string) => fireEvent.click(at(path, option));
  const type = (path: string, text: string) => {
    const input = find(`[data-question="${path}"] :is(input, textarea)`) as HTMLInputElement;
    fireEvent.input(input, { target: { value: text } });
    return input;
  };
  const saidAt = (path: string) => find(`[data-question="${path}"] > .field-refusal`).textContent;
  return { draft, container, find, at, tap, type, saidAt };
}

describe('a number field', () => {
  it('says what is wrong now, not what was wrong before', () => {
    const { type, saidAt } = show({ finish: 'styled' });
    type('heatC', '1e309');
    type('heatC', '40');
    expect(saidAt('heatC')).toContain('Too low.');
    type('heatC', 'abc');
    expect(saidAt('heatC')).toContain('That is not a number.');
  });

  it.each([
    ['', 'A number from 104 °F to 482 °F.'],
    ['abc', 'That is not a number. 104 °F to 482 °F, digits only.'],
    ['1e309', 'That is no number anybody can measure. 104 °F to 482 °F.'],
    ['-0', 'Minus zero is not a number here. 104 °F to 482 °F.'],
    ['NaN', 'That is not a number. 104 °F to 482 °F, digits only.'],
    ['40', 'Too low. 104 °F to 482 °F.'],
    ['9000', 'Too high. 104 °F to 482 °F.'],
    ['400 °F', 'That is not a number. 104 °F to 482 °F, digits only.'],
  ])('says what is wrong with %j and keeps it as it was typed', (typed, said) => {
    const { draft, type, saidAt } = show({ finish: 'styled' });
    type('heatC', '400');
    const input = type('heatC', typed);
    expect(saidAt('heatC')?.replaceAll('\u00a0', ' ')).toBe(said);
    expect(input.value).toBe(typed);
    expect(input.getAttribute('aria-invalid')).toBe('true');
    expect(draft.raw().heatC).toBe(typed);
  });

  it('says nothing of a figure that is right, and marks the same figure among those offered', () => {
    const { type, saidAt, at } = show({ tools: [{}] });
    type('tools.0.settingC', '400');
    expect(saidAt('tools.0.settingC')).toBe('');
    expect(at('tools.0.settingC', '400').getAttribute('aria-pressed')).toBe('true');
  });

  it('says nothing before it was touched, and shows its default', () => {
    const { find, saidAt } = show({ finish: 'styled' });
    expect(saidAt('heatC')).toBe('');
    expect((find('[data-question="grey"] input') as HTMLInputElement).value).toBe('0');
  });

  it('takes "don’t know" where that is an answer, and gives it back', () => {
    const { draft, tap } = show({ tools: [{}] });
    tap('tools.0.settingC', 'unknown');
    expect(draft.raw().tools).toEqual([{ settingC: 'unknown' }]);
    tap('tools.0.settingC', 'unknown');
    expect(draft.raw().tools).toEqual([{ settingC: undefined }]);
  });
});

describe('answers to choose from', () => {
  it('show the default as chosen', () => {
    expect(show().at('finish', 'plain').getAttribute('aria-pressed')).toBe('true');
  });

  it('let "none" exclude every other, and every other "none"', () => {
    const { draft, tap } = show();
    tap('seen', 'itch');
    tap('seen', 'none');
    expect(draft.raw().seen).toEqual(['none']);
    tap('seen', 'itch');
    expect(draft.raw().seen).toEqual(['itch']);
    tap('seen', 'itch');
    expect(draft.raw().seen).toBeUndefined();
  });

  it('take what stops everything only when it is held', () => {
    vi.useFakeTimers();
    const { draft, at } = show();
    fireEvent.click(at('seen', 'hives'));
    expect(draft.raw().seen).toBeUndefined();
    fireEvent.pointerDown(at('seen', 'hives'));
    vi.advanceTimersByTime(ASSUMED_HOLD_MS);
    expect(draft.raw().seen).toEqual(['hives']);
    vi.useRealTimers();
  });
});

describe('a question', () => {
  it('that depends on another comes and goes with it', () => {
    const { container, tap } = show();
    expect(container.querySelector('[data-question=heatC]')).toBeNull();
    tap('finish', 'styled');
    expect(container.querySelector('[data-question=heatC]')).not.toBeNull();
    tap('finish', 'plain');
    expect(container.querySelector('[data-question=heatC]')).toBeNull();
  });

  it('about age is asked where the local rules draw a line', () => {
    expect(show().container.querySelector('[data-question=age]')).toBeNull();
    expect(show({}, true).container.querySelector('[data-question=age]')).not.toBeNull();
  });

  it('that is rarely asked stands behind "more"', () => {
    const { container, find } = show();
    expect(container.querySelector('[data-question=texture]')).toBeNull();
    fireEvent.click(find('[data-act=more]'));
    expect(container.querySelector('[data-question=texture]')).not.toBeNull();
  });

  it('behind "more" shows itself when it is refused', () => {
    expect(show({ texture: 'green' }).saidAt('texture')).toBe('That is not one of the answers.');
  });
});

describe('a list', () => {
  it('is unanswered until somebody says that there is none', () => {
    const { draft, tap } = show();
    expect(draft.raw().tools).toBeUndefined();
    tap('tools', 'none');
    expect(draft.raw().tools).toEqual([]);
  });

  it('takes rows in and out, and keeps what was typed in the others', () => {
    const { draft, container, find, tap, type } = show();
    fireEvent.click(find('[data-act=add-row]'));
    fireEvent.click(find('[data-act=add-row]'));
    expect(container.querySelector('[data-act=add-row]')).toBeNull();
    tap('tools.0.tool', 'dryer');
    tap('tools.1.tool', 'iron');
    type('tools.1.settingC', '9999');
    fireEvent.click(find('[data-row="0"] [data-act=remove-row]'));
    expect(draft.raw().tools).toEqual([{ tool: 'iron', settingC: '9999' }]);
    expect((find('[data-question="tools.0.settingC"] input') as HTMLInputElement).value).toBe('9999');
    fireEvent.click(find('[data-row="0"] [data-act=remove-row]'));
    expect(draft.raw().tools).toBeUndefined();
  });
});

describe('a moment', () => {
  it('is one tap away, or typed, and is said back', () => {
    const { draft, tap, type, find } = show();
    tap('back', '2d');
    expect(draft.raw().back).toBe(nowMs + 2 * 86_400_000);
    expect(find('.time-said').textContent).toBe('Thursday, March 5, 08:30');
    type('back', '2026-03-06T14:00');
    expect(draft.raw().back).toBe(Date.UTC(2026, 2, 6, 17, 30));
    type('back', '');
    expect(draft.raw().back).toBeUndefined();
  });

  it('that has passed is refused where one to come is asked', () => {
    const { type, saidAt } = show();
    type('back', '2026-03-01T14:00');
    expect(saidAt('back')).toBe('That has passed. Choose a time to come.');
  });
});
