import fc, { type IProperty } from 'fast-check';

/** The seed of this run: `SEED=… npx vitest run …` repeats or varies it. */
export const seed = Number(process.env.SEED ?? 20_261_125);
console.info(`fast-check seed ${seed}`);

/** Asserts a property over many seeded cases; a failure prints the seed, the path and the smallest case. */
export const holds = <Case>(property: IProperty<Case>, numRuns = 500): void =>
  fc.assert(property, { seed, numRuns });

/** A finite number from `min` to `max`. */
export const numberBetween = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
