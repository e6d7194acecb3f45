import type { Played } from '../playStory';
import type { TappedClient } from './tappedClient';

/** A way over the screen of one client: where it begins, and what is tapped there. */
export interface Way {
  readonly name: string;
  readonly start: () => Played;
  readonly tap: (client: TappedClient) => Promise<void>;
}
