import { expect, it, onTestFinished, vi } from 'vitest';
import { inTurns } from '../../../src/tablet/inTurns';

it.each([
  ['short pieces go through at one go', 1, ['a', 'b', 'c', 'tap']],
  ['long pieces let a tap in between', 50, ['a', 'tap', 'b', 'c']],
])('%s, in their order', async (_, eachMs, order) => {
  let atMs = 0;
  const clock = vi.spyOn(performance, 'now').mockImplementation(() => atMs);
  onTestFinished(() => clock.mockRestore());
  function* work(): Generator<string, number> {
    for (const piece of ['a', 'b', 'c']) {
      atMs += eachMs;
      yield piece;
    }
    return 3;
  }
  const seen: string[] = [];
  setTimeout(() => seen.push('tap'));
  expect(await inTurns(work(), (piece) => seen.push(piece))).toBe(3);
  await new Promise((resolve) => setTimeout(resolve));
  expect(seen).toEqual(order);
});
