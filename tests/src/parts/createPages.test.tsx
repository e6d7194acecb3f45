import { createRoot, createSignal } from 'solid-js';
import { expect, it } from 'vitest';
import { createPages } from '../../../src/parts/createPages';

const list = (count: number) => Array.from({ length: count }, (_, at) => at);

it('shows a page at a time, and after the last the first', () => {
  createRoot((dispose) => {
    const { shown, page, pages, turn } = createPages(() => list(7), 3);
    const seen = [1, 2, 3, 4].map(() => {
      const now = [page(), pages(), ...shown()];
      turn();
      return now;
    });
    expect(seen).toEqual([
      [1, 3, 0, 1, 2],
      [2, 3, 3, 4, 5],
      [3, 3, 6],
      [1, 3, 0, 1, 2],
    ]);
    dispose();
  });
});

it('shows the last page of a list that got shorter, and goes on from there', () => {
  createRoot((dispose) => {
    const [all, setAll] = createSignal(list(7));
    const { shown, page, pages, turn } = createPages(all, 3);
    turn();
    turn();
    expect(page()).toBe(3);
    setAll(list(4));
    expect([page(), pages(), ...shown()]).toEqual([2, 2, 3]);
    turn();
    expect([page(), ...shown()]).toEqual([1, 0, 1, 2]);
    setAll([]);
    expect([page(), pages(), ...shown()]).toEqual([1, 1]);
    dispose();
  });
});
