import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { LastTime } from '../../../shared/records/lastTime';
import { type AskedToday, findOwnChemistry, tellNothingNew } from '../../../shared/records/nothingNew';
import { listOpenQuestions } from './openQuestions';
import { andThen, day, nothing, startAtMs, story, type Told, tell } from './telling';

const { answers } = tell(story).record;
const last: LastTime = {
  id: 'done0001',
  endedAtMs: 1,
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
