/** In how many columns do so many tiles stand? Six only where the sheet gives them its whole width. */
export function findColumns(tiles: number): 1 | 2 | 3 | 4 | 5 | 6 {
  if (tiles > 12) return 6;
  if (tiles > 8) return 5;
  if (tiles > 6) return 4;
  if (tiles === 3 || tiles > 4) return 3;
  return tiles > 1 ? 2 : 1;
}

/** So many answers need the whole width of the page. */
export const isWide = (options: number): boolean => options > 12;
