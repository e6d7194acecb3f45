import { describe, expect, it } from 'vitest';
import { replay } from '../../../machines/consultation/replay';
import { salon } from '../../../seeds/salon';
import { EVENT_VERSION, MODEL_VERSION } from '../../../shared/records/event';
import type { Form, Question } from '../../../shared/records/form';
import { askForms } from '../../../shared/records/forms/asked';
import { eventForms } from '../../../shared/records/forms/byEvent';
import { parseEvent } from '../../../shared/records/parseEvent';
import { readForm } from '../../../shared/records/readForm';
import { mayBeAbsent } from '../../../shared/records/schema';
import { answerAll, metric, nowMs } from './goodForms';
import { laterWords, tokensOf } from './goodTokens';
import { findEvent, story, tell } from './telling';

const envelope = { v: 1, atMs: nowMs, by: 'Opal', settingsId: 1, modelVersion: 1 };

interface Stored {
  readonly name: string;
  readonly form: Form;
  readonly answers: Readonly<Record<string, unknown>>;
  readonly build: (answers: unknown) => Record<string, unknown>;
}

const read = (form: Form) => {
  const answers = readForm(form, answerAll(form, metric), { units: metric, hasAgeLine: true, nowMs });
  if (!answers.ok) throw new Error(JSON.stringify(answers.error));
  return answers.value as Readonly<Record<string, unknown>>;
};

/** One good event of each type, and of each step that is answered. */
const stored: readonly Stored[] = [
  ...Object.entries(eventForms).map(([type, form]) => ({
    name: type,
    form: form as Form,
    // Who names last time has it beside it: checked in findLastTime.test.ts.
    answers: type === 'OPENED' ? { ...read(form), lastTimeId: '' } : read(form),
    build: (payload: unknown) => ({ ...envelope, type, payload, tokens: tokensOf(type) }),
  })),
  ...Object.entries(askForms).map(([step, form]) => ({
    name: `ANSWERED ${step}`,
    form: form as Form,
    answers: read(form),
    build: (answers: unknown) => ({
      ...envelope,
      type: 'ANSWERED',
      payload: { step, answers },
      tokens: tokensOf('ANSWERED'),
    }),
  })),
];
const throughStore = (entry: unknown) => parseEvent(JSON.parse(JSON.stringify(entry)));
const faultOf = (entry: unknown) => {
  const event = throughStore(entry);
  return event.ok ? 'taken' : event.error;
};
const mayLack = ({ name, form }: Stored, field: string) =>
  name.startsWith('ANSWERED') || mayBeAbsent(form[field] as Question);

/** What no answer of any kind is. */
const wrongKinds = [null, true, {}, [], [[]], 'x'.repeat(1000), 1e300, -1e300];

describe('a stored event', () => {
  it.each(stored)('$name comes back from the store as it was', ({ build, answers }) => {
    const entry = build(answers);
    expect(throughStore(entry)).toEqual({ ok: true, value: entry });
  });

  it.each(stored)('$name is refused without any one of its answers that must be there', (each) => {
    for (const field of Object.keys(each.form)) {
      const { [field]: _left, ...rest } = each.answers;
      const expected = mayLack(each, field) ? 'taken' : 'badPayload';
      expect(faultOf(each.build(rest)), field).toBe(expected);
    }
  });

  it.each(stored)('$name is refused with an answer of the wrong kind', (each) => {
    for (const [field, question] of Object.entries(each.form)) {
      for (const wrong of wrongKinds) {
        const isEmptyList = question.kind === 'list' && question.min === 0 && JSON.stringify(wrong) === '[]';
        if (isEmptyList) continue;
        expect(faultOf(each.build({ ...each.answers, [field]: wrong })), `${field} ${wrong}`).toBe(
          'badPayload',
        );
      }
    }
  });

  it('is no list in place of answers', () => {
    expect(faultOf({ ...stored[0]?.build([]) })).toBe('badPayload');
    for (const { name, build } of stored.filter(({ name }) => name.startsWith('ANSWERED'))) {
      expect(faultOf(build([])), name).toBe('badPayload');
    }
  });

  it.each(stored)('$name is refused with an answer nobody asked for', ({ build, answers }) => {
    for (const extra of ['isMixAllowed', 'toString', 'valueOf', 'Service', ' zone']) {
      expect(faultOf(build({ ...answers, [extra]: 'yes' })), extra).toBe('badPayload');
    }
  });

  it('takes a number at both of its limits and none beyond, whatever the form', () => {
    for (const { name, form, answers, build } of stored) {
      for (const [field, question] of Object.entries(form)) {
        if (question.kind !== 'number') continue;
        const { min, max } = question.field;
        const said = [min, max, min - 0.01, max + 0.01].map((value) =>
          faultOf(build({ ...answers, [field]: value })),
        );
        expect(said, `${name} ${field}`).toEqual(['taken', 'taken', 'badPayload', 'badPayload']);
        expect(faultOf(build({ ...answers, [field]: 'unknown' }))).toBe(
          question.unknown ? 'taken' : 'badPayload',
        );
      }
    }
  });

  it('judges the rows of a list as strictly', () => {
    const bowl = stored.find(({ name }) => name === 'BOWL_WEIGHED') as Stored;
    const said = (shades: unknown) => faultOf(bowl.build({ ...bowl.answers, shades }));
    expect(said([{ shade: 'x', parts: 1 }])).toBe('taken');
    expect(said([])).toBe('badPayload');
    expect(said([{ shade: 'x' }])).toBe('badPayload');
    expect(said([{ shade: 'x', parts: 1, amountG: 900 }])).toBe('badPayload');
    expect(said(Array(7).fill({ shade: 'x', parts: 1 }))).toBe('badPayload');
    const tools = stored.find(({ name }) => name === 'ANSWERED hotTools') as Stored;
    expect(faultOf(tools.build({ ...tools.answers, history: ['none', 'henna'] }))).toBe('badPayload');
  });
});

describe('the words for the guards', () => {
  const types = [...Object.keys(eventForms), 'ANSWERED'];
  const withTokens = (type: string, tokens: unknown) => {
    const entry = stored.find(({ name }) => name.split(' ')[0] === type);
    return faultOf({ ...entry?.build(entry.answers), tokens });
  };

  it.each(types)('of %s are all there, of the kinds a guard knows, and none besides', (type) => {
    const good = tokensOf(type);
    expect(withTokens(type, good)).toBe('taken');
    expect(withTokens(type, { ...good, isAllowed: true })).toBe('badTokens');
    for (const name of Object.keys(good)) {
      const { [name]: _left, ...rest } = good;
      expect(withTokens(type, rest), name).toBe(laterWords.includes(name) ? 'taken' : 'badTokens');
      const another = typeof good[name] === 'number' ? -1 : 7;
      for (const wrong of [null, another, {}, [7], Array.isArray(good[name]) ? 'ends' : []]) {
        expect(withTokens(type, { ...good, [name]: wrong }), `${name} ${wrong}`).toBe('badTokens');
      }
    }
  });

  it('cannot make replaying a log throw, whichever entry was edited by hand and however', () => {
    const { log } = tell(story);
    const codes = new Set<string>();
    for (const [seq, entry] of log.entries()) {
      for (const tokens of [{}, [], null, { zone: 'constructor', lapsed: 'x' }, tokensOf(entry.type)]) {
        for (const modelVersion of [MODEL_VERSION, MODEL_VERSION + 1]) {
          const edited = log.with(seq, { ...entry, tokens, modelVersion } as never);
          const taken = replay('edited', JSON.parse(JSON.stringify(edited)), () => salon);
          if (taken.ok) expect(JSON.stringify(taken.value.log)).toBe(JSON.stringify(log));
          else codes.add(taken.error.code);
        }
      }
    }
    expect([...codes]).toEqual(expect.arrayContaining(['badTokens', 'saysOtherwise', 'newerVersion']));
  });
});

describe('the envelope', () => {
  const entry = findEvent(tell(story.slice(0, 1)), 'OPENED');
  it('names a newer version and never guesses at it', () => {
    expect(faultOf({ ...entry, v: EVENT_VERSION + 1 })).toBe('newerVersion');
    expect(faultOf({ ...entry, v: EVENT_VERSION + 1, type: 'BRAIDED' })).toBe('newerVersion');
    expect(faultOf({ v: EVENT_VERSION + 1, something: 'else' })).toBe('newerVersion');
    expect(faultOf({ ...entry, modelVersion: MODEL_VERSION + 1 })).toBe('newerVersion');
  });

  it('names a type it does not know', () => {
    for (const type of ['BRAIDED', 'toString', 'constructor', '__proto__', '']) {
      expect(faultOf({ ...entry, type }), type).toBe('unknownType');
    }
  });

  it('is refused without any one of its fields, and with one more', () => {
    expect(faultOf(entry)).toBe('taken');
    for (const field of Object.keys(entry)) {
      const { [field as 'v']: _left, ...rest } = entry;
      expect(faultOf(rest), field).toBe('notAnEvent');
    }
    expect(faultOf({ ...entry, note: 'by hand' })).toBe('notAnEvent');
  });

  it.each([
    ['v', 0],
    ['v', 0.5],
    ['v', '1'],
    ['type', 7],
    ['payload', null],
    ['payload', 'x'],
    ['tokens', null],
    ['atMs', -1],
    ['atMs', 1.5],
    ['atMs', 2 ** 53],
    ['atMs', '0'],
    ['by', ''],
    ['by', 'x'.repeat(41)],
    ['settingsId', -1],
    ['settingsId', 0.5],
    ['modelVersion', 0],
  ])('is refused when %s is %j', (field, value) =>
    expect(faultOf({ ...entry, [field]: value })).toBe('notAnEvent'),
  );

  it('is no event when it is no object at all', () => {
    for (const entry of [null, 7, 'OPENED', true, [], [{}], {}]) expect(faultOf(entry)).toBe('notAnEvent');
    expect(parseEvent(undefined)).toEqual({ ok: false, error: 'notAnEvent' });
  });

  it('is not fooled by names that every object has', () => {
    const text = JSON.stringify(entry).replace('"payload":{', '"payload":{"__proto__":{"ticket":"P"},');
    const event = parseEvent(JSON.parse(text));
    expect(event.ok && Object.getPrototypeOf(event.value.payload)).toBe(Object.prototype);
    expect(event.ok && event.value.payload).toEqual(entry.payload);
    expect(({} as { ticket?: string }).ticket).toBeUndefined();
  });
});
