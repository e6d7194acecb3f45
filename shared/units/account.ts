import type { Range } from './range';

/**
 * Three accounts of the same thing: everything that is not known taken so that it did the least, as most likely, and the
 * most. Each account is plain arithmetic, so the three ends of a band come from one formula.
 */
export const accounts = ['least', 'typical', 'most'] as const;
export type Account = (typeof accounts)[number];

const endOf = { least: 'low', typical: 'typical', most: 'high' } as const;
const otherEndOf = { least: 'high', typical: 'typical', most: 'low' } as const;

/** The end of what does more when there is more of it. */
export const pick = <N extends number>(range: Range<N>, account: Account): N => range[endOf[account]];

/** The end of what does less when there is more of it: how fast hair grows, how long it is. */
export const pickOther = <N extends number>(range: Range<N>, account: Account): N =>
  range[otherEndOf[account]];
