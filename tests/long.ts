/** Do the proofs run in their long form? `npm run prove -- NAME` says so; `npm test` takes the short one. */
export const isLong = process.env.LONG === '1';

/** How much is tried in this run: less in the short form of a proof, all of it in the long one. */
export const chooseSize = (short: number, long: number): number => (isLong ? long : short);

/** What a proof did in this run and, where that is not all, what its long form does and how that is called. */
export const tellShare = (name: string, did: string, longDoes: string): string =>
  isLong ? `${name}, the long form: ${did}` : `${name}: ${did}; npm run prove -- ${name} tries ${longDoes}`;
