import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { replay } from '../../../machines/consultation/replay';
import { salon } from '../../../seeds/salon';
import { judgeRisk, risks } from '../../../shared/judgement/risk';
import { listOpenStops } from '../../../shared/judgement/stops';
import { type ConsultationEvent, MODEL_VERSION } from '../../../shared/records/event';
import type { Question } from '../../../shared/records/form';
import { askForms } from '../../../shared/records/forms/asked';
import { findSettings, say, startStrand, tap, weighBowl } from './walks/rawTaps';
import { answersOf, ask, decide, opened, play, type Told, tested } from './walks/story';

/** The station has gone on by one model since these logs were written. */
const laterModel = MODEL_VERSION + 1;
const takeUp = (log: readonly unknown[], modelVersion = laterModel): string => {
  const again = replay('older', JSON.parse(JSON.stringify(log)), findSettings, modelVersion);
  return again.ok ? 'taken up' : `${again.error.code} at ${again.error.seq}`;
};

const asked = [...opened, ...ask()];
const whole = weighBowl('lengths', '9', '25');
const toBowl: readonly Told[] = [...asked, ...tested('lengths'), decide('asPlanned'), whole];
const { log } = play(toBowl);
const find = (type: string) => log.findIndex((event) => event.type === type);

/** The log with one entry changed by hand. */
const edit = (seq: number, change: (event: ConsultationEvent) => object): readonly unknown[] =>
  log.map((event, index) => (index === seq ? { ...event, ...change(event) } : event));

describe('a log of an older model', () => {
  test('is taken up as it was', () => {
    expect(takeUp(log)).toBe('taken up');
    expect(takeUp(log, MODEL_VERSION)).toBe('taken up');
  });

  test('that claims a mix without an outcome is set aside', () => {
    const cut = log.filter(({ type }) => type !== 'OUTCOME_RECORDED');
    expect(takeUp(cut)).toMatch(/^notNow/u);
    const untested = [...play(asked).log, ...log.slice(find('DECIDED'))];
    expect(takeUp(untested)).toMatch(/^notNow/u);
    const gummy = edit(find('OUTCOME_RECORDED'), ({ payload }) => ({
      payload: { ...payload, fibre: 'gummy' },
    }));
    expect(takeUp(gummy)).toBe(`saysOtherwise at ${find('OUTCOME_RECORDED')}`);
  });

  test('that claims a mix for a client who told of hives is set aside, whatever its words for the guards say', () => {
    const seq = find('ANSWERED');
    const hives = edit(seq, () => ({
      payload: { step: 'client', answers: { ...play(asked).record.answers.client, reactions: ['hives'] } },
    }));
    expect(takeUp(hives)).toBe(`saysOtherwise at ${seq}`);
    const { log: stopped } = play([
      ...opened,
      say('client', { ...answersOf().client, reactions: ['hives'] }),
    ]);
    expect(takeUp([...stopped, ...log.slice(stopped.length)])).toMatch(/^notNow/u);
  });

  test('that claims a skin test nobody read, another line, or a bowl under no permit is set aside', () => {
    const notRead = edit(find('SKIN_TEST_NOTED'), ({ payload }) => ({
      payload: { ...payload, seen: 'notReadYet' },
    }));
    expect(takeUp(notRead)).toMatch(/^saysOtherwise/u);
    const bowl = find('BOWL_WEIGHED');
    for (const change of [
      { line: 'Sandbar cream' },
      { developerPercent: 12 },
      { minutes: 40 },
      { ratio: 1 },
    ]) {
      const forged = edit(bowl, ({ payload }) => ({ payload: { ...payload, ...change } }));
      expect(takeUp(forged), JSON.stringify(change)).not.toBe('taken up');
    }
    const saidNo = edit(find('DECIDED'), ({ payload }) => ({
      payload: { ...payload, decision: 'weSayNo' },
    }));
    expect(takeUp(saidNo)).toMatch(/^saysOtherwise/u);
  });

  test('may have been suggested otherwise than today: that alone is taken at its word', () => {
    const decided = find('DECIDED');
    const otherTable = edit(decided, ({ tokens }) => ({ tokens: { ...tokens, suggested: 'gentler' } }));
    expect(takeUp(otherTable)).toBe('taken up');
    expect(takeUp(otherTable, MODEL_VERSION)).toBe(`saysOtherwise at ${decided}`);
  });

  test('may have given a strand more time that was stretchy: before model 3 nothing asked', () => {
    const start = [...asked, startStrand('lengths', '9')];
    const look = (feel: string) => tap('LOOKED', { of: 'strand', zone: 'lengths', level: '6', feel });
    const more = tap('CLOCK_EXTENDED', { clock: 'strand-lengths-1', minutes: '5', reason: 'liftIsSlow' });
    const given = play([...start, look('rough'), more]).log.at(-1);
    if (given?.type !== 'CLOCK_EXTENDED') throw new Error('no more time given');
    const { hasWeakened: _said, ...tokens } = given.tokens;
    const before = play([...start, look('stretchy')]).log;
    const write = (modelVersion: number, last: object) =>
      [...before, { ...given, ...last }].map((event) => ({ ...event, modelVersion }));
    expect(takeUp(write(2, { tokens }), 3)).toBe('taken up');
    // From then on the word is asked for, and says so.
    expect(takeUp(write(3, { tokens }), 3)).toBe(`saysOtherwise at ${before.length}`);
    expect(takeUp(write(3, {}), 3)).toBe(`saysOtherwise at ${before.length}`);
    expect(takeUp(write(3, { tokens: { ...tokens, hasWeakened: true } }), 3)).toMatch(/^notNow/u);
  });

  test('never follows a newer one', () => {
    const upTo = (seq: number) =>
      log.map((event, index) => ({ ...event, modelVersion: index < seq ? MODEL_VERSION : laterModel }));
    expect(takeUp(upTo(3))).toBe('taken up');
    expect(takeUp([...upTo(3)].with(5, log[5] as never))).toBe('saysOtherwise at 5');
    expect(takeUp(upTo(3), MODEL_VERSION)).toBe('newerVersion at 3');
  });
});

describe('a log of model 3, kept because model 4 judges its answers otherwise', () => {
  const file = join(import.meta.dirname, '../../shared/records/fixtures/modelVersion3Differs.json');
  const kept = JSON.parse(readFileSync(file, 'utf8')) as readonly {
    readonly name: string;
    readonly log: readonly ConsultationEvent[];
    readonly maxMinutes: readonly number[];
  }[];

  test.each(kept)('is taken up with what it let happen then: $name', ({ log: then, maxMinutes }) => {
    const again = replay('older', then, findSettings);
    if (!again.ok) throw new Error(`${again.error.code} at ${again.error.seq}`);
    const { record } = again.value;
    expect(record.bowls.map((bowl) => bowl.maxMinutes)).toEqual(maxMinutes);
    const asToday = replay(
      'older',
      then.map((event) => ({ ...event, modelVersion: MODEL_VERSION })),
      findSettings,
    );
    const today = asToday.ok ? asToday.value.record.bowls.map((bowl) => bowl.maxMinutes) : asToday.error.code;
    expect(today).not.toEqual(maxMinutes);
  });

  test.each(kept)('is judged by model 4 from the next tap on: $name', ({ log: then }) => {
    const again = replay('older', then, findSettings);
    if (!again.ok) throw new Error(again.error.code);
    const { record } = again.value;
    expect(record.modelVersion).toBe(MODEL_VERSION);
    const before = { ...record, modelVersion: 3 };
    const isStricter =
      listOpenStops(record, salon).length > listOpenStops(before, salon).length ||
      risks.indexOf(judgeRisk(record)) > risks.indexOf(judgeRisk(before));
    expect(isStricter).toBe(true);
  });
});

describe('a question that was added later', () => {
  const form = askForms.heatSpray as unknown as Record<string, Question>;
  const added: Question = { kind: 'choice', options: ['yes', 'no'], addedIn: laterModel };
  afterEach(() => {
    delete form.added;
  });

  test('leaves a log from before it as whole as it was, and none that should have asked it', () => {
    form.added = added;
    expect(takeUp(log)).toBe('taken up');
    form.added = { ...added, addedIn: MODEL_VERSION };
    expect(takeUp(log)).toMatch(/^saysOtherwise/u);
  });

  test('opens no way for a log that lacks what was asked then', () => {
    const seq = find('ANSWERED');
    const { scalp: _scalp, ...others } = play(asked).record.answers.client ?? {};
    form.added = added;
    const unsaid = edit(seq, () => ({ payload: { step: 'client', answers: others } }));
    expect(takeUp(unsaid)).toBe(`saysOtherwise at ${seq}`);
  });
});
