import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ASSUMED_CALL_AGAIN_MS, makeSound, type SoundState } from '../../../src/tablet/sound';
import { makeFakeAudio } from './fakeAudio';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);

function makeHeard(fake = makeFakeAudio()) {
  const told: SoundState[] = [];
  const sound = makeSound(
    () => fake.audio,
    (state) => told.push(state),
  );
  return { ...fake, sound, told };
}

describe('the sound', () => {
  it('is asleep before the first touch, and plays nothing', async () => {
    const { sound, played } = makeHeard();
    sound.call(true);
    sound.tryOut();
    await pass(60_000);
    expect([sound.state(), played.length]).toEqual(['asleep', 0]);
  });

  it('is heard once at the first touch, and not at the next', async () => {
    const { sound, played, told } = makeHeard();
    sound.arm();
    await pass(0);
    sound.arm();
    await pass(0);
    expect([sound.state(), told, played.length]).toEqual(['ready', ['ready'], 1]);
  });

  it('calls with three pulses of 150 to 1000 Hz with harmonics, again and again until told otherwise', async () => {
    const { sound, played } = makeHeard();
    sound.arm();
    await pass(0);
    played.length = 0;
    sound.call(true);
    sound.call(true);
    expect(played).toHaveLength(3);
    for (const { pitchHz, harmonics } of played) {
      expect(pitchHz).toBeGreaterThanOrEqual(150);
      expect(pitchHz).toBeLessThanOrEqual(1000);
      expect(harmonics).toBeGreaterThanOrEqual(4);
    }
    expect(new Set(played.map(({ atS }) => atS)).size).toBe(3);
    await pass(2 * ASSUMED_CALL_AGAIN_MS);
    expect(played).toHaveLength(9);
    sound.call(false);
    await pass(10 * ASSUMED_CALL_AGAIN_MS);
    expect(played).toHaveLength(9);
  });

  it('calls at the touch that wakes it, if something is due', async () => {
    const { sound, played } = makeHeard();
    sound.call(true);
    sound.arm();
    await pass(0);
    expect(played).toHaveLength(3);
  });

  it('says when the browser took it away, and calls on when it is back', async () => {
    const { sound, played, told, turn } = makeHeard();
    sound.arm();
    await pass(0);
    sound.call(true);
    turn('suspended');
    const before = played.length;
    await pass(5 * ASSUMED_CALL_AGAIN_MS);
    expect([played.length, told]).toEqual([before, ['ready', 'asleep']]);
    turn('running');
    expect(played.length).toBe(before + 3);
  });

  it('stays asleep where the browser refuses, and asks again at the next touch', async () => {
    const { sound, told } = makeHeard(makeFakeAudio({ isRefusing: true }));
    sound.arm();
    await pass(0);
    expect([sound.state(), told]).toEqual(['asleep', []]);
  });

  it.each([
    ['there is none', () => null],
    [
      'opening it fails',
      () => {
        throw new Error('no device');
      },
    ],
  ])('is unavailable where %s', (_title, openAudio) => {
    const told: SoundState[] = [];
    const sound = makeSound(openAudio, (state) => told.push(state));
    sound.arm();
    expect([sound.state(), told]).toEqual(['unavailable', ['unavailable']]);
  });

  it('ends with the screen that made it', async () => {
    const { sound, played, isClosed } = makeHeard();
    sound.arm();
    await pass(0);
    sound.call(true);
    sound.stop();
    const before = played.length;
    await pass(5 * ASSUMED_CALL_AGAIN_MS);
    expect([played.length, isClosed()]).toEqual([before, true]);
  });
});
