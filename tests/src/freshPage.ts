import { beforeAll } from 'vitest';
import { loadLateParts } from '../../src/parts/late';
import '../../src/screens/consultation/screens';
import '../../src/screens/lateScreens';

/** Files of the DOM project share a window one after the other: each begins with a page on which nothing was left. */
beforeAll(() => {
  document.body.replaceChildren();
  localStorage.clear();
  sessionStorage.clear();
});

/** What comes late is there already: what is tested is the page, not its coming, which has a file of its own. */
await loadLateParts();
