/** "1 día", "2 días", "2 meses": how many of a thing; `things` where its plural takes more than an s. */
export const sayCount = (count: string, thing: string, things = `${thing}s`): string =>
  count === '1' ? `1 ${thing}` : `${count} ${things}`;
