import { describe, expect, it } from 'vitest';
import { holdBack, learn } from '../../../shared/learning/learnt';
import { addUp, toShare } from '../../../shared/learning/posterior';
import { type DatedLesson, teach } from '../../../shared/learning/teach';
import { makeSalon } from './simulated';

/** Three strands a day. */
const listDays = (seed: number, count: number): readonly DatedLesson[] =>
  makeSalon(seed)
    .listStrands(count)
    .map((lesson, at) => ({ ...lesson, day: Math.floor(at / 3) }));

const mustTeach = (lessons: readonly DatedLesson[], lookBack?: number) => {
  const taught = teach(lessons, lookBack);
  if (!taught.ok) throw new Error(taught.error);
  return taught.value;
};

describe('what strands taught', () => {
  it('is the fit of all of them', () => {
    const lessons = listDays(1, 100);
    const all = learn(lessons);
    const { learnt } = mustTeach(lessons);
    expect(learnt.strands).toBe(100);
    for (const [at, mean] of learnt.coefficients.means.entries()) {
      expect(mean).toBeCloseTo((all.ok && all.value.coefficients.means[at]) || 0, 8);
    }
  });

  it('foresees each strand from the days before it, as on its morning', () => {
    const lessons = listDays(2, 60);
    const { foreseen } = mustTeach(lessons);
    expect(foreseen.map(({ hasBroken }) => hasBroken)).toEqual(lessons.map(({ hasBroken }) => hasBroken));
    for (const at of [0, 2, 3, 31, 59]) {
      const { x = [], day = 0 } = lessons[at] ?? {};
      const before = learn(lessons.slice(0, 3 * day));
      const means = before.ok ? before.value.coefficients.means : [];
      const { assumed = 0, learnt } = foreseen[at] ?? {};
      expect(learnt).toBeCloseTo(holdBack(assumed, toShare(addUp(x, means)), 3 * day), 9);
    }
    expect(foreseen[0]?.learnt).toBe(foreseen[0]?.assumed);
  });

  it('foresees none by itself or by what came later', () => {
    const lessons = listDays(3, 30);
    const other = lessons.map((lesson, at) =>
      at < 24 ? lesson : { ...lesson, hasBroken: !lesson.hasBroken },
    );
    const say = (all: readonly DatedLesson[]) =>
      mustTeach(all)
        .foreseen.slice(0, 27)
        .map(({ learnt }) => learnt);
    expect(say(other)).toEqual(say(lessons));
  });

  it('looks back at the newest alone, and foresees them as if it looked at all', () => {
    const lessons = listDays(4, 50);
    const [some, all] = [mustTeach(lessons, 10), mustTeach(lessons)];
    expect(some.foreseen).toHaveLength(10);
    for (const [at, { learnt }] of some.foreseen.entries()) {
      expect(learnt).toBeCloseTo(all.foreseen[40 + at]?.learnt ?? 0, 9);
    }
  });

  it('is nothing of no strands, and refuses what is no number', () => {
    expect(mustTeach([]).foreseen).toEqual([]);
    expect(mustTeach([]).learnt.strands).toBe(0);
    expect(teach([{ x: [Number.NaN], hasBroken: true, day: 1 }]).ok).toBe(false);
  });
});
