import { bench, describe } from 'vitest';
import { learn } from '../../shared/learning/learnt';
import { teach } from '../../shared/learning/teach';
import { makeSalon } from '../shared/learning/simulated';

const listDays = (count: number) =>
  makeSalon(20_261_127)
    .listStrands(count)
    .map((lesson, at) => ({ ...lesson, day: Math.floor(at / 8) }));
const year = listDays(2_000);
const tenYears = listDays(20_000);

/** One fit of 2,000 strands; the same with the newest thousand foreseen day by day, eight a day; the latter of 20,000. */
describe('learning', () => {
  bench('one fit of 2,000 strands', () => void learn(year), { time: 1_000 });
  bench('what 2,000 strands taught', () => void teach(year), { time: 1_000, iterations: 3 });
  bench('what 20,000 strands taught', () => void teach(tenYears), { time: 1_000, iterations: 1 });
});
