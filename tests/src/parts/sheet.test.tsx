import { cleanup, fireEvent, render } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Form } from '../../../shared/records/form';
import type { RawForm } from '../../../shared/records/readForm';
import { defaultSettings } from '../../../shared/records/settings';
import { createDraft, listMistakes } from '../../../src/parts/form/draft';
import { Sheet } from '../../../src/parts/form/Sheet';
import { ASSUMED_HOLD_MS } from '../../../src/parts/hold';
import { MayWriteProvider } from '../../../src/parts/useMayWrite';

afterEach(cleanup);

const row = {
  tool: { kind: 'choice', options: ['iron', 'dryer'] },
  daysAWeek: { kind: 'number', field: { quantity: 'count', min: 0.25, max: 7 }, unknown: true },
  width: { kind: 'number', field: { quantity: 'length', min: 1, max: 9 }, or: 5.08, more: true },
} as const satisfies Form;

const form = {
  finish: { kind: 'choice', options: ['plain', 'styled'] },
  settingC: {
    kind: 'number',
    field: { quantity: 'temperature', min: 40, max: 250 },
    when: { question: 'finish', is: ['styled'] },
  },
  texture: { kind: 'choice', options: ['fine', 'coarse'], or: 'fine', more: true },
  seen: { kind: 'choices', options: ['none', 'itch', 'hives'], none: 'none', absolute: ['hives'] },
  tools: { kind: 'list', of: row, min: 0, max: 2 },
  depth: { kind: 'number', field: { quantity: 'level', min: 1, max: 10, step: 0.5 }, unknown: true },
  spray: { kind: 'text', maxLength: 8 },
  back: { kind: 'time', tense: 'coming' },
} as const satisfies Form;

const options = (...names: readonly string[]) => Object.fromEntries(names.map((name) => [name, name]));
const words = {
  finish: { ask: 'Finish?', options: options('plain', 'styled') },
  settingC: { ask: 'Heat?' },
  texture: { ask: 'Texture?', options: options('fine', 'coarse') },
  seen: { ask: 'Seen?', options: options('none', 'itch', 'hives') },
  tools: {
    ask: 'Tools?',
    askAnother: 'Another?',
    rows: {
      tool: { ask: 'Tool?', options: options('iron', 'dryer') },
      daysAWeek: { ask: 'Days?', told: (figure: string) => `${figure} days a week` },
      width: { ask: 'Width?' },
    },
    noRows: 'No tools',
  },
  depth: { ask: 'Depth?' },
  spray: { ask: 'Spray?' },
  back: { ask: 'Back?' },
};
const nowMs = Date.UTC(2026, 2, 3, 12);
const { units } = defaultSettings;
const allSaid: RawForm = {
  finish: 'plain',
  seen: ['none'],
  tools: [],
  depth: '7',
  spray: 'Mist',
  back: nowMs + 1_000_000,
};

function show(initial: RawForm = {}, mayWrite = true) {
  const draft = createDraft(initial);
  const { container } = render(() => (
    <MayWriteProvider value={() => mayWrite}>
      <Sheet
        form={form}
        words={words}
        draft={draft}
        refusals={listMistakes(form, draft.raw(), { units, hasAgeLine: false, nowMs })}
        units={units}
        hasAgeLine={false}
        nowMs={nowMs}
        picks={{ spray: ['Mist', 'Fog'] }}
        summary="In all"
      >
        <p data-all="yes">All said</p>
      </Sheet>
    </MayWriteProvider>
  ));
  const look = (selector: string) => container.querySelector<HTMLElement>(selector);
  const find = (selector: string): HTMLElement => {
    const element = look(selector);
    if (element === null) throw new Error(`nothing at ${selector}`);
    return element;
  };
  const tap = (option: string) => fireEvent.click(find(`.sheet-question [data-option="${option}"]`));
  const act = (name: string) => fireEvent.click(find(`[data-act="${name}"]`));
  const goTo = (path: string) => fireEvent.click(find(`[data-ledger="${path}"]`));
  const asked = () => look('[data-question]')?.dataset.question ?? null;
  const line = (path: string) =>
    find(`[data-ledger="${path}"] .ledger-value`).textContent?.replaceAll('\u00a0', ' ').trim();
  const input = () => find('.sheet-question :is(input, textarea)') as HTMLInputElement;
  const type = (text: string) => fireEvent.input(input(), { target: { value: text } });
  return { draft, container, look, find, tap, act, goTo, asked, line, input, type };
}

describe('a sheet', () => {
  it('asks one question, and a tap answers it and goes on to the next', () => {
    const { tap, asked, container } = show();
    expect(asked()).toBe('finish');
    expect(container.querySelectorAll('[data-question]')).toHaveLength(1);
    tap('styled');
    expect(asked()).toBe('settingC');
    tap('400');
    expect(asked()).toBe('seen');
  });

  it('goes on to what nobody has answered, round again, and sums up once all is said', () => {
    const { tap, goTo, asked, look } = show({ ...allSaid, finish: undefined, depth: undefined });
    goTo('depth');
    tap('8');
    expect(asked()).toBe('finish');
    expect(look('[data-all]')).toBeNull();
    tap('plain');
    expect(asked()).toBeNull();
    expect(look('[data-all]')).not.toBeNull();
  });

  it('begins where she was left, and with the summary where nothing is left', () => {
    expect(show({ finish: 'plain' }).asked()).toBe('seen');
    cleanup();
    expect(show(allSaid).asked()).toBeNull();
  });

  it('lists every question with its answer, what is usual quietly, and goes to any of them', () => {
    const { goTo, asked, line, find } = show(allSaid);
    expect(line('finish')).toBe('plain');
    expect(line('texture')).toBe('fine (usual)');
    expect(find('[data-ledger=texture]').dataset.state).toBe('usual');
    expect(line('tools')).toBe('No tools');
    goTo('texture');
    expect(asked()).toBe('texture');
    goTo('summary');
    expect(asked()).toBeNull();
  });

  it('takes the eyes and the keys to the next question, not to the first of a fresh page', () => {
    const { tap } = show();
    expect(document.activeElement).toBe(document.body);
    tap('plain');
    expect(document.activeElement?.textContent).toBe('Seen?');
  });

  it('stays put where this window only watches: lines may be read, nothing may be answered', () => {
    const { goTo, asked, find } = show({}, false);
    expect((find('.sheet-main') as HTMLFieldSetElement).disabled).toBe(true);
    goTo('depth');
    expect(asked()).toBe('depth');
  });
});

describe('several answers', () => {
  it('"none" answers alone and goes on; any other waits for "that is all"', () => {
    const first = show({ finish: 'plain' });
    first.tap('none');
    expect(first.draft.raw().seen).toEqual(['none']);
    expect(first.asked()).toBe('tools');
    first.goTo('seen');
    first.tap('itch');
    expect(first.draft.raw().seen).toEqual(['itch']);
    expect(first.asked()).toBe('seen');
    first.tap('itch');
    expect(first.draft.raw().seen).toBeUndefined();
    expect((first.find('[data-act=that-is-all]') as HTMLButtonElement).disabled).toBe(true);
    first.tap('itch');
    first.act('that-is-all');
    expect(first.asked()).toBe('tools');
  });

  it('what stops everything stands apart and is held', () => {
    vi.useFakeTimers();
    const { draft, find } = show({ finish: 'plain' });
    const hives = find('.stops [data-option=hives]');
    fireEvent.click(hives);
    expect(draft.raw().seen).toBeUndefined();
    fireEvent.pointerDown(hives);
    vi.advanceTimersByTime(ASSUMED_HOLD_MS);
    expect(draft.raw().seen).toEqual(['hives']);
    vi.useRealTimers();
  });
});

describe('a list on a sheet', () => {
  const before = { finish: 'plain', seen: ['none'] };

  it('begins a row by the thing itself, asks its questions and then for another', () => {
    const { draft, tap, act, asked, find } = show(before);
    tap('iron');
    expect(asked()).toBe('tools.0.daysAWeek');
    expect(find('.sheet-ask').textContent).toBe('iron · Days?');
    tap('3');
    expect(asked()).toBe('tools');
    expect(find('.sheet-ask').textContent).toBe('Another?');
    expect(find('[data-row="0"] .sheet-row-said').textContent).toBe('iron · 3 days a week');
    act('that-is-all');
    expect(asked()).toBe('depth');
    expect(draft.raw().tools).toEqual([{ tool: 'iron', daysAWeek: '3' }]);
  });

  it('says that there is none in one tap', () => {
    const { draft, tap, asked } = show(before);
    tap('none');
    expect(draft.raw().tools).toEqual([]);
    expect(asked()).toBe('depth');
  });

  it('takes a row out, and puts it back where it was', () => {
    const { draft, find, act, goTo } = show({
      ...before,
      tools: [
        { tool: 'iron', daysAWeek: '3' },
        { tool: 'dryer', daysAWeek: '7' },
      ],
    });
    goTo('tools');
    fireEvent.click(find('[data-row="0"] [data-act=remove-row]'));
    expect(draft.raw().tools).toEqual([{ tool: 'dryer', daysAWeek: '7' }]);
    act('put-back-row');
    expect(draft.raw().tools).toEqual([
      { tool: 'iron', daysAWeek: '3' },
      { tool: 'dryer', daysAWeek: '7' },
    ]);
  });

  it('has lines for the row that is asked, rare questions among them, and for no other', () => {
    const { goTo, look, find } = show({ ...before, tools: [{ tool: 'iron' }, { tool: 'dryer' }] });
    goTo('tools');
    expect(look('.ledger [data-ledger="tools.1.width"]')).toBeNull();
    fireEvent.click(find('[data-row="1"] [data-ledger]'));
    expect(look('.ledger [data-ledger="tools.1.width"]')).not.toBeNull();
    expect(look('.ledger [data-ledger="tools.0.width"]')).toBeNull();
  });
});

describe('a figure on a sheet', () => {
  const before = { finish: 'styled' };

  it('that is none of the usual ones is typed on the pad, and done when it reads', () => {
    const { draft, act, find, asked } = show(before);
    act('another-number');
    for (const key of ['3', '6', '5']) fireEvent.click(find(`[data-key="${key}"]`));
    expect(draft.raw().settingC).toBe('365');
    fireEvent.click(find('[data-key="back"]'));
    expect(draft.raw().settingC).toBe('36');
    expect((find('[data-act=pad-done]') as HTMLButtonElement).disabled).toBe(true);
    fireEvent.click(find('[data-key="clear"]'));
    for (const key of ['3', '6', '5']) fireEvent.click(find(`[data-key="${key}"]`));
    act('pad-done');
    expect(asked()).toBe('seen');
  });

  it.each(['1.2.3', '1..2', '.1.'])(
    'with a second decimal mark, %s, stays as it was tapped and is no number',
    (keys) => {
      const { draft, act, find, look, asked } = show(before);
      act('another-number');
      for (const key of keys) fireEvent.click(find(`[data-key="${key}"]`));
      expect(draft.raw().settingC).toBe(keys);
      expect((find('.typing input') as HTMLInputElement).value).toBe(keys);
      expect(look('.field-refusal')?.textContent?.replaceAll('\u00a0', ' ')).toBe(
        'That is not a number. 104 °F to 482 °F, digits only.',
      );
      expect((find('[data-act=pad-done]') as HTMLButtonElement).disabled).toBe(true);
      act('pad-done');
      expect(asked()).toBe('settingC');
    },
  );

  it.each([
    ['1e309', 'That is no number anybody can measure. 104 °F to 482 °F.'],
    ['-0', 'Minus zero is not a number here. 104 °F to 482 °F.'],
    ['abc', 'That is not a number. 104 °F to 482 °F, digits only.'],
    ['9000', 'Too high. 104 °F to 482 °F.'],
  ])('says what is wrong with %j, keeps it, and forgets the refusal at the next input', (typed, said) => {
    const { act, type, input, find, asked } = show(before);
    act('another-number');
    type(typed);
    const refusal = () => find('.field-refusal').textContent?.replaceAll('\u00a0', ' ');
    expect(refusal()).toBe(said);
    expect(input().value).toBe(typed);
    fireEvent.keyDown(input(), { key: 'Enter' });
    expect(asked()).toBe('settingC');
    type('350,5');
    expect(refusal()).toBe('');
    fireEvent.keyDown(input(), { key: 'Enter' });
    expect(asked()).toBe('seen');
  });

  it('that is opened over a chosen one begins anew at the first key, and goes on from there', () => {
    const { goTo, draft, find, input } = show({ ...before, settingC: '365' });
    goTo('settingC');
    expect(input().value).toBe('365');
    for (const key of ['3', '6']) fireEvent.click(find(`[data-key="${key}"]`));
    expect(draft.raw().settingC).toBe('36');
  });

  it('that is opened over a chosen one loses its last digit to the key that takes one away', () => {
    const { goTo, draft, find } = show({ ...before, settingC: '365' });
    goTo('settingC');
    for (const key of ['back', '0']) fireEvent.click(find(`[data-key="${key}"]`));
    expect(draft.raw().settingC).toBe('360');
  });

  it('may be begun on a keyboard wherever the focus is', () => {
    const { draft, find, input } = show(before);
    fireEvent.keyDown(find('.sheet-question .sheet-tile'), { key: '3' });
    expect(draft.raw().settingC).toBe('3');
    expect(document.activeElement).toBe(input());
  });

  it('of a level is one stop of the ruler, half a step more or less, or moved by the arrow keys', () => {
    const { draft, tap, act, goTo, find, asked } = show({ ...allSaid, depth: undefined });
    expect(asked()).toBe('depth');
    tap('7');
    expect(draft.raw().depth).toBe('7');
    goTo('depth');
    act('half-more');
    expect(draft.raw().depth).toBe('7.5');
    const dial = find('[role=slider]');
    expect(dial.getAttribute('aria-valuenow')).toBe('7.5');
    fireEvent.keyDown(dial, { key: 'ArrowDown' });
    fireEvent.keyDown(dial, { key: 'PageDown' });
    expect(draft.raw().depth).toBe('6');
    fireEvent.keyDown(dial, { key: 'End' });
    act('half-more');
    expect(draft.raw().depth).toBe('10');
    act('take-level');
    expect(asked()).toBeNull();
  });

  it('"don’t know" is an answer of its own where it is one', () => {
    const { draft, tap, asked, line } = show({ ...allSaid, depth: undefined });
    tap('unknown');
    expect(draft.raw().depth).toBe('unknown');
    expect(asked()).toBeNull();
    expect(line('depth')).toBe("Don't know");
  });
});

describe('texts and moments on a sheet', () => {
  it('are one tap from what the salon keeps, or typed and done', () => {
    const { draft, tap, goTo, type, act, asked, find } = show({ ...allSaid, spray: undefined });
    tap('Fog');
    expect(draft.raw().spray).toBe('Fog');
    expect(asked()).toBeNull();
    goTo('spray');
    type('Much too long a name');
    expect((find('[data-act=text-done]') as HTMLButtonElement).disabled).toBe(true);
    type('Haze');
    act('text-done');
    expect(draft.raw().spray).toBe('Haze');
    expect(asked()).toBeNull();
  });

  it('are one of a few moments, or day and time', () => {
    const { draft, tap, goTo, type, act, asked, line } = show({ ...allSaid, back: undefined });
    tap('2d');
    expect(draft.raw().back).toBe(nowMs + 2 * 86_400_000);
    expect(asked()).toBeNull();
    goTo('back');
    type('2026-03-06T14:00');
    act('time-done');
    expect(asked()).toBeNull();
    expect(line('back')).toBe('Friday, March 6, 14:00');
  });
});

describe('questions that are mostly answered alike', () => {
  const touch = {
    nape: { kind: 'choice', options: ['dry', 'damp'] },
    ends: { kind: 'choice', options: ['dry', 'damp'] },
    curl: { kind: 'choice', options: ['straight', 'curly'] },
  } as const satisfies Form;
  const touchWords = {
    nape: { ask: 'Nape?', options: options('dry', 'damp') },
    ends: { ask: 'Ends?', options: options('dry', 'damp') },
    curl: { ask: 'Curl?', options: options('straight', 'curly') },
  };
  const showTouch = () => {
    const draft = createDraft();
    const { container } = render(() => (
      <Sheet
        form={touch}
        words={touchWords}
        draft={draft}
        refusals={[]}
        units={units}
        hasAgeLine={false}
        nowMs={nowMs}
        together={[
          {
            names: ['nape', 'ends'],
            option: 'dry',
            words: { ask: 'Dry?', all: 'Everywhere', apart: 'Not everywhere' },
          },
        ]}
        isPaused={draft.raw().ends === 'damp'}
      >
        <p data-all="yes">Dry it first</p>
      </Sheet>
    ));
    const find = (selector: string) => container.querySelector<HTMLElement>(selector);
    const tap = (selector: string) => fireEvent.click(find(selector) as HTMLElement);
    return { draft, find, tap };
  };

  it('are said in one tap', () => {
    const { draft, find, tap } = showTouch();
    tap('[data-together="nape ends"] [data-option=dry]');
    expect(draft.raw()).toEqual({ nape: 'dry', ends: 'dry' });
    expect(find('[data-question=curl]')).not.toBeNull();
  });

  it('or one by one, and what has to be done first is said before the next question', () => {
    const { draft, find, tap } = showTouch();
    tap('[data-act=one-by-one]');
    tap('[data-question=nape] [data-option=dry]');
    tap('[data-question=ends] [data-option=damp]');
    expect(find('[data-all]')?.textContent).toBe('Dry it first');
    expect(find('[data-question]')).toBeNull();
    draft.set('ends', 'dry');
    expect(find('[data-question=curl]')).not.toBeNull();
  });
});
