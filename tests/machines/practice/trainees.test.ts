import { describe, expect, it } from 'vitest';
import { type Debrief, debrief } from '../../../machines/practice/debrief';
import type { Lesson } from '../../../machines/practice/lesson';
import { sitThrough as sit } from '../../../machines/practice/sitThrough';
import { lessons } from '../../../seeds/practice/lessons';
import { seed } from '../../shared/seeded';
import { careless, makeRandom, perfect, type Trainee } from './trainee';

/** Sittings of each lesson by each trainee; each has another draw. */
const SITTINGS = 2;

function score(lesson: Lesson, trainee: Trainee, sitting: number): Pick<Debrief, 'score' | 'decision'> {
  const sat = sit(lesson, trainee, sitting);
  const told = debrief(lesson, sat.practiceLog, sat.consultation.log, sat.settings);
  if (told === null) throw new Error(`${lesson.id} has no debrief`);
  expect(told.score).toBe(Math.round(Math.min(100, Math.max(0, told.score))));
  expect(debrief(lesson, sat.practiceLog, sat.consultation.log, sat.settings)).toEqual(told);
  return told;
}

const scores = lessons.map(({ lesson }, at) => ({
  id: lesson.id,
  sittings: Array.from({ length: SITTINGS }, (_, count) => {
    const sitting = seed + at * SITTINGS + count;
    const told = score(lesson, perfect, sitting);
    return {
      isRefused: told.decision.suggested === 'weSayNo',
      perfect: told.score,
      careless: score(lesson, careless, sitting).score,
      random: score(lesson, makeRandom(sitting), sitting).score,
    };
  }),
}));
const all = scores.flatMap(({ sittings }) => sittings);
type Who = 'perfect' | 'careless' | 'random';
const meanOf = (who: Who, sittings: typeof all): number =>
  sittings.reduce((sum, each) => sum + each[who], 0) / sittings.length;
const mean = (who: Who): number => meanOf(who, all);
/** Where she is to be refused, whoever taps anything may tap what refuses her: there chance is ahead of carelessness. */
const goOn = scores.filter(({ sittings }) => sittings.every(({ isRefused }) => !isRefused));

describe('a perfect, a careless and a random trainee', () => {
  it('score in that order, in the mean over all lessons', () => {
    console.info(`mean scores: ${mean('perfect')}, ${mean('careless')}, ${mean('random')}`);
    expect(mean('perfect')).toBeGreaterThan(mean('careless'));
    expect(mean('careless')).toBeGreaterThan(mean('random'));
  });

  it.each(goOn)('$id: and in each lesson of a client who is not to be refused', ({ sittings }) => {
    expect(meanOf('perfect', sittings)).toBeGreaterThan(meanOf('careless', sittings));
    expect(meanOf('careless', sittings)).toBeGreaterThan(meanOf('random', sittings));
  });

  it('play such lessons, and others', () => {
    expect(goOn.length).toBeGreaterThanOrEqual(6);
    expect(goOn.length).toBeLessThan(scores.length);
  });

  it.each(scores)('$id: whoever asks, looks and heeds is ahead of both, at every sitting', ({ sittings }) => {
    for (const each of sittings) {
      expect(each.perfect).toBe(100);
      expect(each.careless).toBeLessThan(each.perfect);
      expect(each.random).toBeLessThan(each.perfect);
    }
  });
});
