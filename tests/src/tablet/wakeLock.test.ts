import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ASSUMED_ASK_AGAIN_MS, makeWakeKeeper, type WakeState } from '../../../src/tablet/wakeLock';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);

function makeTablet() {
  const told: WakeState[] = [];
  const lost: (() => void)[] = [];
  let asked = 0;
  let isGranted = true;
  let isInSight = true;
  const keeper = makeWakeKeeper(
    {
      request: async () => {
        asked += 1;
        if (!isGranted) throw new DOMException('low battery', 'NotAllowedError');
        return {
          released: false,
          release: async () => undefined,
          addEventListener: (_type, listener) => void lost.push(listener),
        };
      },
    },
    () => isInSight,
    (state) => told.push(state),
  );
  return {
    keeper,
    told,
    countAsked: () => asked,
    grant: (next: boolean) => {
      isGranted = next;
    },
    show: (next: boolean) => {
      isInSight = next;
    },
    lose: () => lost.at(-1)?.(),
  };
}

describe('the screen', () => {
  it('is left alone before the first touch', async () => {
    const { keeper, told, countAsked } = makeTablet();
    keeper.look();
    await pass(60_000);
    expect([keeper.state(), told, countAsked()]).toEqual(['resting', [], 0]);
  });

  it('is kept awake from the first touch on, asked for once', async () => {
    const { keeper, told, countAsked } = makeTablet();
    keeper.arm();
    keeper.arm();
    await pass(0);
    keeper.arm();
    await pass(10 * ASSUMED_ASK_AGAIN_MS);
    expect([told, countAsked()]).toEqual([['awake'], 1]);
  });

  it('rests while the page is hidden, and is asked for again as soon as it is in sight', async () => {
    const { keeper, told, show, lose } = makeTablet();
    keeper.arm();
    await pass(0);
    show(false);
    lose();
    expect(keeper.state()).toBe('resting');
    show(true);
    keeper.look();
    await pass(0);
    expect(told).toEqual(['awake', 'resting', 'awake']);
  });

  it('is asked for again at once when it is lost in sight', async () => {
    const { keeper, told, lose } = makeTablet();
    keeper.arm();
    await pass(ASSUMED_ASK_AGAIN_MS);
    lose();
    await pass(0);
    expect(told).toEqual(['awake', 'refused', 'awake']);
  });

  it('that is taken away again and again is asked for after a while only', async () => {
    const { keeper, lose, countAsked } = makeTablet();
    keeper.arm();
    await pass(0);
    lose();
    await pass(ASSUMED_ASK_AGAIN_MS - 1);
    expect([keeper.state(), countAsked()]).toEqual(['refused', 1]);
    await pass(1);
    expect([keeper.state(), countAsked()]).toEqual(['awake', 2]);
  });

  it('says a refusal, and asks again after a while and at a touch', async () => {
    const { keeper, told, grant, countAsked } = makeTablet();
    grant(false);
    keeper.arm();
    await pass(0);
    expect(told).toEqual(['refused']);
    await pass(ASSUMED_ASK_AGAIN_MS);
    expect(countAsked()).toBe(2);
    grant(true);
    keeper.arm();
    await pass(0);
    expect(told).toEqual(['refused', 'awake']);
  });

  it('is unavailable where the browser cannot', () => {
    const told: WakeState[] = [];
    const keeper = makeWakeKeeper(
      undefined,
      () => true,
      (state) => told.push(state),
    );
    keeper.arm();
    expect(told).toEqual(['unavailable']);
  });

  it('is not asked for any more once the screens are gone', async () => {
    const { keeper, grant, countAsked } = makeTablet();
    grant(false);
    keeper.arm();
    await pass(0);
    keeper.stop();
    await pass(10 * ASSUMED_ASK_AGAIN_MS);
    expect(countAsked()).toBe(1);
  });
});
