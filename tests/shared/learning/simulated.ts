import { covariateNames } from '../../../shared/judgement/chance/covariates';
import { priorMeans, priorSds } from '../../../shared/judgement/chance/prior';
import { addUp, type Lesson, toShare } from '../../../shared/learning/posterior';
import { makeChance } from '../../browser/chance';

/** How often a thing is told at all among clients, in the order of the names: our own, for a made-up salon. */
const told: Readonly<Record<(typeof covariateNames)[number], number>> = {
  helixLost: 1,
  tryptophanLost: 1,
  ironedWet: 0.35,
  scorched: 0.15,
  bleaches: 0.4,
  curlLost: 0.25,
  slowStretch: 0.2,
  porous: 0.3,
  breakage: 0.2,
  veryHot: 0.3,
  smoothing: 0.1,
  relaxer: 0.1,
  strangeColour: 0.1,
};
const steps = [0.25, 0.5, 0.6, 0.75, 1, 1];

/** A salon of its own truth, drawn from what is assumed, and as many of its strands as are asked for. */
export function makeSalon(seed: number) {
  const { draw } = makeChance(seed);
  const bell = (): number => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
  const truth = priorMeans.map((mean, at) => mean + (priorSds[at] ?? 0) * bell());
  const drawHair = (): readonly number[] => {
    const heat = draw();
    return [
      1,
      ...covariateNames.map((name) => {
        if (name === 'helixLost') return heat * heat;
        if (name === 'tryptophanLost') return Math.min(1, heat * (0.6 + 0.6 * draw()));
        return draw() < told[name] ? (steps[Math.floor(draw() * steps.length)] ?? 1) : 0;
      }),
    ];
  };
  const test = (x: readonly number[]): Lesson => ({ x, hasBroken: draw() < toShare(addUp(x, truth)) });
  return {
    truth,
    drawHair,
    listStrands: (count: number): readonly Lesson[] => Array.from({ length: count }, () => test(drawHair())),
  };
}
