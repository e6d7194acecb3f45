import { beforeAll } from 'vitest';

/** Files of the DOM project share a window one after the other: each begins with a page on which nothing was left. */
beforeAll(() => {
  document.body.replaceChildren();
  localStorage.clear();
  sessionStorage.clear();
});
