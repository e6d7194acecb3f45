import { createSignal } from 'solid-js';
import { priorCoefficients, priorMeans } from '../../../../shared/judgement/chance/prior';
import type { LearningInUse, Taught } from '../../../../src/station/learning/createLearning';

/** Strands that taught: so many, of which every third broke; the base moved by so much. */
export const taughtBy = (strands: number, baseBy = 0): Taught => ({
  kind: 'taught',
  what: {
    learnt: {
      coefficients: {
        ...priorCoefficients,
        means: priorMeans.map((mean, at) => (at === 0 ? mean + baseBy : mean)),
      },
      strands,
    },
    foreseen: Array.from({ length: strands }, (_, at) => ({
      assumed: at % 3 === 0 ? 0.4 : 0.1,
      learnt: at % 3 === 0 ? 0.6 : 0.15,
      hasBroken: at % 3 === 0,
    })),
  },
});

/** What was learned, as a test says it; and how often it was asked for anew. */
export function layLearning(first: Taught) {
  const [taught, setTaught] = createSignal(first);
  const asked = { again: 0 };
  const learning: LearningInUse = {
    taught,
    learnAgain: () => {
      asked.again += 1;
    },
  };
  return { learning, setTaught, asked };
}
