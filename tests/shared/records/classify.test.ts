import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { classify, type RawEvent } from '../../../shared/records/classify';
import { EVENT_VERSION, MODEL_VERSION } from '../../../shared/records/event';
import { askForms } from '../../../shared/records/forms/asked';
import { eventForms } from '../../../shared/records/forms/byEvent';
import { parseEvent } from '../../../shared/records/parseEvent';
import { defaultSettings } from '../../../shared/records/settings';
import { holds } from '../seeded';
import { answerAll } from './goodForms';
import {
  andThen,
  change,
  hour,
  minute,
  nothing,
  ofStep,
  ofType,
  startAtMs,
  story,
  type Told,
  tell,
  tryRaw,
  until,
} from './telling';

const context = { settings: salon, settingsId: 1, atMs: startAtMs, by: 'Opal', inheritsStop: false };
const opened: RawEvent = { type: 'OPENED', answers: { ticket: 'Q.F.', chair: '3' } };
const atMix = tell(until('BOWL_WEIGHED'));
const weigh = story.find(({ raw }) => raw.type === 'BOWL_WEIGHED')?.raw ?? opened;
const refusalOf = (told: Told, raw: RawEvent, atMs = told.atMs) => {
  const event = tryRaw(told, raw, atMs);
  return event.ok ? null : event.error;
};

describe('a tap that becomes an event', () => {
  it('is stamped with who, when, and under which settings, model and version', () =>
    expect(classify(nothing.record, opened, context)).toEqual({
      ok: true,
      value: {
        v: EVENT_VERSION,
        type: 'OPENED',
        payload: { ticket: 'Q.F.', chair: 3, stylist: '', lastTimeId: '' },
        tokens: { inherits: false, skinTest: 'missing', lapsed: [], isAnotherDay: false },
        atMs: startAtMs,
        by: 'Opal',
        settingsId: 1,
        modelVersion: MODEL_VERSION,
      },
    }));

  it('leaves the record it was judged on as it was', () => {
    const before = JSON.stringify(atMix.record);
    expect(tryRaw(atMix, weigh, atMix.atMs).ok).toBe(true);
    expect(JSON.stringify(atMix.record)).toBe(before);
  });

  it('hands on the stop of an earlier record with the same ticket', () => {
    const event = classify(nothing.record, opened, { ...context, inheritsStop: true });
    expect(event).toMatchObject({ value: { tokens: { inherits: true } } });
  });
});

describe('a tap that does not', () => {
  it('is nobody’s', () => {
    expect(classify(nothing.record, opened, { ...context, by: 'x'.repeat(40) }).ok).toBe(true);
    for (const by of ['', '  ', 'x'.repeat(41)]) {
      expect(classify(nothing.record, opened, { ...context, by })).toEqual({
        ok: false,
        error: { kind: 'nobody' },
      });
    }
  });

  it('comes before the newest entry, unless it says that the clock was wrong', () => {
    expect(refusalOf(atMix, weigh, atMix.atMs - 1)).toEqual({
      kind: 'clockWentBack',
      newestAtMs: atMix.record.newestAtMs,
    });
    const corrected: RawEvent = { type: 'CLOCK_CORRECTED', answers: { shiftMs: '-60000' } };
    expect(tryRaw(atMix, corrected, atMix.atMs - minute).ok).toBe(true);
  });

  it('names no event or no step that there is', () => {
    for (const type of [
      'MIXED',
      '',
      'toString',
      'constructor',
      '__proto__',
      'ANSWERED',
      null,
      ['OPENED'],
      7,
    ]) {
      expect(refusalOf(nothing, { type, step: 'toString', answers: {} } as never)).toEqual({
        kind: 'unknownEvent',
      });
    }
    for (const raw of [null, undefined, 'OPENED', 7]) {
      expect(refusalOf(nothing, raw as never)).toEqual({ kind: 'unknownEvent' });
    }
  });

  it('says at each field what is wrong, all of them at once', () =>
    expect(refusalOf(nothing, { type: 'OPENED', answers: { ticket: '', chair: '1e309' } })).toMatchObject({
      kind: 'fields',
      fields: [
        { path: 'ticket', code: 'empty' },
        { path: 'chair', code: 'notFinite' },
      ],
    }));
});

describe('what an event asks of the record', () => {
  const beforeStrands = tell(until('STRAND_STARTED'));
  const startRaw = story.find(({ raw }) => raw.type === 'STRAND_STARTED')?.raw as RawEvent;
  const start = (answers: object): RawEvent =>
    ({ type: 'STRAND_STARTED', answers: { ...startRaw.answers, ...answers } }) as RawEvent;

  it('keeps a strand within the maker’s limit, to the minute', () => {
    expect(refusalOf(beforeStrands, start({ minutes: '45', makersLimitMin: '45' }))).toBeNull();
    expect(refusalOf(beforeStrands, start({ minutes: '46', makersLimitMin: '45' }))).toEqual({
      kind: 'fields',
      fields: [{ path: 'minutes', code: 'overLimit' }],
    });
  });

  it('mixes nothing for a strand before every step is said', () =>
    expect(refusalOf(tell(until('STRAND_STARTED').slice(0, 1)), startRaw)).toEqual({
      kind: 'permit',
      permit: { code: 'stepUnsaid' },
    }));

  it('mixes twenty grams for a strand and says so when the scale cannot show them (ASSUMED limit)', () => {
    expect(refusalOf(beforeStrands, start({ testG: '20' }))).toBeNull();
    expect(refusalOf(beforeStrands, start({ testG: '20.1' }))).toMatchObject({ kind: 'fields' });
    expect(refusalOf(beforeStrands, start({ testG: '2', ratio: '5' }))).toMatchObject({
      kind: 'mixture',
      mixture: { code: 'stepTooCoarse' },
    });
  });

  it('gives every gram of every ratio to a scale that shows tenths', () => {
    const fine = { ...salon, scaleStepG: 0.1 as const };
    const refused = [];
    for (let ratio = 0.5; ratio <= 5; ratio += 0.05) {
      const raw = start({ testG: '20', ratio: ratio.toFixed(2) });
      const event = tryRaw(beforeStrands, raw, beforeStrands.atMs, fine);
      if (!event.ok) refused.push([ratio.toFixed(2), JSON.stringify(event.error)]);
    }
    expect(refused).toEqual([]);
  });

  it('weighs a bowl when permit and mixture agree, and says which of them does not', () => {
    expect(refusalOf(atMix, weigh)).toBeNull();
    expect(refusalOf(beforeStrands, weigh)).toEqual({ kind: 'permit', permit: { code: 'noOutcome' } });
    const stronger = { ...weigh, answers: { ...weigh.answers, developerPercent: '9' } } as RawEvent;
    expect(refusalOf(atMix, stronger)).toEqual({ kind: 'mixture', mixture: { code: 'stronger', most: 3 } });
    const overCeiling = { ...weigh, answers: { ...weigh.answers, developerPercent: '12.1' } } as RawEvent;
    // published: Reg. (EC) 1223/2009 Annex III entry 12, 12 % ready for use.
    expect(refusalOf(atMix, overCeiling)).toMatchObject({
      fields: [{ path: 'developerPercent', code: 'tooHigh' }],
    });
  });

  it('starts no lift under the name of a gloss: neither a lightener from the shelf nor more than 6 %', () => {
    // 20 vol = 6 % lifts one to two levels: common practice, no source.
    const gloss = tell(change(until('STRAND_STARTED'), ofStep('client'), { service: 'gloss' }));
    const another = { kind: 'fields', fields: [{ path: 'line', code: 'anotherService' }] };
    expect(refusalOf(gloss, start({ line: 'sandbar  POWDER', developerPercent: '3' }))).toEqual(another);
    expect(refusalOf(gloss, start({ line: 'Sandbar cream', developerPercent: '6.1' }))).toEqual(another);
    expect(refusalOf(gloss, start({ line: 'Sandbar cream', developerPercent: '6' }))).toBeNull();
    expect(refusalOf(beforeStrands, start({ line: 'Sandbar powder', developerPercent: '12' }))).toBeNull();
  });

  it('puts a bowl on a head within half an hour of mixing it (ASSUMED), to the millisecond', () => {
    const weighed = andThen(atMix, weigh);
    const apply: RawEvent = { type: 'BOWL_APPLIED', answers: { zone: 'lengths', skinFirst: 'calm' } };
    expect(refusalOf(weighed, apply, weighed.atMs + hour / 2)).toBeNull();
    expect(refusalOf(weighed, apply, weighed.atMs + hour / 2 + 1)).toEqual({
      kind: 'bowlTooOld',
      useByMs: weighed.atMs + hour / 2,
    });
  });

  it('puts no bowl on skin that is not calm, and asks how it is', () => {
    const weighed = andThen(atMix, weigh);
    const applyOn = (answers: object): RawEvent => ({
      type: 'BOWL_APPLIED',
      answers: { zone: 'lengths', ...answers },
    });
    expect(refusalOf(weighed, applyOn({ skinFirst: 'calm' }))).toBeNull();
    expect(refusalOf(weighed, applyOn({ skinFirst: 'notCalm' }))).toEqual({ kind: 'skinNotCalm' });
    expect(refusalOf(weighed, applyOn({}))).toMatchObject({ fields: [{ path: 'skinFirst' }] });
  });

  it('takes no skin test for older than it was noted, and a newer one at any time', () => {
    const told = tell(until('STEP_CONFIRMED'));
    const noted = told.record.skinTest?.putOnAtMs ?? 0;
    const note = (putOnAtMs: number): RawEvent => ({
      type: 'SKIN_TEST_NOTED',
      answers: { putOnAtMs, seen: 'notReadYet' },
    });
    expect(refusalOf(told, note(noted))).toBeNull();
    expect(refusalOf(told, note(noted + 1))).toBeNull();
    expect(refusalOf(told, note(noted - 1))).toEqual({
      kind: 'fields',
      fields: [{ path: 'putOnAtMs', code: 'earlierThanNoted' }],
    });
  });

  it('does not read a skin test as clear before its 48 hours (published: Cosmetics Europe 2023, one protocol)', () => {
    const told = tell(until('SKIN_TEST_NOTED'));
    const note = (agoMs: number, seen: string): RawEvent => ({
      type: 'SKIN_TEST_NOTED',
      answers: { putOnAtMs: told.atMs - agoMs, seen },
    });
    expect(refusalOf(told, note(48 * hour, 'nothing'))).toBeNull();
    expect(refusalOf(told, note(48 * hour - 1, 'nothing'))).toEqual({
      kind: 'fields',
      fields: [{ path: 'seen', code: 'readTooEarly' }],
    });
    expect(refusalOf(told, note(48 * hour - 1, 'notReadYet'))).toBeNull();
    expect(refusalOf(told, note(1, 'reaction'))).toBeNull();
  });

  it('does not read an incompatibility test as clear before its 30 minutes (training texts, common practice)', () => {
    const told = andThen(beforeStrands, { type: 'INCOMPATIBILITY_STARTED' });
    const readIt = (seen: string): RawEvent => ({ type: 'INCOMPATIBILITY_READ', answers: { seen } });
    expect(refusalOf(told, readIt('nothing'), told.atMs + 30 * minute)).toBeNull();
    expect(refusalOf(told, readIt('nothing'), told.atMs + 30 * minute - 1)).toMatchObject({ kind: 'fields' });
    expect(refusalOf(told, readIt('reacted'), told.atMs + 1)).toBeNull();
  });

  it('counts those 30 minutes right when the tablet’s clock was set back meanwhile', () => {
    const begun = andThen(beforeStrands, { type: 'INCOMPATIBILITY_STARTED' });
    const back: RawEvent = { type: 'CLOCK_CORRECTED', answers: { shiftMs: String(-hour) } };
    const shifted = andThen(begun, back, 10 * minute - hour);
    const readIt: RawEvent = { type: 'INCOMPATIBILITY_READ', answers: { seen: 'nothing' } };
    expect(refusalOf(shifted, readIt, shifted.atMs + 20 * minute - 1)).toMatchObject({ kind: 'fields' });
    expect(refusalOf(shifted, readIt, shifted.atMs + 20 * minute)).toBeNull();
  });
});

describe('whatever comes', () => {
  const anyValue = fc.anything({ withNullPrototype: true, withSparseArray: true, withBigInt: true });
  const types = [...Object.keys(eventForms), 'ANSWERED'];
  const forms = Object.entries({ ...eventForms, ...askForms });
  const records = [nothing, tell(until('STRAND_STARTED')), tell(until('OUTCOME_RECORDED')), atMix];

  it('is an event or a refusal, never an exception', () =>
    holds(
      fc.property(
        fc.constantFrom(...records),
        fc.oneof(fc.constantFrom(...types), anyValue),
        fc.oneof(fc.constantFrom(...Object.keys(askForms)), anyValue),
        anyValue,
        ({ record, atMs }, type, step, answers) => {
          const event = classify(record, { type, step, answers } as never, { ...context, atMs });
          if (event.ok)
            expect(parseEvent(JSON.parse(JSON.stringify(event.value)))).toMatchObject({ ok: true });
        },
      ),
      3000,
    ));

  it('can be read again from the store when it was accepted, in any settings', () =>
    holds(
      fc.property(
        fc.constantFrom(...records),
        fc.constantFrom(...forms),
        fc.constantFrom(salon, { ...defaultSettings, profile: { ...salon.profile, ageLine: null } }),
        fc.dictionary(fc.constantFrom(...forms.flatMap(([, form]) => Object.keys(form))), anyValue, {
          maxKeys: 2,
        }),
        ({ record, atMs }, [name, form], settings, changes) => {
          const answers = { ...answerAll(form, settings.units), ...changes };
          const raw = name in askForms ? { type: 'ANSWERED', step: name, answers } : { type: name, answers };
          const event = classify(record, raw as never, { ...context, settings, atMs });
          if (event.ok) expect(parseEvent(JSON.parse(JSON.stringify(event.value)))).toEqual(event);
        },
      ),
      3000,
    ));

  it('is never a bowl where the story has not come to one', () => {
    for (const told of records.slice(0, 3)) expect(refusalOf(told, weigh)).toMatchObject({ kind: 'permit' });
    expect(story.filter(({ raw }) => ofType('BOWL_WEIGHED')(raw))).toHaveLength(1);
  });
});
