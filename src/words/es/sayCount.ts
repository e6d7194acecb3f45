/** "1 reloj", "2 relojes", "0,5 días": how many of a thing, by its one name and its name for several. */
export const sayCount = (count: string, one: string, several: string): string =>
  `${count} ${count === '1' ? one : several}`;
