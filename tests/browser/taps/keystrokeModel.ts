import { ASSUMED_HOLD_MS } from '../../../src/parts/hold';

/**
 * How long does somebody who knows the station need? The keystroke-level model: Card, Moran & Newell, Commun. ACM
 * 23:396–410, 1980, in seconds, for somebody who makes no mistake. What the client takes to answer is not in it.
 */
export const operators = {
  /** published: figure 1 there: a key pressed by an average typist who is no secretary (40 words a minute). */
  K: 0.28,
  /** published: figure 1 there: pointing at a target on a display, on average. */
  P: 1.1,
  /** published: figure 1 there: preparing mentally for what is done next. */
  M: 1.35,
} as const;

/**
 * A tap is one P: the finger that lands has pressed, so the press of a button (K) that follows pointing with a mouse
 * falls away; and no H, since the hand that points never leaves for another device. Assumed because nothing in the
 * paper speaks of touch.
 */
export const ASSUMED_TAP_S = operators.P;

/** What a hand did: fingers landed, of these rested for a hold, keys typed; and what had to be thought of anew. */
export interface Done {
  readonly taps: number;
  readonly holds: number;
  readonly keys: number;
  readonly thoughts: number;
}

/** Every contact counts: a tap, a hold, each key. */
export const countContacts = ({ taps, keys }: Done): number => taps + keys;

/** In seconds; R, the station's own answer, is 0: it has drawn before a finger lands again. */
export const modelTime = ({ taps, holds, keys, thoughts }: Done): number =>
  taps * ASSUMED_TAP_S + holds * (ASSUMED_HOLD_MS / 1000) + keys * operators.K + thoughts * operators.M;

/** The same with nothing assumed in the station's favour: each tap a P and a K, and a thought before each. */
export const cautiousTime = ({ taps, holds, keys }: Done): number =>
  taps * (operators.P + operators.K + operators.M) + holds * (ASSUMED_HOLD_MS / 1000) + keys * operators.K;
