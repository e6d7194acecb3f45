/** The steps that ask the client and her hair, in order. */
export const askSteps = ['client', 'hotTools', 'feelHair', 'heatSpray'] as const;
export type AskStep = (typeof askSteps)[number];

/** The whole way in order: what the strand rail draws. The knot lies between `decision` and `mix`. */
export const waySteps = [...askSteps, 'strandTest', 'decision', 'mix', 'colourOn', 'finish'] as const;
export type WayStep = (typeof waySteps)[number];

/** Steps one can go back to. Going back always passes the strand test again. */
export const backSteps = [...askSteps, 'strandTest', 'decision'] as const;
export type BackStep = (typeof backSteps)[number];

/** What an absolute stop was answered to, and what a named correction takes back. */
export const correctables = [...askSteps, 'skinTest', 'incompatibility', 'inherited'] as const;
export type Correctable = (typeof correctables)[number];

/** Is `earlier` before `later` on the way? */
export const isEarlierStep = (earlier: WayStep, later: WayStep): boolean =>
  waySteps.indexOf(earlier) < waySteps.indexOf(later);
