import type { Page } from 'playwright-core';
import type { Logs } from '../memory';
import type { SceneHand } from './sceneHand';

/** In which of these can a screen be met? */
export type SceneState = 'empty' | 'usual' | 'full' | 'error';

/** One screen as somebody meets it: what stands in the store, what the clock says, and the taps that lead there. */
export interface Scene {
  readonly logs: () => Logs;
  /** What the tablet's clock stands at, where it is not `nowMs` of clients.ts. */
  readonly atMs?: number;
  /** Done in the page before the station is opened, such as a store that does not answer. */
  readonly harm?: (page: Page) => Promise<unknown>;
  /** From the bar on. */
  readonly go?: (hand: SceneHand) => Promise<void>;
  /** What stands on the screen then; anything else is not this scene. */
  readonly shows: string;
}

/** The scenes of one screen; in words, why a state of it cannot be met. */
export type ScenesOf = Readonly<Record<SceneState, Scene | string>> & {
  /** What else it can show, by name. */
  readonly also?: Readonly<Record<string, Scene>>;
};
