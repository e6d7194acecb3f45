import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askForms } from '../../../shared/records/forms/asked';
import { bowlForm } from '../../../shared/records/forms/bowl';
import { clientForm } from '../../../shared/records/forms/client';
import { openedForm, parkedForm, reactionForm } from '../../../shared/records/forms/course';
import { heatSprayForm } from '../../../shared/records/forms/heatSpray';
import { hotToolsForm } from '../../../shared/records/forms/hotTools';
import { shelfForm } from '../../../shared/records/forms/shelf';
import { lookForm, skinTestForm } from '../../../shared/records/forms/test';
import { listUnanswered } from '../../../shared/records/isAsked';
import { type ReadingContext, readForm } from '../../../shared/records/readForm';
import { holds } from '../seeded';
import { allForms, answerAll, customary, metric, nowMs } from './goodForms';

const context: ReadingContext = { units: metric, hasAgeLine: true, nowMs };
type Read = { ok: boolean; value?: unknown; error?: readonly { path: string; code: string }[] };
const read = (form: object, raw: unknown, more: Partial<ReadingContext> = {}): Read =>
  readForm(form as never, raw as never, { ...context, ...more }) as Read;
const refusals = (form: object, raw: unknown, more: Partial<ReadingContext> = {}) =>
  (read(form, raw, more).error ?? []).map(({ path, code }) => `${path} ${code}`);
const client = answerAll(clientForm, metric);

describe('units', () => {
  it('keeps 400 °F as 204.44 °C, 1 in as 2.54 cm and 2 oz as 56.7 g (exact definitions)', () => {
    const habit = { tool: 'wand', wetness: 'wet', daysAWeek: '3', forMonths: '24' };
    const row = { ...habit, settingC: '400', plateWidthCm: '1' };
    const tools = { habits: [row], smoke: 'no', history: ['none'] };
    const habits = (read(hotToolsForm, tools, { units: customary }).value as { habits: object[] }).habits;
    expect(habits[0]).toMatchObject({ settingC: expect.closeTo(204.4444, 4), plateWidthCm: 2.54 });
    const bowl = { ...answerAll(bowlForm, customary), colourG: '2' };
    const read2 = read(bowlForm, bowl, { units: customary }).value;
    expect(read2).toMatchObject({ colourG: expect.closeTo(56.699, 3) });
  });

  it('takes the same typed 400 for too hot where the station speaks °C', () =>
    expect(refusals(heatSprayForm, { finish: 'styled', spray: 'x', tool: 'wand', settingC: '400' })).toEqual([
      'tool notAnOption',
      'settingC tooHigh',
    ]));
});

describe('choices', () => {
  it('refuses what is no option, nothing, and none together with others', () => {
    const said = (reactions: unknown) => refusals(clientForm, { ...client, reactions });
    expect(said(['none'])).toEqual([]);
    expect(said(['hives', 'rash'])).toEqual([]);
    expect(said(['hives', 'dandruff'])).toEqual(['reactions notAnOption']);
    expect(said([])).toEqual(['reactions notAnswered']);
    expect(said('none')).toEqual(['reactions notAnswered']);
    expect(said(['none', 'hives'])).toEqual(['reactions noneAndOthers']);
  });

  it('keeps chosen options once each, in the order of the form', () =>
    expect(read(reactionForm, { signs: ['eyes', 'burning', 'eyes'] }).value).toEqual({
      signs: ['burning', 'eyes'],
    }));

  it('takes the default of a choice left out, and asks where there is none', () => {
    const { texture: _texture, length: _length, ...rest } = client;
    expect(refusals(clientForm, rest)).toEqual(['length notAnswered']);
    expect(read(clientForm, { ...client, texture: '' }).value).toMatchObject({ texture: 'medium' });
    expect(refusals(clientForm, { ...client, length: 'toString' })).toEqual(['length notAnOption']);
  });
});

describe('texts and times', () => {
  it('keeps tab, line feed and carriage return in a long text, and no other control character', () => {
    const said = (ingredients: string) =>
      refusals(shelfForm, { name: 'Cove mist', kind: 'spray', ingredients, trial: [] });
    expect(said('Aqua,\r\n dimethicon;\tPARFUM')).toEqual([]);
    for (let code = 0; code < 0xa0; code += 1) {
      if ((code >= 0x20 && code < 0x7f) || code === 9 || code === 10 || code === 13) continue;
      expect(said(`Aqua${String.fromCharCode(code)}Parfum`), String(code)).toEqual(['ingredients malformed']);
    }
  });

  const opened = (ticket: unknown) => refusals(openedForm, { ticket, chair: '1' });
  it('trims a ticket and refuses an empty, too long or broken one', () => {
    expect(read(openedForm, { ticket: '  Q.F. ', chair: '1' }).value).toEqual({
      ticket: 'Q.F.',
      chair: 1,
      stylist: '',
      lastTimeId: '',
    });
    expect(opened('   ')).toEqual(['ticket empty']);
    expect(opened(12)).toEqual(['ticket empty']);
    expect(opened('x'.repeat(12))).toEqual([]);
    expect(opened('x'.repeat(13))).toEqual(['ticket tooLong']);
    expect(opened('🪮'.repeat(12))).toEqual([]);
    expect(opened('Q\u0000F')).toEqual(['ticket malformed']);
    expect(opened('Q\r\nF')).toEqual(['ticket malformed']);
  });

  it('takes this very moment for past and not for coming', () => {
    const putOn = (putOnAtMs: unknown) => refusals(skinTestForm, { putOnAtMs, seen: 'nothing' });
    expect(putOn(nowMs)).toEqual([]);
    expect(putOn(nowMs + 1)).toEqual(['putOnAtMs notYet']);
    for (const at of [String(nowMs), 1.5, Number.NaN, Number.POSITIVE_INFINITY, undefined]) {
      expect(putOn(at)).toEqual(['putOnAtMs notAnswered']);
    }
    expect(refusals(parkedForm, { untilAtMs: nowMs })).toEqual(['untilAtMs alreadyPast']);
    expect(refusals(parkedForm, { untilAtMs: nowMs + 1 })).toEqual([]);
  });
});

describe('lists', () => {
  const [row] = answerAll(hotToolsForm, metric).habits as unknown as readonly object[];
  const tools = (habits: unknown) => ({ smoke: 'no', history: ['none'], habits });
  it('takes no habit for no habit, and each of eight, but not a ninth', () => {
    expect(read(hotToolsForm, tools(undefined)).value).toMatchObject({ habits: [] });
    expect(refusals(hotToolsForm, tools(Array(8).fill(row)))).toEqual([]);
    expect(refusals(hotToolsForm, tools(Array(9).fill(row)))).toEqual(['habits tooMany']);
    expect(refusals(bowlForm, { ...answerAll(bowlForm, metric), shades: [] })).toEqual(['shades tooFew']);
  });

  it('says in which row it is, and everything that is wrong at once', () =>
    expect(refusals(hotToolsForm, tools([row, { ...row, settingC: '9', tool: 'brick' }, 'x', null]))).toEqual(
      ['habits.1.tool notAnOption', 'habits.1.settingC tooLow', 'habits.2 malformed', 'habits.3 malformed'],
    ));

  it('takes a gap in a list for a row that is broken', () => {
    const gapped = [row, row];
    delete gapped[0];
    expect(refusals(hotToolsForm, tools(gapped))).toEqual(['habits.0 malformed']);
  });
});

describe('questions asked only sometimes', () => {
  it('asks for spray, tool and setting only when the hair is styled hot', () => {
    expect(read(heatSprayForm, { finish: 'noHotTool', settingC: 'nonsense' }).value).toEqual({
      finish: 'noHotTool',
    });
    expect(refusals(heatSprayForm, { finish: 'styled' })).toEqual([
      'spray empty',
      'tool notAnswered',
      'settingC empty',
    ]);
  });

  it('asks a strand for level and feel, a head whether it stings', () => {
    expect(refusals(lookForm, { of: 'strand', zone: 'ends' })).toEqual(['level empty', 'feel notAnswered']);
    expect(refusals(lookForm, { of: 'head', zone: 'ends' })).toEqual(['stinging notAnswered']);
    expect(refusals(lookForm, { zone: 'ends' })).toEqual(['of notAnswered']);
  });

  it('asks for what follows from one answer of a list only when that answer is among them', () => {
    const askedAfter = (...history: readonly string[]) =>
      refusals(hotToolsForm, { habits: [], smoke: 'no', history });
    const bleaches = 'bleaches empty';
    const relaxed = 'relaxedWithinTwoWeeks notAnswered';
    for (const item of hotToolsForm.history.options) {
      const isLightened = ['lightener', 'unknown'].includes(item);
      const isRelaxed = ['relaxer', 'perm', 'keratin', 'unknown'].includes(item);
      expect(askedAfter(item), item).toEqual([
        ...(isLightened ? [bleaches] : []),
        ...(isRelaxed ? [relaxed] : []),
      ]);
    }
    expect(askedAfter('gloss', 'lightener', 'perm')).toEqual([bleaches, relaxed]);
    const told = { habits: [], smoke: 'no', history: ['gloss'], bleaches: '3', relaxedWithinTwoWeeks: 'yes' };
    const kept = { habits: [], smoke: 'no', history: ['gloss'], growth: 'usual' };
    expect(read(hotToolsForm, told).value).toEqual(kept);
  });

  it('asks for a spray at home only where there is a tool, and takes no answer for not known', () => {
    const row = { tool: 'wand', wetness: 'dry', daysAWeek: '1', forMonths: '1', settingC: '200' };
    const told = (habits: readonly object[]) =>
      read(hotToolsForm, { habits, smoke: 'no', history: ['none'] }).value;
    expect(told([row])).toMatchObject({ spray: 'unknown' });
    expect(told([])).not.toHaveProperty('spray');
  });

  it('asks for the age band only where the local profile draws an age line', () => {
    const { ageBand: _ageBand, ...rest } = client;
    expect(refusals(clientForm, rest)).toEqual(['ageBand notAnswered']);
    const without = read(clientForm, client, { hasAgeLine: false });
    expect(without.value).not.toHaveProperty('ageBand');
    expect(without.ok).toBe(true);
  });
});

describe('a step answered tap by tap', () => {
  it('takes what is answered, asks for nothing more, and refuses what is wrong', () => {
    const partial = { isPartial: true };
    expect(read(clientForm, { service: 'gloss' }, partial).value).toMatchObject({ service: 'gloss' });
    expect(refusals(clientForm, { service: 'gloss', targetLevel: '11' }, partial)).toEqual([
      'targetLevel tooHigh',
    ]);
    expect(refusals(clientForm, { targetLevel: '' }, partial)).toEqual(['targetLevel empty']);
    expect(refusals(hotToolsForm, { habits: [{ tool: 'wand' }] }, partial)).toContain(
      'habits.0.wetness notAnswered',
    );
  });

  it('names what is still to be asked, until nothing is', () => {
    const said = read(clientForm, { service: 'gloss' }, { isPartial: true }).value as Record<string, unknown>;
    expect(listUnanswered(clientForm, said, context)).toContain('targetLevel');
    expect(listUnanswered(clientForm, said, context)).not.toContain('service');
    for (const form of Object.values(askForms)) {
      const whole = read(form, answerAll(form, metric)).value as Record<string, unknown>;
      expect(listUnanswered(form, whole, context)).toEqual([]);
    }
  });
});

describe('names nobody asked for', () => {
  it('drops them', () =>
    expect(read(openedForm, { ticket: 'Q.F.', chair: '1', isMixAllowed: 'yes' }).value).toEqual({
      ticket: 'Q.F.',
      chair: 1,
      stylist: '',
      lastTimeId: '',
    }));

  it('is not fooled by names that every object has', () => {
    const raw = JSON.parse('{"ticket":"Q","chair":"1","__proto__":{"ticket":"P"},"constructor":"x"}');
    const answers = read(openedForm, raw).value as object;
    expect(Object.keys(answers)).toEqual(['ticket', 'chair', 'stylist', 'lastTimeId']);
    expect(Object.getPrototypeOf(answers)).toBe(Object.prototype);
    expect(refusals(openedForm, JSON.parse('{"__proto__":{"ticket":"P","chair":"1"}}'))).toHaveLength(2);
    expect(refusals(openedForm, Object.create({ ticket: 'P', chair: '1' }))).toHaveLength(2);
    expect(({} as { ticket?: string }).ticket).toBeUndefined();
  });
});

describe('anything at all', () => {
  const anyValue = fc.anything({ withNullPrototype: true, withSparseArray: true, withBigInt: true });

  it('as one answer gives a value or a refusal at that answer, never an exception', () =>
    holds(
      fc.property(fc.constantFrom(...allForms), fc.nat(), anyValue, ([, form], pick, value) => {
        const names = Object.keys(form);
        const name = names[pick % Math.max(names.length, 1)] ?? 'none';
        const { ok, error } = read(form, { ...answerAll(form, metric), [name]: value });
        if (ok) return;
        const besides = error?.filter(({ path }) => path !== name && !path.startsWith(`${name}.`)) ?? [];
        // A question that others hang on takes their answers' place along.
        if (Object.values(form).every(({ when }) => when?.question !== name)) expect(besides).toEqual([]);
      }),
      2000,
    ));
});
