import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ClockJump } from '../../../shared/records/clockJump';
import { createTicker } from '../../../src/station/ticker';

const startAtMs = Date.UTC(2026, 2, 3, 9, 0) + 400;

beforeEach(() => vi.useFakeTimers({ now: startAtMs }));
afterEach(() => vi.useRealTimers());

const withTicker = (check: (ticker: ReturnType<typeof createTicker>) => void): void =>
  createRoot((dispose) => {
    check(createTicker({ readNow: () => Date.now() }));
    dispose();
    expect(vi.getTimerCount()).toBe(0);
  });

describe('the ticker', () => {
  it('ticks at each full second', () =>
    withTicker(({ nowMs }) => {
      vi.advanceTimersByTime(599);
      expect(nowMs()).toBe(startAtMs);
      vi.advanceTimersByTime(1);
      expect(nowMs()).toBe(startAtMs + 600);
      vi.advanceTimersByTime(1000);
      expect(nowMs()).toBe(startAtMs + 1600);
    }));

  it('is right at once when the page wakes, comes to the front or is shown again', () =>
    withTicker(({ nowMs }) => {
      const wakes = [
        () => document.dispatchEvent(new Event('visibilitychange')),
        () => window.dispatchEvent(new Event('focus')),
        () => window.dispatchEvent(new Event('pageshow')),
      ];
      for (const [index, wake] of wakes.entries()) {
        const atMs = startAtMs + (index + 1) * 3_600_000;
        vi.setSystemTime(atMs);
        expect(nowMs()).toBeLessThan(atMs);
        wake();
        expect(nowMs()).toBe(atMs);
      }
    }));

  it('tells a jump ahead of the clock that nobody sets, once, and none while both count the same', () =>
    createRoot((dispose) => {
      let steadyMs = 50;
      const jumps: ClockJump[] = [];
      createTicker({
        readNow: () => Date.now(),
        readSteady: () => steadyMs,
        onJump: (jump) => jumps.push(jump),
      });
      steadyMs += 7_200_000;
      vi.setSystemTime(startAtMs + 7_200_000);
      document.dispatchEvent(new Event('visibilitychange'));
      expect(jumps).toEqual([]);
      vi.setSystemTime(startAtMs + 9_000_000);
      steadyMs += 1000;
      document.dispatchEvent(new Event('visibilitychange'));
      window.dispatchEvent(new Event('focus'));
      expect(jumps).toEqual([{ atMs: startAtMs + 9_000_000, aheadMs: 1_799_000 }]);
      dispose();
    }));

  it('remembers the latest time it showed while the clock is set back, until a person trusts it', () =>
    withTicker(({ nowMs, seenMs, refresh, trustNow }) => {
      expect(seenMs()).toBe(startAtMs);
      vi.advanceTimersByTime(60_600);
      const latestMs = startAtMs + 60_600;
      expect(seenMs()).toBe(latestMs);
      const backMs = startAtMs - 7_200_000;
      vi.setSystemTime(backMs);
      refresh();
      expect([nowMs(), seenMs()]).toEqual([backMs, latestMs]);
      trustNow();
      expect(seenMs()).toBe(backMs);
      vi.setSystemTime(backMs + 1000);
      refresh();
      expect(seenMs()).toBe(backMs + 1000);
    }));
});
