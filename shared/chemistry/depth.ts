import { accept, type Result, refuse } from '../result';
import { type Branded, brand } from '../units/brand';
import type { Volume } from './peroxide';

/** How light is it? 1 black … 10 lightest blond, in half steps. */
export type Level = Branded<'Level'>;

export const DARKEST_LEVEL = 1;
export const LIGHTEST_LEVEL = 10;

/** How finely an eye reads a level. common practice, no source: half a level. */
export const LEVEL_STEP = 0.5;

/** The undertone met on lightening, level 1 first. from memory: cosmetology textbooks. */
const undertones = [
  'darkRedBrown',
  'redBrown',
  'red',
  'redOrange',
  'orange',
  'goldOrange',
  'gold',
  'yellowGold',
  'yellow',
  'paleYellow',
] as const;
export type Undertone = (typeof undertones)[number];

/** Each tone and the one that neutralises it, both ways. from memory: cosmetology textbooks. */
const neutralisers = {
  violet: 'yellow',
  yellow: 'violet',
  blue: 'orange',
  orange: 'blue',
  green: 'red',
  red: 'green',
} as const;
export type Tone = keyof typeof neutralisers;

/** How many levels a developer lifts at least and at most. */
export interface Lift {
  readonly atLeast: number;
  readonly atMost: number;
}

/** Lift of tint on natural hair by the developer's volumes. common practice, no source. */
const liftByVolumes: ReadonlyMap<number, Lift> = new Map([
  [10, { atLeast: 0, atMost: 0 }],
  [20, { atLeast: 1, atMost: 2 }],
  [30, { atLeast: 2, atMost: 3 }],
  [40, { atLeast: 3, atMost: 4 }],
]);

/**
 * Is this a level?
 * From 1 to 10 in half steps; anything else, and what is no number, is refused.
 * Checked by tests/evidence/depth.test.ts.
 */
export function readLevel(value: number): Result<Level, 'notALevel'> {
  const isLevel = value >= DARKEST_LEVEL && value <= LIGHTEST_LEVEL && Number.isInteger(value / LEVEL_STEP);
  return isLevel ? accept(brand<Level>(value)) : refuse('notALevel');
}

/**
 * Which undertone shows when it is lifted to here?
 * Between two levels the darker one's, which asks for more neutralising. Checked by tests/evidence/depth.test.ts.
 */
export function findUndertone(level: Level): Undertone {
  const found = undertones[Math.floor(level) - DARKEST_LEVEL];
  if (found === undefined) throw new RangeError(`not a level: ${level}`);
  return found;
}

/** Which tone takes this one away? Violet and yellow, blue and orange, green and red. Checked by tests/evidence/depth.test.ts. */
export const findNeutraliser = (tone: Tone): Tone => neutralisers[tone];

/**
 * How many levels will this developer lift?
 * Tint on natural hair only: not lightener, and colour does not lift colour. Known for 10, 20, 30 and 40 vol; for any
 * other there is no figure. Checked by tests/evidence/depth.test.ts.
 */
export const findLift = (developer: Volume): Lift | undefined => liftByVolumes.get(developer);
