import { describe, expect, it } from 'vitest';
import { debrief } from '../../../machines/practice/debrief';
import type { Flag, FlagId } from '../../../machines/practice/lesson';
import { sitThrough as sit } from '../../../machines/practice/sitThrough';
import {
  ASSUMED_MISSES_NAMED,
  type SittingTold,
  type ToldInShort,
  tellTrainees,
} from '../../../machines/practice/tellTrainees';
import { lessons } from '../../../seeds/practice/lessons';
import { careless, perfect, type Trainee } from './trainee';

const flagOf = (id: FlagId): Flag => ({ id, asks: [], why: `why ${id}`, mark: 'common practice, no source' });
/** A debrief with these flags, seen or missed. */
const toldOf = (
  flags: Readonly<Partial<Record<FlagId, 'seen' | 'hinted' | 'missed'>>>,
  rest: Partial<ToldInShort> = {},
): ToldInShort => ({
  isPassed: !Object.values(flags).includes('missed'),
  score: 70,
  failedBy: Object.values(flags).includes('missed') ? ['flagMissed'] : [],
  flagsDue: Object.entries(flags).map(([id, how]) => ({
    flag: flagOf(id as FlagId),
    isAbsolute: false,
    how,
  })),
  decision: { stops: [] },
  map: { true: { answers: {} } },
  ...rest,
});
let count = 0;
const sitting = (told: ToldInShort | null, rest: Partial<SittingTold> = {}): SittingTold => {
  count += 1;
  return {
    id: `sitting${count}`,
    lessonId: 'safeClient',
    title: 'A good question',
    by: 'Opal',
    beganAtMs: count * 60_000,
    isExam: false,
    ended: 'finished',
    told,
    ...rest,
  };
};
const played = (id: string, trainee: Trainee): SittingTold => {
  const lesson = lessons.find((each) => each.lesson.id === id)?.lesson;
  if (lesson === undefined) throw new Error(`no lesson ${id}`);
  const sat = sit(lesson, trainee, 7);
  const told = debrief(lesson, sat.practiceLog, sat.consultation.log, sat.settings);
  return sitting(told, { lessonId: id, title: lesson.title });
};

describe('who did which lesson', () => {
  it('is told the newest first, passed or not, with score, failings and flags missed', () => {
    const { rows } = tellTrainees([
      sitting(toldOf({ breakage: 'seen' }), { id: 'first' }),
      sitting(toldOf({ breakage: 'missed', scorched: 'hinted' }), { id: 'second', isExam: true }),
    ]);
    expect(
      rows.map(({ id, result, score, failedBy, missed }) => [id, result, score, failedBy, missed]),
    ).toEqual([
      ['second', 'notPassed', 70, ['flagMissed'], ['breakage']],
      ['first', 'passed', 70, [], []],
    ]);
  });

  it('says nothing of what was left off, is under way or cannot be told', () => {
    const missed = toldOf({ breakage: 'missed' });
    const told = tellTrainees([
      sitting(missed, { ended: 'leftOff' }),
      sitting(null, { ended: null }),
      sitting(null, { title: null }),
    ]);
    expect(told.rows.map(({ result, score, missed: flags }) => [result, score, flags])).toEqual([
      ['notTold', null, []],
      ['underWay', null, []],
      ['leftOff', null, []],
    ]);
    expect(told.misses).toEqual([]);
  });
});

describe('what is missed most', () => {
  it('counts a flag by the sittings that had it, the most missed first', () => {
    const { misses } = tellTrainees([
      sitting(toldOf({ breakage: 'missed', scorched: 'missed' })),
      sitting(toldOf({ breakage: 'missed', scorched: 'seen' })),
      sitting(toldOf({ scorched: 'hinted' })),
      sitting(toldOf({})),
    ]);
    expect(misses.map((miss) => [miss.kind === 'flag' ? miss.flag.id : '', miss.missed, miss.of])).toEqual([
      ['breakage', 2, 2],
      ['scorched', 1, 3],
    ]);
  });

  it('counts a failing by the sittings that could be failed by it', () => {
    const stops = { decision: { stops: ['stop.blackTattoo'] } } as const;
    const { misses } = tellTrainees([
      sitting(toldOf({}, { ...stops, failedBy: ['stopMissed', 'decision'], isPassed: false })),
      sitting(toldOf({}, stops)),
      sitting(toldOf({})),
    ]);
    expect(misses).toEqual([
      { kind: 'failing', failing: 'stopMissed', missed: 1, of: 2 },
      { kind: 'failing', failing: 'decision', missed: 1, of: 3 },
    ]);
  });

  it('names a handful, and counts the rest', () => {
    const ids = ['ironedWet', 'scorched', 'bleachedTwice', 'curlLost', 'slowStretch', 'breakage', 'veryHot'];
    const told = tellTrainees([sitting(toldOf(Object.fromEntries(ids.map((id) => [id, 'missed']))))]);
    expect(told.misses).toHaveLength(ASSUMED_MISSES_NAMED);
    expect(told.furtherMisses).toBe(ids.length - ASSUMED_MISSES_NAMED);
  });

  it('is nothing of who asks, looks and heeds, and something of who takes every word', () => {
    const well = tellTrainees([played('wetIronedCurls', perfect)]);
    expect(well.rows.map(({ result, score, missed }) => [result, score, missed])).toEqual([
      ['passed', 100, []],
    ]);
    expect(well.misses).toEqual([]);
    const ill = tellTrainees([played('wetIronedCurls', careless)]);
    expect(ill.rows.map(({ result }) => result)).toEqual(['notPassed']);
    expect(ill.misses.length).toBeGreaterThan(0);
    for (const { missed, of } of ill.misses) expect([missed, of]).toEqual([1, 1]);
  });
});
