import { describe, expect, it } from 'vitest';
import { type BenchCourse, findBenchStage, isBenchDue } from '../../../shared/hair/benchTrial';

const minute = 60_000;
const hour = 60 * minute;
const boil: BenchCourse = { kind: 'boilSet', startedAtMs: 0, outAtMs: null, isRead: false };
const out: BenchCourse = { ...boil, outAtMs: 31 * minute };

describe('a boil set', () => {
  it.each([
    ['boiling', boil, 30 * minute - 1, 30 * minute],
    ['boiled', boil, 30 * minute, 30 * minute],
    ['boiled', boil, 20 * hour, 30 * minute],
    ['drying', out, 31 * minute + 24 * hour - 1, 31 * minute + 24 * hour],
    ['readable', out, 31 * minute + 24 * hour, 31 * minute + 48 * hour],
    ['readable', out, 31 * minute + 48 * hour, 31 * minute + 48 * hour],
    ['late', out, 31 * minute + 48 * hour + 1, 31 * minute + 48 * hour],
  ] as const)('is %s', (stage, course, nowMs, dueAtMs) => {
    expect(findBenchStage(course, nowMs)).toEqual({ stage, dueAtMs });
  });
});

describe('dry against wet', () => {
  const course: BenchCourse = { ...boil, kind: 'dryWet' };
  it('cools for ten minutes, and is read then, however late', () => {
    expect(findBenchStage(course, 10 * minute - 1).stage).toBe('cooling');
    expect(findBenchStage(course, 10 * minute).stage).toBe('readable');
    expect(findBenchStage(course, 100 * hour).stage).toBe('readable');
  });
});

describe('what is to be done', () => {
  it('is done with once it was read', () => {
    expect(findBenchStage({ ...out, isRead: true }, 30 * hour)).toEqual({ stage: 'read', dueAtMs: null });
  });

  it('is due where somebody has to do something now', () => {
    const stages = ['boiling', 'boiled', 'drying', 'cooling', 'readable', 'late', 'read'] as const;
    expect(stages.filter(isBenchDue)).toEqual(['boiled', 'readable', 'late']);
  });
});
