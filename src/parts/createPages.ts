import { type Accessor, createSignal } from 'solid-js';

/** A list that is shown a page at a time. */
export interface Pages<One> {
  /** What stands on the page that is shown. */
  readonly shown: Accessor<readonly One[]>;
  /** Which page that is, from 1. */
  readonly page: Accessor<number>;
  /** How many there are; one where the list is empty. */
  readonly pages: Accessor<number>;
  /** To the next page; from the last to the first. */
  readonly turn: () => void;
}

/** So many rows stand on one page without scrolling, at either size. */
const ROWS_A_PAGE = 6;

/**
 * Turns the pages of this list, so many rows each. Where the list got shorter than the page that was shown, its last page is
 * shown. Checked in tests/src/parts/createPages.test.tsx.
 */
export function createPages<One>(all: Accessor<readonly One[]>, rows: number = ROWS_A_PAGE): Pages<One> {
  const [at, setAt] = createSignal(0);
  const pages = () => Math.max(1, Math.ceil(all().length / rows));
  const here = () => Math.min(at(), pages() - 1);
  return {
    shown: () => all().slice(here() * rows, (here() + 1) * rows),
    page: () => here() + 1,
    pages,
    turn: () => setAt((here() + 1) % pages()),
  };
}
