import type { RawEvent } from '../shared/records/classify';
import type { Settings } from '../shared/records/settings';

/** One tap of a story: so long after the one before it, by whom. */
export interface StoryStep {
  readonly afterMs: number;
  readonly by: string;
  readonly raw: RawEvent;
}

/** A client of the invented salon, from the first question to the closed record. Nobody in it is real. */
export interface Story {
  readonly title: string;
  readonly settings: Settings;
  readonly steps: readonly StoryStep[];
}
