import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { LastTime } from '../../../shared/records/lastTime';
import { type AskedToday, findOwnChemistry, tellNothingNew } from '../../../shared/records/nothingNew';
import { listOpenQuestions } from './openQuestions';
import { andThen, day, nothing, startAtMs, story, type Told, tell } from './telling';

const { answers } = tell(story).record;
const last: LastTime = {
  id: 'done0001',
  endedAtMs: startAtMs - day,
  isDone: true,
  hasStandingStop: false,
  answers,
  zones: [{} as LastTime['zones'][number]],
};
const today: AskedToday = {
  reactions: ['none'],
  scalp: 'sound',
  ageBand: 'over',
  nape: 'dry',
  mid: 'dry',
  ends: 'dry',
  breakage: 'no',
  wetStretch: 'springsBack',
};
const opened = andThen(nothing, { type: 'OPENED', answers: { ticket: 'Q.F.', chair: '3' } });
const say = (from: LastTime, asked: AskedToday, nowMs = startAtMs): Told =>
  tellNothingNew(from, asked, salon.units, nowMs).reduce((told, raw) => andThen(told, raw), opened);

describe('nothing new since last time', () => {
  it('answers every step as last time and confirms it, in order', () => {
    const { record, log } = say(last, today);
    expect(listOpenQuestions(record.answers, salon)).toEqual([]);
    const { history: _then, ...tools } = answers.hotTools ?? {};
    expect(record.answers.client).toEqual(answers.client);
    expect(record.answers.hotTools).toMatchObject(tools);
    expect(record.answers.feelHair).toEqual(answers.feelHair);
    expect(log.map(({ type }) => type)).toEqual([
      'OPENED',
      ...Array.from({ length: 4 }, () => ['ANSWERED', 'STEP_CONFIRMED']).flat(),
    ]);
  });

  it('takes what holds for today from today alone', () => {
    const { record } = say(last, { ...today, scalp: 'tight', wetStretch: 'staysLong', breakage: 'some' });
    expect(record.answers.client?.scalp).toBe('tight');
    expect(record.answers.feelHair).toMatchObject({ wetStretch: 'staysLong', breakage: 'some' });
    const noAge = tellNothingNew(last, { ...today, ageBand: undefined } as never, salon.units, 1);
    expect(noAge[0]).toMatchObject({ type: 'ANSWERED', step: 'client', answers: { ageBand: undefined } });
  });

  it('adds what this salon put on it last time to what has been on it', () => {
    expect(say(last, today).record.answers.hotTools).toMatchObject({ history: ['lightener'], bleaches: 1 });
    const often = { ...last, answers: { ...answers, hotTools: { ...answers.hotTools, bleaches: 2 } } };
    expect(say(often, today).record.answers.hotTools?.bleaches).toBe(3);
    const lost = {
      ...last,
      answers: { ...answers, hotTools: { ...answers.hotTools, bleaches: 'unknown' as const } },
    };
    expect(say(lost, today).record.answers.hotTools?.bleaches).toBe('unknown');
    const gloss = {
      ...last,
      answers: { ...answers, client: { ...answers.client, service: 'gloss' as const } },
    };
    expect(findOwnChemistry(gloss)).toBe('gloss');
    expect(findOwnChemistry({ ...gloss, zones: [] })).toBeNull();
  });

  it('counts times back from today: longer by the months gone, and no root length of then', () => {
    const [habit] = answers.hotTools?.habits ?? [];
    if (habit === undefined) throw new Error('no habit');
    const hotTools = {
      ...answers.hotTools,
      habits: [habit, { ...habit, stoppedMonthsAgo: 6 }, { ...habit, forMonths: 'unknown' as const }],
      history: ['lightener' as const],
      bleaches: 2,
      lastBleachMonthsAgo: 12,
      bleachReach: 'ends' as const,
      growth: 'measured' as const,
      regrowthCm: 3,
      regrowthWeeks: 12,
    };
    const threeMonths = { ...last, endedAtMs: startAtMs - 91 * day, answers: { ...answers, hotTools } };
    const elsewhere = { ...threeMonths, zones: [] };
    const said = say(elsewhere, today).record.answers.hotTools;
    expect(said?.habits?.map(({ forMonths, stoppedMonthsAgo }) => [forMonths, stoppedMonthsAgo])).toEqual([
      [Number(habit.forMonths) + 3, 0],
      [habit.forMonths, 9],
      ['unknown', 0],
    ]);
    expect(said).toMatchObject({
      bleaches: 2,
      lastBleachMonthsAgo: 15,
      bleachReach: 'ends',
      growth: 'usual',
    });
    expect(said?.regrowthCm).toBeUndefined();
    const here = say(threeMonths, today).record.answers.hotTools;
    expect(here).toMatchObject({ bleaches: 3, lastBleachMonthsAgo: 3, bleachReach: 'unknown' });
    const yearsLater = say({ ...elsewhere, endedAtMs: startAtMs - 40 * 365 * day }, today);
    expect(yearsLater.record.answers.hotTools?.habits?.[0]?.forMonths).toBe(360);
  });

  it('calls a relaxer of just now gone only after two weeks: common practice, no source', () => {
    for (const before of ['yes', 'unknown'] as const) {
      const hotTools = { ...answers.hotTools, history: ['relaxer' as const], relaxedWithinTwoWeeks: before };
      const from = { ...last, endedAtMs: startAtMs, answers: { ...answers, hotTools } };
      const told = (nowMs: number) => say(from, today, nowMs).record.answers.hotTools?.relaxedWithinTwoWeeks;
      expect(told(startAtMs + 14 * day - 1)).toBe(before);
      expect(told(startAtMs + 14 * day)).toBe('no');
    }
  });

  it('leaves a question open that was never answered last time', () => {
    const { smoke: _smoke, ...hotTools } = answers.hotTools ?? {};
    const { record } = say({ ...last, answers: { ...answers, hotTools } }, today);
    expect(listOpenQuestions(record.answers, salon)).toContain('hotTools.smoke');
  });
});
