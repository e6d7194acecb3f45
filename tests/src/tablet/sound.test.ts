import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { callKinds } from '../../../shared/records/call';
import type { SoundState } from '../../../src/tablet/player';
import { ASSUMED_CALL_PULSES, ASSUMED_PULSE_S } from '../../../src/tablet/pulses';
import { makeSound } from '../../../src/tablet/sound';
import { ASSUMED_SPOKEN_EACH } from '../../../src/tablet/turns';
import { makeFakeAudio } from './fakeAudio';
import { call, makeHeard, pass } from './heardSound';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const look = call('look');
const { againMs } = ASSUMED_CALL_PULSES.look;

describe('the sound', () => {
  it('is asleep before the first touch, and plays nothing', async () => {
    const { sound, played } = makeHeard();
    sound.call([look]);
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
    sound.call([look]);
    sound.call([look]);
    expect(played).toHaveLength(3);
    for (const { pitchHz, harmonics } of played) {
      expect(pitchHz).toBeGreaterThanOrEqual(150);
      expect(pitchHz).toBeLessThanOrEqual(1000);
      expect(harmonics).toBeGreaterThanOrEqual(4);
    }
    expect(new Set(played.map(({ atS }) => atS)).size).toBe(3);
    await pass(2 * againMs);
    expect(played).toHaveLength(9);
    sound.call([]);
    await pass(10 * againMs);
    expect(played).toHaveLength(9);
  });

  it('calls at the touch that wakes it, if something is due', async () => {
    const { sound, played } = makeHeard();
    sound.call([look]);
    sound.arm();
    await pass(0);
    expect(played).toHaveLength(3);
  });

  it('says when the browser took it away, and calls on when it is back', async () => {
    const { sound, played, told, turn } = makeHeard();
    sound.arm();
    await pass(0);
    sound.call([look]);
    turn('suspended');
    const before = played.length;
    await pass(5 * againMs);
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
    sound.call([look]);
    sound.stop();
    const before = played.length;
    await pass(5 * againMs);
    expect([played.length, isClosed()]).toEqual([before, true]);
  });

  it.each(callKinds)('is within what a soft call is, and its own, for %s', async (kind) => {
    const { sound, played } = makeHeard();
    sound.arm();
    await pass(0);
    played.length = 0;
    sound.call([call(kind)]);
    expect(played.length % 3).toBe(0);
    for (const { pitchHz, harmonics } of played) {
      expect(pitchHz).toBeGreaterThanOrEqual(150);
      expect(pitchHz).toBeLessThanOrEqual(1000);
      expect(harmonics).toBeGreaterThanOrEqual(4);
    }
    const others = callKinds.filter((other) => other !== kind);
    const melody = played.map(({ pitchHz }) => pitchHz);
    for (const other of others) expect(ASSUMED_CALL_PULSES[other].pitchesHz).not.toEqual(melody);
    const steps = melody.slice(1, 3).map((pitchHz, pulse) => Math.sign(pitchHz - (melody[pulse] ?? 0)));
    expect(steps).toEqual({ look: [0, 0], due: [1, 1], overrun: [-1, -1] }[kind]);
  });

  it('leaves a pause between two calls of a kind', () => {
    for (const { pitchesHz, pauseS, againMs: again } of Object.values(ASSUMED_CALL_PULSES)) {
      expect(pitchesHz.length * (ASSUMED_PULSE_S.on + pauseS)).toBeLessThan(again / 2000);
    }
  });

  it('plays what is graver at once, and no longer what it was', async () => {
    const { sound, played } = makeHeard();
    sound.arm();
    await pass(0);
    sound.call([look]);
    await pass(1_000);
    played.length = 0;
    sound.call([call('overrun'), look]);
    await pass(ASSUMED_CALL_PULSES.overrun.againMs);
    const { pitchesHz } = ASSUMED_CALL_PULSES.overrun;
    expect(played.map(({ pitchHz }) => pitchHz)).toEqual([...pitchesHz, ...pitchesHz]);
  });

  it('speaks after the pulses of every so many calls, never instead of them, and hushes when silenced', async () => {
    const said: string[] = [];
    const fake = makeFakeAudio();
    const voice = { speak: (line: string) => void said.push(line), hush: () => void said.push('hush') };
    const sound = makeSound(
      () => fake.audio,
      () => undefined,
      voice,
    );
    sound.arm();
    await pass(0);
    fake.played.length = 0;
    sound.call([call('look', 'Chair 3: look at the strand')]);
    expect([fake.played.length, said]).toEqual([3, []]);
    await pass(2_000);
    expect(said).toEqual(['Chair 3: look at the strand']);
    await pass(againMs * (ASSUMED_SPOKEN_EACH - 1));
    expect([fake.played.length, said.length]).toEqual([3 * ASSUMED_SPOKEN_EACH, 1]);
    await pass(againMs);
    expect([fake.played.length, said.length]).toEqual([3 * (ASSUMED_SPOKEN_EACH + 1), 2]);
    sound.call([]);
    expect(said.at(-1)).toBe('hush');
    await pass(10 * againMs);
    expect(said).toHaveLength(3);
  });

  it('says nothing of a call that was silenced during its pulses', async () => {
    const said: string[] = [];
    const fake = makeFakeAudio();
    const sound = makeSound(
      () => fake.audio,
      () => undefined,
      { speak: (line) => void said.push(line), hush: () => undefined },
    );
    sound.arm();
    await pass(0);
    sound.call([call('due', 'Chair 1: rinse')]);
    await pass(100);
    sound.call([]);
    await pass(10_000);
    expect(said).toEqual([]);
  });
});
