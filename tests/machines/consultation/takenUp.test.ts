import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { advance, type Consultation } from '../../../machines/consultation/consultation';
import { replay } from '../../../machines/consultation/replay';
import { issueTestPermit } from '../../../shared/judgement/permit';
import { classify, type RawEvent } from '../../../shared/records/classify';
import { type ConsultationEvent, MODEL_VERSION } from '../../../shared/records/event';
import type { Form } from '../../../shared/records/form';
import { askForms } from '../../../shared/records/forms/asked';
import { eventForms } from '../../../shared/records/forms/byEvent';
import type { Settings } from '../../../shared/records/settings';
import { writeForm } from '../../../shared/records/writeForm';
import type { ShippedLog } from '../../shared/records/shippedLogs';
import { cream, findSettings, minuteMs, override, startStrand, tap } from './walks/rawTaps';
import { confirm, decide, reopen } from './walks/story';

const fixtures = join(import.meta.dirname, '../../shared/records/fixtures');
const read = (name: string) =>
  JSON.parse(readFileSync(join(fixtures, `${name}.json`), 'utf8')) as readonly (Pick<
    ShippedLog,
    'name' | 'log'
  > &
    Partial<Pick<ShippedLog, 'settings'>>)[];
const kept = ['modelVersion3Differs', 'modelVersion4'].flatMap(read).map(({ name, log, settings }) => ({
  name,
  log,
  find: settings === undefined ? findSettings : () => settings,
}));

const takeUp = (log: readonly ConsultationEvent[], find: (id: number) => Settings): Consultation => {
  const again = replay('kept', JSON.parse(JSON.stringify(log)), find);
  if (!again.ok) throw new Error(`${log[again.error.seq]?.type}: ${JSON.stringify(again.error)}`);
  return again.value;
};

/** What was logged, as somebody taps it now. */
function tapAgain({ type, payload }: ConsultationEvent, { units }: Settings): RawEvent {
  if (type === 'ANSWERED') {
    const { step, answers } = payload;
    return { type, step, answers: writeForm(askForms[step], answers, units) };
  }
  const form: Form = eventForms[type];
  return { type, answers: writeForm(form, payload, units) };
}

/** What is tapped first after an update: anything that stood open then, one after the other. */
const live: readonly RawEvent[] = [
  ...['asPlanned', 'gentler', 'endsOut', 'testAgain', 'weSayNo'].map(decide),
  ...(['client', 'hotTools', 'feelHair', 'heatSpray'] as const).map(confirm),
  reopen('client'),
  reopen('strandTest'),
  override('judgement.tingled'),
  override('judgement.relaxerAndPerm'),
  override('judgement.freerThanSuggested'),
  startStrand('lengths', '6'),
  tap('OUTCOME_KEPT'),
  tap('PLAN_CHANGED'),
  tap('CLOCK_EXTENDED', { clock: 'head-lengths-1', minutes: '1', reason: 'greyResists' }),
  tap('BOWL_RINSED', { zone: 'lengths' }),
  tap('REACTION_SUSPECTED'),
  tap('CALLED_OFF', { reason: 'noTime' }),
];

/** The log with this tap after it, a minute later; null where it is refused. */
function tapAfter(
  consultation: Consultation,
  raw: RawEvent,
  settings: Settings,
  settingsId: number,
): Consultation | null {
  const atMs = consultation.record.newestAtMs + minuteMs;
  const context = { settings, settingsId, atMs, by: 'Opal', inheritsStop: false };
  const event = classify(consultation.record, raw, context);
  const next = event.ok ? advance(consultation, event.value) : event;
  return next.ok ? next.value : null;
}

describe('a log of models 3 and 4, cut off by the update after any of its entries', () => {
  const taken = new Set<string>();
  test.each(kept)('is taken up, and again with the first tap of this model: $name', ({ log, find }) => {
    for (let upTo = 1; upTo <= log.length; upTo += 1) {
      const prefix = log.slice(0, upTo);
      const settingsId = prefix.at(-1)?.settingsId ?? 0;
      const settings = find(settingsId);
      const then = takeUp(prefix, find);
      const next = log[upTo];
      for (const raw of next === undefined ? live : [tapAgain(next, settings), ...live]) {
        const after = tapAfter(then, raw, settings, settingsId);
        if (after === null) continue;
        expect(after.log.at(-1)?.modelVersion).toBe(MODEL_VERSION);
        expect(takeUp(after.log, find).state.value).toEqual(after.state.value);
        taken.add(raw.type);
      }
    }
  });

  test('any kind of tap was tried', () =>
    expect([...taken].sort()).toEqual(
      expect.arrayContaining([...new Set([...live.map(({ type }) => type), 'ANSWERED', 'BOWL_WEIGHED'])]),
    ));
});

describe('a stop that came with the update', () => {
  const rule = 'judgement.relaxerAndPerm';
  const [before] = kept;
  if (before === undefined) throw new Error('no log of model 3');
  const settings = findSettings(0);
  const onward = (consultation: Consultation, raw: RawEvent) => tapAfter(consultation, raw, settings, 0);
  const then = takeUp(before.log, before.find);
  const strand = startStrand('lengths', '3', '25', { line: cream });

  test('keeps the strand back until a named person answers for it, who need not ask anew', () => {
    expect(issueTestPermit(then.record, settings)).toEqual({
      ok: false,
      error: { code: 'forAJudgement', rules: [rule] },
    });
    expect(onward(then, strand)).toBeNull();
    const lifted = onward(then, override(rule));
    if (lifted === null) throw new Error('not to be signed for');
    const started = onward(lifted, strand);
    if (started === null) throw new Error('no strand after it');
    expect(takeUp(started.log, before.find).state.value).toEqual(started.state.value);
    // Answered for once, it is not asked for again.
    expect(onward(lifted, override(rule))).toBeNull();
  });

  test('is none where the answers do not raise it', () => {
    expect(onward(then, override('judgement.snapsWhenWet'))).toBeNull();
  });
});
