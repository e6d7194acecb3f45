/** "1 day", "2 days", "0.5 days": how many of a thing whose plural takes an s. */
export const sayCount = (count: string, thing: string): string =>
  count === '1' ? `1 ${thing}` : `${count} ${thing}s`;
