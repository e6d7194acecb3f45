import type { Call } from './call';

/** Somebody waits: at which clock, for what, and since when. */
export type Waiting = Pick<Call, 'clock' | 'why' | 'waitsSinceMs'>;

/** What is on a head is said so; all else is a strand or a glass. The first goes first. */
const order: readonly string[] = [
  'overrun of a head',
  'end of a head',
  'overrun',
  'basin of a head',
  'end',
  'look of a head',
  'look',
];

const rankOf = ({ clock, why }: Waiting): number =>
  order.indexOf(clock.kind === 'head' ? `${why} of a head` : why);

/**
 * To whom does somebody go first? To a head that is over or at its end before any strand, since there it is skin; then by
 * what it is for, the gravest first, and of the same a head first; of those who wait for the same to the one who waits
 * longest. The sound, the strip of the bar and the line above the actions all ask here.
 * Checked in tests/shared/records/whoFirst.test.ts.
 */
export const compareWaiting = (one: Waiting, other: Waiting): number =>
  rankOf(one) - rankOf(other) || one.waitsSinceMs - other.waitsSinceMs;
