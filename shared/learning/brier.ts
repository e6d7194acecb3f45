/** A chance that was said before, from 0 to 1, and what came. */
export interface Said {
  readonly chance: number;
  readonly hasBroken: boolean;
}

/** Brier's score in three parts: score = unreliable − resolved + uncertain. */
export interface BrierParts {
  /** How far what was said lies from what was seen, among strands of which the same was said. Less is better. */
  readonly unreliable: number;
  /** How far what was seen differs from the base rate where different things were said. More is better. */
  readonly resolved: number;
  /** The score of always saying the base rate: what cannot be helped. */
  readonly uncertain: number;
}

const square = (value: number): number => value * value;

const mean = (values: readonly number[]): number =>
  values.length === 0 ? 0 : values.reduce((sum, each) => sum + each, 0) / values.length;

const seen = ({ hasBroken }: Said): number => (hasBroken ? 1 : 0);

/** How many of them broke, as a share; 0 of none. */
export const findBaseRate = (all: readonly Said[]): number => mean(all.map(seen));

/**
 * How far off was what was said, all in all? The mean of the squared misses (published: Brier, Mon. Weather Rev. 78:1–3,
 * 1950, for two outcomes, counted once): 0 is always right and sure, 1 always wrong and sure, 0.25 always fifty-fifty.
 * Checked by hand in tests/shared/learning/brier.test.ts.
 */
export const scoreBrier = (all: readonly Said[]): number =>
  mean(all.map((each) => square(each.chance - seen(each))));

/**
 * What is the score made of? Murphy's three parts (from memory: Murphy, J. Appl. Meteorol. 12:595–600, 1973), grouped by
 * the very figure that was said: then they add up exactly. Checked as scoreBrier.
 */
export function splitBrier(all: readonly Said[]): BrierParts {
  const baseRate = findBaseRate(all);
  const groups = new Map<number, Said[]>();
  for (const each of all) groups.set(each.chance, [...(groups.get(each.chance) ?? []), each]);
  const weigh = (of: (chance: number, rate: number) => number): number =>
    [...groups].reduce(
      (sum, [chance, group]) => sum + (group.length / all.length) * of(chance, findBaseRate(group)),
      0,
    );
  return {
    unreliable: weigh((chance, rate) => square(chance - rate)),
    resolved: weigh((_, rate) => square(rate - baseRate)),
    uncertain: baseRate * (1 - baseRate),
  };
}
