import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { SoundState } from '../../../src/tablet/player';
import { ASSUMED_CALL_PULSES } from '../../../src/tablet/pulses';
import { ASSUMED_WAKE_MS, makeSound } from '../../../src/tablet/sound';
import { makeFakeAudio } from './fakeAudio';
import { call, makeHeard, makeReady, pass } from './heardSound';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const look = call('look');
const { look: lookPulses, due: duePulses } = ASSUMED_CALL_PULSES;
const { againMs } = lookPulses;

describe('a sound that fails', () => {
  it('is closed, told, and opened anew at the next touch', async () => {
    const fakes = [makeFakeAudio(), makeFakeAudio()];
    const told: SoundState[] = [];
    let opened = 0;
    const sound = makeSound(
      () => fakes[opened++]?.audio ?? null,
      (state) => told.push(state),
    );
    sound.arm();
    await pass(0);
    fakes[0]?.breakDown();
    sound.call([look]);
    expect([sound.state(), fakes[0]?.isClosed(), told]).toEqual(['asleep', true, ['ready', 'asleep']]);
    await pass(10 * againMs);
    sound.arm();
    await pass(0);
    expect([sound.state(), opened, fakes[1]?.played.length]).toEqual(['ready', 2, 3]);
    await pass(againMs);
    expect(fakes[1]?.played.length).toBe(6);
  });

  it('is not given up for a second time that comes after it was heard', async () => {
    const fakes = Array.from({ length: 3 }, () => makeFakeAudio());
    let opened = 0;
    const sound = makeSound(
      () => fakes[opened++]?.audio ?? null,
      () => undefined,
    );
    for (let failure = 1; failure < 3; failure += 1) {
      sound.call([]);
      sound.arm();
      await pass(1_000);
      expect(fakes[opened - 1]?.played.length).toBe(1);
      fakes[opened - 1]?.breakDown();
      sound.call([call('look', null, `${failure}`)]);
      expect([sound.state(), opened]).toEqual(['asleep', failure]);
    }
  });

  it('is given up after the second time in a row', async () => {
    const fakes = Array.from({ length: 3 }, () => makeFakeAudio());
    for (const fake of fakes) fake.breakDown();
    const told: SoundState[] = [];
    let opened = 0;
    const sound = makeSound(
      () => fakes[opened++]?.audio ?? null,
      (state) => told.push(state),
    );
    sound.call([look]);
    for (let touch = 0; touch < 3; touch += 1) {
      sound.arm();
      await pass(againMs);
    }
    expect([sound.state(), opened, told]).toEqual([
      'unavailable',
      2,
      ['ready', 'asleep', 'ready', 'unavailable'],
    ]);
  });
});

describe('a trial', () => {
  it('is played once the browser gives the sound, and says so', async () => {
    const { sound, played, said } = makeHeard(makeFakeAudio({ resumesAfterMs: 300 }));
    sound.arm();
    const sounded = sound.tryOut('This is how');
    await pass(299);
    expect(played).toEqual([]);
    await pass(1);
    expect(await sounded).toBe(true);
    await pass(2_000);
    expect(played.map(({ pitchHz }) => pitchHz)).toEqual(expect.arrayContaining([...duePulses.pitchesHz]));
    expect(said).toEqual(['This is how']);
  });

  it.each([
    ['refuses it', { isRefusing: true }],
    ['never answers', { resumesAfterMs: 3_600_000 }],
  ])('says that nothing was played where the browser %s', async (_title, options) => {
    const { sound, played } = makeHeard(makeFakeAudio(options));
    const sounded = sound.tryOut(null);
    await pass(ASSUMED_WAKE_MS);
    expect([await sounded, played]).toEqual([false, []]);
  });

  it('says so where playing fails, and where there is no sound', async () => {
    const { sound, breakDown } = await makeReady();
    breakDown();
    expect(await sound.tryOut(null)).toBe(false);
    const none = makeSound(
      () => null,
      () => undefined,
    );
    expect(await none.tryOut(null)).toBe(false);
  });

  it('is not cut short by a tick on which nobody calls', async () => {
    const { sound, sounding, said } = await makeReady();
    const sounded = sound.tryOut('This is how');
    await pass(0);
    expect(await sounded).toBe(true);
    sound.call([]);
    expect(sounding(100)).toEqual(duePulses.pitchesHz.slice(0, 1));
    await pass(3_000);
    expect(said).toEqual(['This is how']);
  });
});
