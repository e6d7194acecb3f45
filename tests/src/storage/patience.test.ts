import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ASSUMED_PATIENCE_MS, waitAtMost } from '../../../src/storage/patience';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('waiting at most so long', () => {
  it('hands on the answer, or the error, and leaves no timer behind', async () => {
    expect(await waitAtMost(Promise.resolve(1), ASSUMED_PATIENCE_MS, () => 2)).toBe(1);
    await expect(waitAtMost(Promise.reject(new Error('no')), 100, () => 2)).rejects.toThrow('no');
    expect(vi.getTimerCount()).toBe(0);
  });

  it('gives up at the patience, not before', async () => {
    const onLate = vi.fn(() => 'late');
    const answer = waitAtMost(new Promise<string>(() => undefined), ASSUMED_PATIENCE_MS, onLate);
    await vi.advanceTimersByTimeAsync(ASSUMED_PATIENCE_MS - 1);
    expect(onLate).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(1);
    expect(await answer).toBe('late');
  });

  it('still hears an answer that arrived while the page slept through the first half', async () => {
    let settle: (value: string) => void = () => undefined;
    const work = new Promise<string>((resolve) => {
      settle = resolve;
    });
    const answer = waitAtMost(work, 100, () => 'late');
    vi.advanceTimersToNextTimer();
    settle('heard');
    expect(await answer).toBe('heard');
  });
});
