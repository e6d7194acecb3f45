import { createRoot, createSignal } from 'solid-js';
import { describe, expect, it, vi } from 'vitest';
import { createInPieces } from '../../../../../src/screens/practice/press/createInPieces';

function* count(to: number): Generator<number, void> {
  for (let at = 1; at <= to; at += 1) yield at;
}

/** A clock on which each step takes a whole stretch. */
const makeSlow = () => {
  let nowMs = 0;
  return () => {
    nowMs += 20;
    return nowMs;
  };
};
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('reckoning in pieces', () => {
  it('is done at once where it is quick', () => {
    createRoot((dispose) => {
      const reckoned = createInPieces(
        () => 3,
        count,
        () => 0,
      );
      queueMicrotask(() => {
        expect(reckoned()).toEqual({ asked: 3, all: [1, 2, 3] });
        dispose();
      });
    });
  });

  it('leaves the page its turn after each stretch, and tells nothing half', async () => {
    const [asked] = createSignal(3);
    const { reckoned, dispose } = createRoot((dispose) => ({
      dispose,
      reckoned: createInPieces(asked, count, makeSlow()),
    }));
    expect(reckoned()).toBeNull();
    await turn();
    expect(reckoned()).toBeNull();
    await vi.waitFor(() => expect(reckoned()).toEqual({ asked: 3, all: [1, 2, 3] }));
    dispose();
  });

  it('gives up what nobody asks any more, and keeps the last until the next is whole', async () => {
    const [asked, setAsked] = createSignal(2);
    const { reckoned, dispose } = createRoot((dispose) => ({
      dispose,
      reckoned: createInPieces(asked, count, makeSlow()),
    }));
    await vi.waitFor(() => expect(reckoned()?.asked).toBe(2));
    setAsked(50);
    await turn();
    expect(reckoned()?.asked).toBe(2);
    setAsked(4);
    await vi.waitFor(() => expect(reckoned()).toEqual({ asked: 4, all: [1, 2, 3, 4] }));
    for (let turns = 0; turns < 60; turns += 1) await turn();
    expect(reckoned()?.asked).toBe(4);
    dispose();
  });

  it('stops with its page', async () => {
    const reckon = vi.fn(() => count(100));
    const steps = createRoot((dispose) => {
      const reckoned = createInPieces(() => 1, reckon, makeSlow());
      return { reckoned, dispose };
    });
    await turn();
    steps.dispose();
    for (let turns = 0; turns < 120; turns += 1) await turn();
    expect(steps.reckoned()).toBeNull();
    expect(reckon).toHaveBeenCalledTimes(1);
  });
});
