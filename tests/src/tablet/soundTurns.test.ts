import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ASSUMED_CALL_PULSES } from '../../../src/tablet/pulses';
import { call, makeReady, pass } from './heardSound';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const look = call('look');
const { look: lookPulses, overrun: overrunPulses } = ASSUMED_CALL_PULSES;

describe('several that call', () => {
  it('are each heard as soon as they begin, though another one is called for and for the same', async () => {
    const { sound, melodies } = await makeReady();
    sound.call([call('look', null, 'chair 1')]);
    expect(melodies()).toEqual(lookPulses.pitchesHz);
    await pass(3_000);
    expect(melodies()).toEqual([]);
    sound.call([call('look', null, 'chair 1'), call('look', null, 'chair 2')]);
    expect(melodies()).toEqual(lookPulses.pitchesHz);
  });

  it('leave the gravest to be called on after a lighter one has begun', async () => {
    const { sound, melodies } = await makeReady();
    sound.call([call('overrun')]);
    expect(melodies()).toEqual(overrunPulses.pitchesHz);
    await pass(3_000);
    sound.call([call('overrun'), look]);
    expect(melodies()).toEqual(lookPulses.pitchesHz);
    await pass(overrunPulses.againMs);
    expect(melodies()).toEqual(overrunPulses.pitchesHz);
    sound.call([look]);
    await pass(overrunPulses.againMs);
    expect(melodies()).toEqual(lookPulses.pitchesHz);
  });

  it('have each chair named, one after the other, though one is the gravest', async () => {
    const { sound, said } = await makeReady();
    const all = [call('overrun', 'Chair 1'), call('look', 'Chair 2', 'b'), call('look', 'Chair 3', 'c')];
    sound.call(all);
    await pass(3 * overrunPulses.againMs);
    expect(said).toEqual(['Chair 1', 'Chair 2', 'Chair 3']);
  });

  it('have a chair named again whose line another one cut short', async () => {
    const { sound, said } = await makeReady();
    const one = call('look', 'Chair 1', 'a');
    sound.call([one]);
    await pass(2_500);
    sound.call([one, call('look', 'Chair 2', 'b')]);
    await pass(2 * lookPulses.againMs);
    expect(said).toEqual(['Chair 1', 'hush', 'Chair 2', 'Chair 1']);
  });
});

describe('only one thing sounds at a time', () => {
  it('and nothing once it was silenced, in the midst of an overrun too', async () => {
    const { sound, sounding } = await makeReady();
    sound.call([call('overrun')]);
    await pass(100);
    expect(sounding()).toEqual([784]);
    sound.call([]);
    for (let afterMs = 50; afterMs < 2_500; afterMs += 10)
      expect(sounding(afterMs), `${afterMs} ms`).toEqual([]);
  });

  it('and fades out rather than clicks', async () => {
    const { sound, loudness } = await makeReady();
    sound.call([call('overrun')]);
    await pass(100);
    const before = loudness();
    sound.call([]);
    const after = Array.from({ length: 41 }, (_, ms) => loudness(ms));
    expect(after[0]).toBeCloseTo(before, 9);
    expect(after.at(-1)).toBeCloseTo(0, 9);
    for (const [ms, loud] of after.entries()) {
      expect(Math.abs(loud - (after[ms + 1] ?? loud)), `${ms} ms`).toBeLessThan(before / 20);
    }
  });

  it('when another call begins', async () => {
    const { sound, sounding } = await makeReady();
    sound.call([look]);
    await pass(100);
    sound.call([call('overrun'), look]);
    const heard = new Set<number>();
    for (let afterMs = 50; afterMs < 2_500; afterMs += 10) {
      const now = sounding(afterMs);
      expect(now.length, `${afterMs} ms: ${now}`).toBeLessThanOrEqual(1);
      for (const pitchHz of now) heard.add(pitchHz);
    }
    expect(heard).toEqual(new Set(overrunPulses.pitchesHz));
  });

  it('when a trial is under way as a call comes round', async () => {
    const { sound, sounding } = await makeReady();
    sound.call([look]);
    await pass(lookPulses.againMs - 300);
    expect(await sound.tryOut(null)).toBe(true);
    await pass(300);
    for (let afterMs = 50; afterMs < 2_500; afterMs += 10) {
      for (const pitchHz of sounding(afterMs)) expect(pitchHz, `${afterMs} ms`).toBe(lookPulses.pitchesHz[0]);
    }
  });

  it('and what no longer calls ends, while the others wait for their turn', async () => {
    const { sound, sounding, melodies } = await makeReady();
    sound.call([call('overrun'), look]);
    await pass(100);
    sound.call([look]);
    expect(sounding(60)).toEqual([]);
    melodies();
    await pass(overrunPulses.againMs);
    expect(melodies()).toEqual(lookPulses.pitchesHz);
  });
});
