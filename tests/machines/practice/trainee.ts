import { asSeen, perfect, type Trainee } from '../../../machines/practice/perfectTrainee';
import type { LessonStory } from '../../../seeds/practice/lessonSeed';
import { decisions } from '../../../shared/judgement/decisions';
import type { Question } from '../../../shared/records/form';
import type { Raw } from '../../../shared/records/readForm';
import { makeChance } from '../../browser/chance';

export { perfect, type Trainee };

/** Takes every first answer and every word for it, looks at nothing, and lifts whatever would stop. */
export const careless: Trainee = {
  ...asSeen,
  asksCloser: () => false,
  finishes: (asked) => asked,
  looks: false,
  reads: () => 'nothing',
  lifts: () => true,
  decides: (suggested) => suggested,
};

/** Goes through a lesson as its story tells it. */
export const follow = ({ asksCloser, decides, liftsStops, finishesAsAsked }: LessonStory): Trainee => ({
  ...perfect,
  asksCloser: (path) => asksCloser === 'all' || asksCloser.includes(path),
  reads: (seen) => (asksCloser === 'all' ? seen : 'nothing'),
  lifts: () => liftsStops === true,
  finishes: finishesAsAsked === true ? careless.finishes : perfect.finishes,
  decides: (suggested) => (decides === 'asSuggested' || suggested === 'testAgain' ? suggested : decides),
});

/** Writes, tells, lifts and decides whatever comes. */
export function makeRandom(seed: number): Trainee {
  const { draw, pick } = makeChance(seed);
  const isHeads = (): boolean => draw() < 0.5;
  const writeAny = (question: Question, heard: Raw): Raw => {
    if (question.kind === 'choice') return pick(question.options);
    if (question.kind === 'choices') return [pick(question.options)];
    return question.kind === 'number' && question.unknown === true && isHeads() ? 'unknown' : heard;
  };
  return {
    asksCloser: isHeads,
    // Three answers in four: or hardly any step would ever be said whole.
    writes: (question, heard) => (draw() < 0.75 ? writeAny(question, heard) : heard),
    finishes: (asked) => asked,
    looks: isHeads(),
    place: isHeads() ? 'nape' : null,
    reads: (seen) => (isHeads() ? seen : pick(['nothing', 'reaction'])),
    lifts: isHeads,
    tells: (sight) => ({ ...sight, fibre: pick(['sound', 'rough', 'gummy', 'broken']) }),
    decides: () => pick(decisions),
  };
}
