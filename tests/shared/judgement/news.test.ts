import { describe, expect, it } from 'vitest';
import { findNews, type NewThing, newThings } from '../../../shared/judgement/news';
import type { Answers } from '../../../shared/records/forms/asked';
import { last } from '../records/returning';

const { answers } = last;
type Step = keyof Answers;
const say = (step: Step, change: object): Answers => ({
  ...answers,
  [step]: { ...answers[step], ...change },
});
const [habit] = answers.hotTools?.habits ?? [];
if (habit === undefined) throw new Error('no tool last time');
const tools = (...habits: readonly object[]): Answers => say('hotTools', { habits });
const withHistory = (...history: readonly string[]): Answers =>
  say('hotTools', { history: ['salonColour', ...history] });

/** What is new, and what beside it is not. */
const cases: Readonly<Record<NewThing, readonly [news: readonly Answers[], nothing: readonly Answers[]]>> = {
  plan: [
    [
      say('client', { targetLevel: 7 }),
      say('client', { length: 'waist' }),
      say('client', { service: 'tone' }),
    ],
    [say('client', { greyPercent: 50 }), say('client', { reactions: ['tingled'] })],
  ],
  tool: [
    [tools({ ...habit, tool: 'wand' }), tools(habit, habit)],
    [tools(), tools(habit)],
  ],
  hotter: [
    [
      tools({ ...habit, settingC: habit.settingC === 'unknown' ? 0 : habit.settingC + 1 }),
      tools({ ...habit, settingC: 'unknown' }),
    ],
    [tools({ ...habit, settingC: 100 }), tools({ ...habit, forMonths: 14 })],
  ],
  wetter: [
    [tools({ ...habit, wetness: 'damp' }), tools({ ...habit, wetness: 'unknown' })],
    [tools({ ...habit, wetness: 'dry' })],
  ],
  oftener: [
    [tools({ ...habit, daysAWeek: 3 }), tools({ ...habit, secondsASection: 61 })],
    [tools({ ...habit, daysAWeek: 1 }), tools({ ...habit, secondsASection: 10 })],
  ],
  smoke: [
    [say('hotTools', { smoke: 'smellsBurnt' }), say('hotTools', { smoke: 'unknown' })],
    [say('hotTools', { spray: 'always' })],
  ],
  chemical: [
    [withHistory('henna'), withHistory('poolWater'), say('hotTools', { history: ['unknown'] })],
    // The gloss of last time was this salon's own.
    [withHistory('gloss'), say('hotTools', { history: ['none'] })],
  ],
  bleach: [
    [say('hotTools', { bleaches: 1 }), say('hotTools', { bleaches: 'unknown' })],
    [say('hotTools', { bleaches: 0 })],
  ],
  relaxed: [
    [
      say('hotTools', { relaxedWithinTwoWeeks: 'yes' }),
      say('hotTools', { relaxedWithinTwoWeeks: 'unknown' }),
    ],
    [say('hotTools', { relaxedWithinTwoWeeks: 'no' })],
  ],
  hair: [
    [
      say('feelHair', { porosity: 'high' }),
      say('feelHair', { curl: 'lostAtEnds' }),
      say('feelHair', { breakage: 'unknown' }),
    ],
    [say('feelHair', { porosity: 'low' }), say('feelHair', { curl: 'sameAlong' })],
  ],
};

describe('what is new since last time', () => {
  it('is nothing when all is as it was told then', () => expect(findNews(last, answers)).toEqual([]));

  it.each(newThings)('%s is found, and nothing beside it', (thing) => {
    const [news, nothing] = cases[thing];
    for (const today of news) expect(findNews(last, today)).toEqual([thing]);
    for (const today of nothing) expect(findNews(last, today)).toEqual([]);
  });

  it('is not new when it was as bad, or as little known, last time', () => {
    const bad = {
      settingC: 'unknown',
      wetness: 'unknown',
      daysAWeek: 'unknown',
      secondsASection: 'unknown',
    } as const;
    const then = { ...last, answers: tools({ ...habit, ...bad }) };
    expect(findNews(then, then.answers)).toEqual([]);
    expect(findNews(then, answers)).toEqual([]);
    const lost = { ...last, answers: say('feelHair', { curl: 'lostAtEnds', porosity: 'high' }) };
    expect(findNews(lost, lost.answers)).toEqual([]);
  });

  it('compares each tool with the one it is closest to', () => {
    const then = { ...last, answers: tools({ ...habit, wetness: 'wet' }, habit) };
    expect(findNews(then, tools(habit, { ...habit, wetness: 'wet' }))).toEqual([]);
    expect(findNews(then, tools({ ...habit, wetness: 'wet' }, habit))).toEqual([]);
    expect(findNews(then, tools({ ...habit, wetness: 'wet' }, { ...habit, wetness: 'wet' }))).toEqual([
      'wetter',
    ]);
  });
});

describe('times counted back', () => {
  const from = (hotTools: object) => ({
    ...last,
    answers: { ...answers, hotTools: { ...answers.hotTools, ...hotTools } },
  });
  const findAfter = (then: object, now: object) => findNews(from(then), say('hotTools', { ...then, ...now }));

  it('are news where she took up again what she had stopped, and none where she stopped', () => {
    const stopped = (stoppedMonthsAgo: number | 'unknown') => ({ habits: [{ ...habit, stoppedMonthsAgo }] });
    expect(findAfter(stopped(36), stopped(0))).toEqual(['oftener']);
    expect(findAfter(stopped(36), stopped('unknown'))).toEqual(['oftener']);
    expect(findAfter(stopped(36), stopped(38))).toEqual([]);
    expect(findAfter(stopped(0), stopped(2))).toEqual([]);
    expect(findAfter(stopped('unknown'), stopped(0))).toEqual([]);
  });

  it('and a bleach since then, or a wider one, are news though the count stands', () => {
    const told = {
      history: ['lightener'],
      bleaches: 'unknown',
      lastBleachMonthsAgo: 24,
      bleachReach: 'ends',
    };
    expect(findAfter(told, { lastBleachMonthsAgo: 0 })).toEqual(['bleach']);
    expect(findAfter(told, { lastBleachMonthsAgo: 'unknown' })).toEqual(['bleach']);
    expect(findAfter(told, { bleachReach: 'all' })).toEqual(['bleach']);
    expect(findAfter(told, { bleachReach: 'unknown' })).toEqual(['bleach']);
    expect(findAfter(told, { lastBleachMonthsAgo: 26 })).toEqual([]);
    expect(findAfter(told, { bleachReach: 'band' })).toEqual([]);
  });
});
