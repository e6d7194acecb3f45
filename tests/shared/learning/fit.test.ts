import 'fmin';
import { describe, expect, it } from 'vitest';
import { fitLessons } from '../../../shared/learning/fit';
import { priorBelief } from '../../../shared/learning/learnt';
import { type Lesson, weighCoefficients } from '../../../shared/learning/posterior';
import { makeSalon } from './simulated';

const nothingBelieved = { means: [0, 0], precisions: [0, 0] };
const lesson = (at: number, hasBroken: boolean): Lesson => ({ x: [1, at], hasBroken });

/**
 * The same top, looked for without curvature: conjugate gradients in coordinates stretched by the prior's spread. fmin
 * ends at slopes of 1e-5, so it is sent on from there on a hill a hundred times as steep, which ends at 1e-7; the prior
 * alone bends the hill by one, so it is then no further than that from the top.
 */
function climbByFmin(lessons: readonly Lesson[]): readonly number[] {
  const { means, precisions } = priorBelief;
  const unstretch = (z: readonly number[]) =>
    z.map((each, at) => (means[at] ?? 0) + each / Math.sqrt(precisions[at] ?? 1));
  const climb = (from: readonly number[], steep: number): readonly number[] =>
    fmin.conjugateGradient(
      (z, slopes) => {
        const { logPosterior, gradient } = weighCoefficients(lessons, priorBelief, unstretch(z));
        for (const [at, each] of gradient.entries())
          slopes[at] = (-steep * each) / Math.sqrt(precisions[at] ?? 1);
        return -steep * logPosterior;
      },
      from,
      { maxIterations: 200 },
    ).x;
  const start = means.map(() => 0);
  return unstretch(climb(climb(start, 1), 100));
}

describe('the fit', () => {
  it.each([
    [1, 5],
    [2, 60],
    [3, 500],
  ])('ends where an independent optimiser ends, to 1e-6: salon %i, %i strands', (seed, count) => {
    const lessons = makeSalon(seed).listStrands(count);
    const fitted = fitLessons(lessons, priorBelief);
    if (!fitted.ok) throw new Error(fitted.error);
    const found = climbByFmin(lessons);
    const off = Math.max(...fitted.value.means.map((mean, at) => Math.abs(mean - (found[at] ?? 0))));
    const slope = Math.max(
      ...weighCoefficients(lessons, priorBelief, fitted.value.means).gradient.map(Math.abs),
    );
    console.info(
      `salon ${seed}, ${count} strands: ${fitted.value.steps} steps; fmin ends ${off.toExponential(1)} away; steepest slope ${slope.toExponential(1)}`,
    );
    expect(off).toBeLessThan(1e-6);
    expect(slope).toBeLessThan(1e-6);
  });

  it('has the slopes and curvature that differences show', () => {
    const lessons = makeSalon(5).listStrands(50);
    const means = priorBelief.means.map((mean, at) => mean + 0.1 * Math.sin(at));
    const at = (index: number, by: number) =>
      weighCoefficients(
        lessons,
        priorBelief,
        means.map((mean, place) => (place === index ? mean + by : mean)),
      );
    const here = at(0, 0);
    const h = 1e-5;
    for (const index of means.keys()) {
      const [more, less] = [at(index, h), at(index, -h)];
      expect((more.logPosterior - less.logPosterior) / (2 * h)).toBeCloseTo(here.gradient[index] ?? 0, 5);
      for (let column = 0; column <= index; column += 1) {
        const bent = ((less.gradient[column] ?? 0) - (more.gradient[column] ?? 0)) / (2 * h);
        expect(bent).toBeCloseTo(here.curvature[index]?.[column] ?? 0, 5);
      }
    }
  });

  it('stays with what was believed where there are no lessons', () => {
    const fitted = fitLessons([], priorBelief);
    expect(fitted).toMatchObject({ ok: true, value: { means: priorBelief.means, steps: 0 } });
  });

  it('comes to the same from afar, where a whole step would lead down', () => {
    const lessons = makeSalon(6).listStrands(300);
    const [near, far] = [priorBelief.means, priorBelief.means.map(() => 6)].map((start) =>
      fitLessons(lessons, priorBelief, start),
    );
    if (!near?.ok || !far?.ok) throw new Error('no fit');
    for (const [at, mean] of near.value.means.entries()) expect(far.value.means[at]).toBeCloseTo(mean, 8);
  });

  it('says that there is none where nothing is believed and the lessons can be told apart without a fault', () => {
    const apart = [lesson(0, false), lesson(1, false), lesson(2, true), lesson(3, true)];
    expect(fitLessons(apart, nothingBelieved)).toEqual({ ok: false, error: 'noFit' });
    expect(fitLessons([], nothingBelieved)).toEqual({ ok: false, error: 'noFit' });
    expect(fitLessons([lesson(Number.NaN, true)], nothingBelieved)).toEqual({ ok: false, error: 'noFit' });
  });
});
